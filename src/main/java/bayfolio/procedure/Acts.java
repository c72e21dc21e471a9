package bayfolio.procedure;

import bayfolio.fact.Facts;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Condition;
import bayfolio.model.Equipment;
import bayfolio.model.Situation;
import bayfolio.model.Standpoint;
import bayfolio.model.Whose;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import bayfolio.template.Template;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a kind of equipment adds to pages that are put together of what a coach has: the sections below the head of its
 * file, each for one or several situations.
 *
 * @param equipment as far as it could be read; what is wrong with a part of its head takes nothing else along
 * @param script the whole text, for all who look at texts
 * @param whole whether it is known which words it gives
 */
public record Acts(Equipment equipment, Script script, boolean whole) {
    private static final Pattern HEADING = Pattern.compile("^## +([^({]+?) *(?:\\(([^)]*)\\))? *$");

    /**
     * Steps for some situations.
     *
     * @param place where one stands for them, where that is not where one stands for the kind
     */
    record Section(Set<Situation> situations, Optional<Standpoint> place, Template steps, Place at) {}

    /** What is wrong with its headings is told. */
    public static Acts of(Equipment written, SourceFile file, String body, int firstLine, Consumer<Finding> findings) {
        Equipment equipment = new Equipment(written.facts().asRead());
        Script script = Script.of(
                Form.EQUIPMENT,
                head(equipment),
                new Condition.Has<>(equipment.id()),
                file,
                body,
                firstLine,
                Whose.ALL,
                findings);
        Acts acts = new Acts(
                equipment,
                script,
                written.facts().read(Equipment.FEATURES) && written.facts().read(Equipment.APPLIANCE));
        sections(script, findings);
        return acts;
    }

    /** As a script has one, so that all who look at texts can. */
    private static Head head(Equipment equipment) {
        Facts facts = equipment.facts();
        Place at = facts.at();
        Facts.Draft head = Facts.draft(Head.SHAPE, at)
                .put(Head.STAGE, new Located<>(Stage.LIVING, at))
                .put(Head.WHO, new Located<>(Who.RENTER, at));
        facts.ifRead(Equipment.ID).ifPresent(it -> head.put(Head.ID, it));
        facts.ifRead(Equipment.NAME).ifPresent(it -> head.put(Head.TITLE, it));
        facts.ifRead(Equipment.THERE_WHEN).ifPresent(it -> head.put(Head.WHEN, it));
        facts.ifRead(Equipment.SOURCES).ifPresent(it -> head.put(Head.SOURCES, it));
        return new Head(head.done());
    }

    /** The sections of its text, or of a translation of that. */
    static List<Section> sections(Script script) {
        return script.once("", (it, nothing) -> sections(it, finding -> {}));
    }

    private static List<Section> sections(Script script, Consumer<Finding> findings) {
        List<Section> sections = new ArrayList<>();
        String[] lines = script.body().split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            if (!lines[i].startsWith("#")) {
                continue;
            }
            int end = i + 1;
            while (end < lines.length && !lines[end].startsWith("#")) {
                end++;
            }
            Place at =
                    Place.of(script.file(), script.firstLine() + i, 1, lines[i].codePointCount(0, lines[i].length()));
            String body = String.join("\n", List.of(lines).subList(i + 1, end)) + "\n";
            int first = script.firstLine() + i + 1;
            heading(lines[i], at, findings)
                    .ifPresent(heading -> sections.add(new Section(
                            heading.situations,
                            heading.place,
                            Template.compile(script.file(), body, first, Template.Escape.MARKDOWN, told -> {}),
                            at)));
        }
        return List.copyOf(sections);
    }

    private record Named(Set<Situation> situations, Optional<Standpoint> place) {}

    private static Optional<Named> heading(String line, Place at, Consumer<Finding> findings) {
        Matcher heading = HEADING.matcher(line);
        if (!heading.matches()) {
            findings.accept(Finding.error("unknown-situation", at, "this heading names no situation")
                    .mend(mend()));
            return Optional.empty();
        }
        Set<Situation> situations = EnumSet.noneOf(Situation.class);
        for (String name : heading.group(1).split(",")) {
            Optional<Situation> situation = Situation.named(name);
            if (situation.isEmpty()) {
                String word = name.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
                findings.accept(Finding.error("unknown-situation", at, "there is no situation `" + name.strip() + "`")
                        .near(NearNames.to(word, Situation.words()))
                        .mend(mend()));
            }
            situation.ifPresent(situations::add);
        }
        Optional<Standpoint> place = Optional.ofNullable(heading.group(2))
                .flatMap(name -> Stream.of(Standpoint.values())
                        .filter(it -> Type.word(it)
                                .equals(name.strip().toLowerCase(Locale.ROOT).replace(' ', '-')))
                        .findFirst());
        if (heading.group(2) != null && place.isEmpty()) {
            findings.accept(Finding.error("unknown-situation", at, "nobody stands `" + heading.group(2) + "`")
                    .mend("Places are: inside, outside, driver seat."));
        }
        return situations.isEmpty() ? Optional.empty() : Optional.of(new Named(situations, place));
    }

    private static String mend() {
        return "Situations are: " + String.join(", ", Situation.words()).replace('-', ' ') + ".";
    }
}
