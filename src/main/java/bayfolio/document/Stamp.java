package bayfolio.document;

/**
 * What every part of a handbook knows of itself.
 *
 * @param language of its words, as in {@code lang} of a page
 */
public record Stamp(NodeId id, Audience audience, From from, String language) {
    /** A part of it, for the same readers, from the same source. */
    public Stamp child(String key) {
        return new Stamp(id.child(key), audience, from, language);
    }

    public Stamp from(From other) {
        return new Stamp(id, audience, other, language);
    }

    /** In another language. */
    public Stamp in(String other) {
        return new Stamp(id, audience, from, other);
    }

    public Stamp seenBy(Audience narrower) {
        return new Stamp(id, narrower.within(audience), from, language);
    }
}
