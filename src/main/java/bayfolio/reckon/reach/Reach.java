package bayfolio.reckon.reach;

import bayfolio.measure.Meters;
import bayfolio.model.Coach;
import bayfolio.model.Size;
import bayfolio.model.Unit;
import bayfolio.reckon.Missing;
import bayfolio.reckon.cord.CordSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether cord and hoses reach the posts of a site, for both ways onto it. */
public record Reach(
        Coach coach, Footprint footprint, List<SiteLine> lines, List<CordSet> extensions, List<Posts> sites) {
    /** One hose or cord on one site, for one way in. */
    public record CheckedCoach(SiteLine line, Posts.Way way, boolean straight, RequiredLength need) {
        public boolean isShort() {
            return line.owned().filter(owned -> !need.metBy(owned)).isPresent();
        }

        public Meters missing() {
            return need.length().minus(line.owned().orElseThrow());
        }
    }

    public Reach {
        lines = List.copyOf(lines);
        extensions = List.copyOf(extensions);
        sites = List.copyOf(sites);
    }

    public static Optional<Reach> of(Coach coach) {
        return known(coach).filter(reach -> lacking(coach).isEmpty());
    }

    private static Optional<Size> size(Coach coach) {
        return coach.unit().facts().find(Unit.SIZE).filter(it -> it.facts().whole());
    }

    private static Optional<Reach> known(Coach coach) {
        return size(coach).filter(size -> SiteLine.any(coach)).map(size -> {
            Footprint footprint =
                    new Footprint(size.facts().get(Size.LENGTH), size.facts().get(Size.WIDTH));
            return new Reach(
                    coach,
                    footprint,
                    SiteLine.all(coach, size),
                    CordSet.extensions(coach.unit()),
                    Posts.all(coach.fleet().pitches(), coach.unit().region(), footprint));
        });
    }

    /** Nothing where the coach has nothing that is led to a post. */
    public static List<Missing> lacking(Coach coach) {
        if (!SiteLine.any(coach)) {
            return List.of();
        }
        Optional<Reach> known = known(coach);
        if (known.isEmpty()) {
            return List.of(new Missing("length-and-width"));
        }
        if (known.get().lines.isEmpty()) {
            return SiteLine.unplaced(coach, size(coach).orElseThrow());
        }
        return known.get().cases().isEmpty() ? List.of(new Missing("posts")) : List.of();
    }

    public List<CheckedCoach> cases() {
        return sites.stream().flatMap(site -> cases(site).stream()).toList();
    }

    public List<CheckedCoach> cases(Posts site) {
        return lines.stream()
                .flatMap(line -> site.find(line.kind()).stream()
                        .flatMap(post -> Stream.of(Posts.Way.values()).map(way -> one(line, post, way))))
                .toList();
    }

    private CheckedCoach one(SiteLine line, Posts.Post post, Posts.Way way) {
        Footprint.Place place = post.place(way, footprint.length());
        return new CheckedCoach(
                line,
                way,
                footprint.free(line.inlet(), place),
                new RequiredLength(
                        footprint.route(line.inlet(), place), line.height().value(), post.height()));
    }

    /** Sites that have a post for something of the coach. */
    public List<Posts> useful() {
        return sites.stream().filter(site -> !cases(site).isEmpty()).toList();
    }

    public Optional<CordSet> longestExtension() {
        return extensions.stream()
                .max(Comparator.comparingDouble(it -> it.length().value().value()));
    }

    public boolean leads(SiteLine.Kind kind) {
        return lines.stream().anyMatch(line -> line.kind() == kind);
    }
}
