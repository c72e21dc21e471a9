package bayfolio.fact;

/** What a text is, so that sentences can be made with it; {@code other-form} wants it so. */
public enum Phrase {
    /** No words of a writer: an id, a number to dial. */
    NONE("an entry"),
    /** Whole sentences, or what can stand for one. */
    SENTENCES("text"),
    /** What something is called: {@code Water pump switch}. */
    NAME("a name, such as `Water pump switch`"),
    /** What goes on from "it is": {@code behind the rear axle}. */
    PLACE("a place, such as `behind the rear axle`"),
    /** What a hand does: {@code Pull it straight out}. */
    ACT("what a hand does, such as `Pull it straight out`"),
    /** What one sees or hears: {@code The lamp beside it burns}. */
    LOOK("what one sees or hears, such as `The lamp beside it burns`"),
    /** What a state is called, and when it is so: {@code WINTER}, {@code on in opening hours, off after hours}. */
    STATE("a state, such as `WINTER`, or `on in opening hours, off after hours`"),
    /** How much: {@code one third}, {@code 20 minutes}. */
    FIGURE("how much, such as `one third` or `20 minutes`"),
    /** Copied from the coach, letter by letter. */
    PLATE("words copied from the coach, letter by letter");

    private final String inWords;

    Phrase(String inWords) {
        this.inWords = inWords;
    }

    public String inWords() {
        return inWords;
    }
}
