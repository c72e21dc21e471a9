package bayfolio.reckon;

import bayfolio.measure.Meters;
import bayfolio.model.Pitch;
import bayfolio.model.PitchPost;
import bayfolio.model.Region;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where the posts of a site are when a coach stands on it. */
record Posts(String name, boolean usual, Map<SiteLine.Kind, Post> all) {
    static final String SOURCE = "common practice, no source";

    /** How a coach came onto the site. */
    enum Way {
        BACKED_IN("backed in"),
        NOSE_FIRST("nose first");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /**
     * @param backedIn its place, counted from a coach that came in backward
     */
    record Post(Footprint.Place backedIn, Meters height) {
        Footprint.Place place(Way way, Meters length) {
            return switch (way) {
                case BACKED_IN -> backedIn;
                case NOSE_FIRST -> backedIn.turned(length);
            };
        }
    }

    private static final double FOOT = 0.3048;

    static Posts of(Pitch pitch) {
        Map<SiteLine.Kind, Post> all = new EnumMap<>(SiteLine.Kind.class);
        for (SiteLine.Kind kind : SiteLine.Kind.values()) {
            pitch.facts()
                    .find(kind.post())
                    .filter(post -> post.facts().whole())
                    .ifPresent(post -> all.put(kind, of(post)));
        }
        return new Posts(pitch.name(), false, all);
    }

    /** Backed in, a coach looks at the road: what is right for somebody on the road is left for its driver. */
    private static Post of(PitchPost post) {
        double across = post.facts().get(PitchPost.ACROSS).value();
        double right = post.facts().get(PitchPost.SIDE) == PitchPost.Seen.LEFT ? across : -across;
        return new Post(
                new Footprint.Place(post.facts().get(PitchPost.ALONG).value(), right),
                post.facts().get(PitchPost.HEIGHT));
    }

    /** In North America beside the rear quarter on the left, in Europe off the right rear corner. */
    static Posts usual(Region region, Footprint coach) {
        double half = coach.width().value() / 2;
        return switch (region) {
            case NORTH_AMERICA ->
                usual(
                        new Footprint.Place(0.75 * coach.length().value(), -half - 4 * FOOT),
                        new Meters(3 * FOOT),
                        new Meters(2 * FOOT));
            case EUROPE -> usual(new Footprint.Place(coach.length().value(), half + 2), new Meters(1), new Meters(0.6));
        };
    }

    private static Posts usual(Footprint.Place place, Meters outlet, Meters faucet) {
        return new Posts(
                "a usual site",
                true,
                Map.of(
                        SiteLine.Kind.POWER, new Post(place, outlet),
                        SiteLine.Kind.WATER, new Post(place, faucet),
                        SiteLine.Kind.SEWER, new Post(place, new Meters(0))));
    }

    /** The sites that the fleet describes for coaches of the region, or else the usual one. */
    static List<Posts> all(List<Pitch> pitches, Region region, Footprint coach) {
        List<Posts> known = pitches.stream()
                .filter(pitch -> pitch.facts()
                        .find(Pitch.REGION)
                        .filter(it -> it != region)
                        .isEmpty())
                .map(Posts::of)
                .toList();
        return known.isEmpty() ? List.of(usual(region, coach)) : known;
    }

    Optional<Post> find(SiteLine.Kind kind) {
        return Optional.ofNullable(all.get(kind));
    }
}
