package bayfolio.check.procedure;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Coach;
import bayfolio.procedure.Hazard;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Step;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Signal;
import bayfolio.prose.Target;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Flags a procedure that has the reader work something dangerous and does not say so before or at
 * that step, with a signal word that is strong enough.
 */
public final class HazardMissing implements Rule {
    /**
     * A danger that comes with a thing.
     *
     * @param role what the reader is sent to
     * @param acts words of a step that make the danger; a procedure without them does no harm
     * @param least the weakest signal word that will do
     * @param spoken what its hazard must speak of, in words or their beginnings
     * @param danger the same in one phrase
     */
    private record Danger(String role, Pattern acts, Signal least, Pattern spoken, String danger) {
        static Danger of(String role, String acts, Signal least, String spoken, String danger) {
            return new Danger(
                    role, Pattern.compile(acts), least, Pattern.compile(spoken, Pattern.CASE_INSENSITIVE), danger);
        }
    }

    private static final String ANY = "";

    private static final List<Danger> DANGERS = List.of(
            Danger.of(
                    "generator-control",
                    "\\bSTART\\b|\\b[Ss]tart the generator",
                    Signal.DANGER,
                    "carbon monoxide|exhaust gas|exhaust fumes",
                    "carbon monoxide"),
            Danger.of("slide-switch", ANY, Signal.WARNING, "\\bcrush", "being crushed"),
            Danger.of("jack-control", ANY, Signal.DANGER, "\\bcrush", "being crushed"),
            Danger.of("macerator-switch", ANY, Signal.NOTICE, "\\bdry\\b", "running dry"),
            Danger.of("cord-reel-switch", ANY, Signal.CAUTION, "\\bcrush|\\bpinch|\\btakes? in", "pinched fingers"),
            Danger.of(
                    "tow-hitch",
                    "\\b(?:[Uu]nhitch|[Uu]nhook|[Uu]ncouple|[Hh]itch up|[Tt]ake off)\\b",
                    Signal.WARNING,
                    "\\broll",
                    "what rolls away"));

    private static final Danger FUEL_BESIDE_GAS = Danger.of(
            "fuel-filler",
            "\\b(?:[Ff]ill|[Pp]ump)\\b",
            Signal.WARNING,
            "\\bflame|\\bfire\\b|\\bspark",
            "flames on board");

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        boolean gas = coach.coach().features().contains("lp-tank")
                || coach.coach().features().contains("gas-cylinders");
        List<Danger> dangers = gas
                ? Stream.concat(DANGERS.stream(), Stream.of(FUEL_BESIDE_GAS)).toList()
                : DANGERS;
        return coach.procedures().stream().flatMap(procedure -> {
            Set<String> roles = roles(procedure, coach.coach());
            return dangers.stream()
                    .filter(danger -> roles.contains(danger.role()))
                    .flatMap(danger -> check(procedure, danger, coach.coach()).stream());
        });
    }

    /** Of all that it names; most procedures name nothing dangerous. */
    private static Set<String> roles(Procedure procedure, Coach coach) {
        Set<String> roles = new HashSet<>();
        procedure.links().forEach(link -> {
            if (link.target() instanceof Target.OfThing thing) {
                coach.thing(thing.kind(), thing.id()).ifPresent(it -> roles.addAll(it.roles()));
            }
        });
        return roles;
    }

    private static Optional<Finding> check(Procedure procedure, Danger danger, Coach coach) {
        return used(procedure, danger, coach)
                .filter(link -> acts(procedure, danger) && !warned(procedure, link, danger))
                .map(link -> Finding.error(
                                "hazard-missing",
                                link.at(),
                                "procedure `"
                                        + procedure.id()
                                        + "` uses the role `"
                                        + danger.role()
                                        + "` and does not warn of "
                                        + danger.danger()
                                        + " before that with "
                                        + danger.least()
                                        + (danger.least() == Signal.DANGER ? "" : " or more"))
                        .mend("Put a hazard before the step, with what it does and how to keep out of it."));
    }

    private static boolean acts(Procedure procedure, Danger danger) {
        return procedure
                .steps()
                .anyMatch(step -> danger.acts().matcher(words(step.text())).find());
    }

    private static Optional<Inline.Link> used(Procedure procedure, Danger danger, Coach coach) {
        return Stream.concat(procedure.steps().flatMap(step -> step.text().stream()), procedure.opening().stream())
                .flatMap(Block::links)
                .filter(link -> link.target() instanceof Target.OfThing thing
                        && coach.thing(thing.kind(), thing.id())
                                .filter(it -> it.roles().contains(danger.role()))
                                .isPresent())
                .findFirst();
    }

    /** Hazards up to the step that uses the thing; all of them where only the opening names it. */
    private static boolean warned(Procedure procedure, Inline.Link link, Danger danger) {
        List<Step> steps = procedure.steps().toList();
        for (Step step : steps) {
            if (step.hazards().stream().anyMatch(hazard -> speaks(hazard, danger))) {
                return true;
            }
            if (step.text().stream().flatMap(Block::links).anyMatch(link::equals)) {
                return false;
            }
        }
        return false;
    }

    private static boolean speaks(Hazard hazard, Danger danger) {
        return hazard.signal().compareTo(danger.least()) <= 0
                && danger.spoken().matcher(words(hazard.text())).find();
    }

    private static String words(List<Block> blocks) {
        return blocks.stream()
                .flatMap(HazardMissing::inlines)
                .map(Inline::plain)
                .collect(Collectors.joining(" "));
    }

    private static Stream<List<Inline>> inlines(Block block) {
        return block.accept(new Block.Visitor<Stream<List<Inline>>>() {
            @Override
            public Stream<List<Inline>> paragraph(Block.Paragraph paragraph) {
                return Stream.of(paragraph.text());
            }

            @Override
            public Stream<List<Inline>> bullets(Block.Bullets bullets) {
                return bullets.items().stream();
            }

            @Override
            public Stream<List<Inline>> table(Block.Table table) {
                return Stream.concat(
                        table.head().stream(), table.rows().stream().flatMap(List::stream));
            }

            @Override
            public Stream<List<Inline>> handling(Block.Handling handling) {
                return handling.switches().stream()
                        .flatMap(handled -> handled.pieces().stream())
                        .filter(piece -> piece.sort() == Block.Sort.ACT)
                        .map(piece -> List.of(new Inline.Text(piece.words())));
            }
        });
    }
}
