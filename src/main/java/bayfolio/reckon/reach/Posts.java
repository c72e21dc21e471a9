package bayfolio.reckon.reach;

import bayfolio.fact.Type;
import bayfolio.measure.Meters;
import bayfolio.model.Pitch;
import bayfolio.model.PitchPost;
import bayfolio.model.Region;
import bayfolio.reckon.Origin;
import bayfolio.reckon.Published;
import bayfolio.reckon.Table;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where the posts of a site are when a coach stands on it. */
public record Posts(Optional<String> name, Map<SiteLine.Kind, Post> all) {
    static final Table TABLE = Table.read("site");

    /** How a coach came onto the site. */
    public enum Way {
        BACKED_IN,
        NOSE_FIRST
    }

    /**
     * @param backedIn its place, counted from a coach that came in backward
     * @param origin of all of it
     */
    public record Post(Footprint.Place backedIn, Meters height, Origin origin) {
        Footprint.Place place(Way way, Meters length) {
            return switch (way) {
                case BACKED_IN -> backedIn;
                case NOSE_FIRST -> backedIn.turned(length);
            };
        }
    }

    public static Posts of(Pitch pitch) {
        Map<SiteLine.Kind, Post> all = new EnumMap<>(SiteLine.Kind.class);
        for (SiteLine.Kind kind : SiteLine.Kind.values()) {
            pitch.facts()
                    .find(kind.post())
                    .filter(post -> post.facts().whole())
                    .ifPresent(post -> all.put(kind, of(post, new Origin.Stated(pitch.facts(), kind.post()))));
        }
        return new Posts(Optional.of(pitch.name()), all);
    }

    /** Backed in, a coach looks at the road: what is right for somebody on the road is left for its driver. */
    private static Post of(PitchPost post, Origin origin) {
        double across = post.facts().get(PitchPost.ACROSS).value();
        double right = post.facts().get(PitchPost.SIDE) == PitchPost.Seen.LEFT ? across : -across;
        return new Post(
                new Footprint.Place(post.facts().get(PitchPost.ALONG).value(), right),
                post.facts().get(PitchPost.HEIGHT),
                origin);
    }

    /** In North America beside the rear quarter on the left, elsewhere off the right rear corner. */
    public static Posts usual(Region region, Footprint coach) {
        double half = coach.width().value() / 2;
        double off = figure(region, "off-the-wall").value().value();
        Footprint.Place place = switch (region) {
            case NORTH_AMERICA -> new Footprint.Place(0.75 * coach.length().value(), -half - off);
            case EUROPE, OCEANIA -> new Footprint.Place(coach.length().value(), half + off);
        };
        return new Posts(
                Optional.empty(),
                Map.of(
                        SiteLine.Kind.POWER, post(place, figure(region, "outlet-height")),
                        SiteLine.Kind.WATER, post(place, figure(region, "faucet-height")),
                        SiteLine.Kind.SEWER,
                                new Post(place, new Meters(0), new Origin.Usual(figure(region, "off-the-wall")))));
    }

    private static Published<Meters> figure(Region region, String name) {
        return TABLE.quantity(Type.word(region) + "." + name, Meters.SCALE);
    }

    private static Post post(Footprint.Place place, Published<Meters> height) {
        return new Post(place, height.value(), new Origin.Usual(height));
    }

    /** Whether no site of the fleet is described, and the usual one was taken. */
    public boolean usual() {
        return name.isEmpty();
    }

    /** The sites that the fleet describes for coaches of the region, or else the usual one. */
    public static List<Posts> all(List<Pitch> pitches, Region region, Footprint coach) {
        List<Posts> known = pitches.stream()
                .filter(pitch -> pitch.facts()
                        .find(Pitch.REGION)
                        .filter(it -> it != region)
                        .isEmpty())
                .map(Posts::of)
                .toList();
        return known.isEmpty() ? List.of(usual(region, coach)) : known;
    }

    public Optional<Post> find(SiteLine.Kind kind) {
        return Optional.ofNullable(all.get(kind));
    }
}
