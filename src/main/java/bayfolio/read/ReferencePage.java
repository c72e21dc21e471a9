package bayfolio.read;

import static java.util.stream.Collectors.joining;

import bayfolio.document.PageKind;
import bayfolio.fact.Aside;
import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.finding.Article;
import bayfolio.measure.Quantity;
import bayfolio.measure.Scale;
import bayfolio.model.Country;
import bayfolio.model.Equipment;
import bayfolio.model.EquipmentKinds;
import bayfolio.model.FactTexts;
import bayfolio.model.FleetFacts;
import bayfolio.model.GivenFeature;
import bayfolio.model.HireMarks;
import bayfolio.model.Kinds;
import bayfolio.model.Roles;
import bayfolio.model.Side;
import bayfolio.model.Sources;
import bayfolio.model.Unit;
import bayfolio.model.Words;
import bayfolio.procedure.Head;
import bayfolio.procedure.Stage;
import bayfolio.procedure.TranslationHead;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Writes the reference for the people who describe coaches: every key of every file, the names that
 * procedures may use, references, units of measure. In Markdown.
 */
public final class ReferencePage {
    /**
     * A file that people write.
     *
     * @param example whole, though small: it is read by a test
     */
    private record Chapter(String title, Shape<?> shape, String about, String example) {}

    private static final List<Chapter> CHAPTERS = List.of(
            new Chapter("The coach: unit.yaml", Unit.SHAPE, """
                            One coach, in `units/<id>/unit.yaml`; its pictures are in `units/<id>/photos/`, its films in
                            `units/<id>/films/`. Leave out what you do not know: the handbook then says nothing of it, and
                            nothing is made up in its place.
                            """, """
                            # yaml-language-server: $schema=../shared/unit.schema.json
                            id: heron
                            name: Heron
                            body: cab-over
                            region: north-america
                            drive-side: left
                            size:
                              length: 24 ft 6 in
                              width: 8 ft
                              height: 11 ft 2 in
                            tanks:
                              - id: gray
                                name: Gray tank
                                contents: gray
                                capacity: 32 gal
                            """),
            new Chapter("The fleet: fleet.yaml", FleetFacts.SHAPE, """
                            What all coaches share, in `units/fleet.yaml`.
                            """, """
                            # yaml-language-server: $schema=shared/fleet.schema.json
                            name: Reed Coaches
                            base-address: https://handbook.reedcoaches.example
                            languages: [en-US]
                            country: us
                            phones:
                              - id: hours
                                number: +1 555-0100
                            """),
            new Chapter("Roles: roles.yaml", Roles.SHAPE, """
                            The closed list of roles, in `units/shared/roles.yaml`. A role says what a thing is for; shared
                            procedures speak of roles, so that one text serves every coach. A fleet without a list of its own
                            uses [the one that comes with the program](roles.yaml).
                            """, """
                            # yaml-language-server: $schema=roles.schema.json
                            roles:
                              - id: house-battery-switch
                                kind: switch
                                meaning: Connects the living-area battery to the living-area circuits
                                several: sometimes
                            """),
            new Chapter("Words: words.yaml", Words.SHAPE, """
                            The glossary, in `units/shared/words.yaml`. A fleet without one of its own uses
                            [the one that comes with the program](words.yaml).
                            """, """
                            # yaml-language-server: $schema=words.schema.json
                            words:
                              - id: shore-power
                                word: shore power
                                meaning: Electricity from a post at the site
                                british: electric hook-up
                            """),
            new Chapter("Sources: sources.yaml", Sources.SHAPE, """
                            What backs the procedures, in `units/shared/sources.yaml`: the regulation, the standard, the
                            manual, the article; or `common-practice`, where there is none. Staff see it, renters do not. A fleet
                            without a list of its own uses [the one that comes with the program](sources.yaml).
                            """, """
                            # yaml-language-server: $schema=sources.schema.json
                            sources:
                              - id: common-practice
                                title: common practice of the trade, no published source
                            """),
            new Chapter("Countries: countries/us.yaml", Country.SHAPE, """
                            What the law and the public bodies of a country say, in `units/shared/countries/`, a file for each;
                            `country` of the fleet, or of a coach, names the file, and so does `abroad` below `hire` of a coach. Each
                            value names what was read. What was read of others, and not of the public body itself, says so
                            (`as-reported`); what nobody has read is `from-memory`, and renters are not told it. What is not known is
                            left out. A file that a fleet does not have is the one that comes with the program.
                            """, """
                            # yaml-language-server: $schema=../country.schema.json
                            name: the United States
                            emergency:
                              - number: "911"
                                reaches: police, fire, ambulance
                                source: Federal Communications Commission, guide on text to 911
                            """),
            new Chapter("Equipment: equipment/ramps.md", Equipment.SHAPE, """
                            What kinds of equipment there are, in `units/shared/equipment/`, a file for each, named after it. A kind
                            says by which facts a coach has it, which procedures set it up and take it back, and how it has to stand
                            in each situation; conditions ask for it by its id. A file that a fleet does not have is the one that
                            comes with the program; one more file is one more kind.

                            Below the head stand its steps on the pages that are put together of what a coach has, under headings
                            that name situations: `## Driving, ferry`; a place in brackets, `(outside)`, where one does not stand for
                            them where one stands for the kind. Pages ask for them by `{{acts.driving}}`. A situation without a
                            heading has the link to the procedure that takes the thing back, where it has to be in the first of
                            the states that it can take.

                            `there-when` and `of` name facts in square brackets, behind the kind of thing or the record that they are
                            of: `supply[source = shore, volts < 200 V]`, `slide[]` for any, `gas[kind = tank]`, `unit[solar]` for the
                            coach itself. `key` is stated, `no key` is not; `=` and `!=` take several words, `a|b`; `role = a` holds a
                            role, `count > 1` are several.
                            """, """
                            ---
                            id: ramps
                            name: Leveling ramps
                            meaning: Wedges that a wheel is driven onto
                            system: outside
                            there-when: item[role = leveling-ramp]
                            turn: ramps
                            stands: driver-seat
                            set-up-by: [level-with-ramps]
                            undone-by: [drive-off-ramps]
                            set-up-after:
                              - what: [tow]
                                why: What hangs on behind rolls away.
                                must: yes
                            needs-no-guide: yes
                            can-be: [stowed, out]
                            states: {driving: stowed, carried: any, refueling: any, ferry: any, asleep: any, unattended: any, wind: any, frost: any, pickup: stowed, return: stowed, standing: any}
                            ---
                            ## Driving (outside)
                            1. See that the ramps are on board: [](item:leveling-ramp). {#ramps-on-board}
                            """),
            new Chapter("Marks of earlier hires: marks.yaml", HireMarks.SHAPE, """
                            What earlier hires left on a coach, in `units/<id>/marks.yaml`; a coach without a mark needs no such
                            file. Its damage sheet numbers them in this order and shows those whose place is measured; renters
                            see none of it.
                            """, """
                            # yaml-language-server: $schema=../shared/marks.schema.json
                            marks:
                              - side: left
                                from-front: 9 ft
                                height: 3 ft
                                where: below the galley window
                                kind: scratch
                                size: 7 in
                                since: 2026-05-02
                            """),
            new Chapter("A procedure: its head", Head.SHAPE, """
                            A procedure is a Markdown file in `units/shared/procedures/`, or in `units/<id>/procedures/` for what
                            only one coach needs. It begins with a head between two lines of three hyphens; the text follows below.

                            A trouble guide is such a file in `units/shared/trouble/`: its steps are checks, cheap and likely ones
                            first, points below a check say what each finding means, and it ends with `## If nothing helped`. A file
                            in `units/shared/stages/` tells of a part of the trip; each `## …` in it is a question that renters ask,
                            answered below by references. The page of the stage lists its procedures in the order in which the
                            questions name them.
                            """, """
                            ---
                            id: use-water-pump
                            title: Get water from the tank
                            stage: living
                            who: renter
                            when: city-water and not fill-valve
                            ---
                            """),
            new Chapter("A text in another language: its head", TranslationHead.SHAPE, """
                            In `units/shared/translations/de/procedures/`, or `units/<id>/translations/de/trouble/` and so on:
                            `de` is the language, the folder below it that of the text which it translates. The name of the file is
                            free. The text below the head is whole; only words are translated. Headings that every procedure has
                            (`## Done when`), the signal words, `**Safe to stop:**`, references, names and `{#anchors}` stay as they
                            are, since they are marks: pages say them in the words of the language.
                            """, """
                            ---
                            of: use-water-pump
                            title: Wasser aus dem Tank nehmen
                            source: 8eb6669bb8cb
                            ---
                            """),
            new Chapter("Facts in another language: facts.yaml", FactTexts.SHAPE, """
                            What a description says in words, in `units/<id>/translations/de/facts.yaml`; what the fleet's own file,
                            the glossary and the countries say, in `units/shared/translations/de/facts.yaml`. `bayfolio texts
                            --language de <id>` prints all that is still to be done, each text as it is written and with its digest.
                            A coach whose own texts are in another language than its handbook says so under `written-in`; readers
                            get what is not translated as it is written, and are told so.
                            """, """
                            # yaml-language-server: $schema=../../../shared/fact-texts.schema.json
                            texts:
                              - of: switch/pump-switch/name
                                source: "1a2b3c4d5e6f"
                                text: Pumpenschalter
                            """));

    private final StringBuilder page = new StringBuilder();
    private final Set<Shape<?>> told = new LinkedHashSet<>();

    private ReferencePage() {}

    public static String write() {
        return new ReferencePage().whole();
    }

    private String whole() {
        page.append("""
                # Reference for writers

                <!-- Written by the program from its own declarations; what is changed here by hand is lost. -->

                Every key of every file of a fleet, what may stand behind it, and whether it must be there. The check
                of the program follows the same declarations, and so do the schemas beside this page, by which an
                editor completes and checks what you type.

                """);
        CHAPTERS.forEach(
                chapter -> page.append("- ").append(link(chapter.title)).append("\n"));
        Stream.of("Sisters and their model", "Films", "Names in procedures", "References", "Units of measure")
                .forEach(title -> page.append("- ").append(link(title)).append("\n"));
        page.append("""

                ## How to write values

                - The files are YAML. A key may stand once in a record, and only keys that are listed here; write each
                  value where it belongs, without anchors, aliases or tags.
                - *Text* is written as it is to be read. Put it in quotes if it holds a colon followed by a blank or a `#`
                  after a blank, or begins with a character such as `*`, `&`, `[`, `{`, `@` or `%`.
                - *An id* is made of small letters, digits and single hyphens: `gray-valve`. Addresses are made of ids, so
                  choose them to last; an id that had to change goes under `formerly`, and what is gone under `taken-out`.
                - *A measure* is a number and [its unit](#units-of-measure): `100 gal`.
                - *A day* is written year, month, day: `2026-04-18`.
                - *Yes or no* is written `yes` or `no`.
                - *A list* is written one below the other with hyphens, or in brackets: `[gas, ac]`. It may be empty.
                - A key without a value is a mistake: leave the whole key out.
                """);
        CHAPTERS.forEach(this::chapter);
        models();
        films();
        namesInProcedures();
        references();
        unitsOfMeasure();
        return page.toString();
    }

    private void chapter(Chapter chapter) {
        boolean markdown = chapter.example.startsWith("---");
        page.append("\n## ")
                .append(chapter.title)
                .append("\n\n")
                .append(chapter.about)
                .append(markdown ? "\n```\n" : "\n```yaml\n")
                .append(chapter.example)
                .append("```\n\n");
        table(chapter.shape);
        List<Shape<?>> within = new ArrayList<>();
        within(chapter.shape, within);
        within.forEach(shape -> {
            page.append("\n### ").append(capital(shape.name())).append("\n\n");
            page.append(shape.meaning()).append("\n\n");
            table(shape);
        });
    }

    /** Records that are not told yet, each behind the one that first speaks of it. */
    private void within(Shape<?> shape, List<Shape<?>> within) {
        for (Key<?> key : shape.keys()) {
            Type<?> type = key.type() instanceof Type.ListOf<?> list ? list.element() : key.type();
            if (type instanceof Type.Nested<?> nested && told.add(nested.shape())) {
                within.add(nested.shape());
                within(nested.shape(), within);
            }
        }
    }

    private void table(Shape<?> shape) {
        row("Key", "What is written", "Must", "Meaning", "What it can be");
        row("---", "---", "---", "---", "---");
        for (Key<?> key : shape.keys()) {
            row(
                    code(key.name()),
                    inWords(key.type()),
                    key.required() ? "yes" : "no",
                    key.meaning(),
                    key.range().map(Range::inWords).orElse(""));
        }
    }

    private void row(String... cells) {
        page.append(Arrays.stream(cells).map(cell -> cell.replace("|", "\\|")).collect(joining(" | ", "| ", " |\n")));
    }

    private static String inWords(Type<?> type) {
        return type.accept(new Type.Visitor<String>() {
            @Override
            public String text(Type.Text text) {
                if (Type.ofWords(text)) {
                    return text.phrase().inWords();
                }
                return text.equals(Type.ID) ? "an id, such as `gray-valve`" : text.taken();
            }

            @Override
            public <Q extends Quantity> String measured(Type.Measured<Q> measured) {
                Scale<Q> scale = measured.scale();
                return "[" + scale.name() + "](#units-of-measure), such as " + code(scale.example());
            }

            @Override
            public <E> String choice(Type.Choice<E> choice) {
                return "one of " + codes(choice.words().keySet(), "or");
            }

            @Override
            public <E> String listed(Type.Listed<E> listed) {
                return "one of the " + listed.list() + " that files of equipment declare";
            }

            @Override
            public String yesNo(Type.YesNo yesNo) {
                return "`yes` or `no`";
            }

            @Override
            public String whole(Type.Whole whole) {
                return "a whole number from " + whole.least() + " to " + whole.most();
            }

            @Override
            public String day(Type.Day day) {
                return "a day, such as `2026-04-18`";
            }

            @Override
            public String reference(Type.Reference reference) {
                List<String> kinds = List.copyOf(reference.kinds());
                String first = kinds.get(0);
                String links = joined(
                        kinds.stream()
                                .map(kind -> "[" + kind + "](#" + kind + ")")
                                .toList(),
                        "or");
                return "the id of " + Article.a(first).replace(first, "") + links;
            }

            @Override
            public String role(Type.Role role) {
                return "a [role](roles.yaml)"
                        + role.kind().map(kind -> " of " + Article.a(kind)).orElse("");
            }

            @Override
            public <E> String list(Type.ListOf<E> list) {
                return list.cues()
                        ? "the name of a WebVTT file in the films folder, each cue of it " + inWords(list.element())
                        : "a list, each " + inWords(list.element());
            }

            @Override
            public <E extends Described> String record(Type.Nested<E> nested) {
                String name = nested.shape().name();
                return "a record: [" + name + "](#" + name + ")";
            }
        });
    }

    private void namesInProcedures() {
        page.append("""

                ## Steps in procedures

                A step is an item of a numbered list: one act, and what belongs to it.

                | Written | What it is |
                | --- | --- |
                | `1. Turn on the pump. {#pump-on}` | The act, and behind it the name of the step, by which links, translations and later editions know it. Without one it goes by its first words. |
                | `[](switch:water-pump-switch "on")` | The thing that it is done to; with the state that it shall have, the coach adds how it is worked, its plate and its looks. |
                | `**Then:** the pump hums` | What follows. |
                | `**Takes:** {{unit.transfer.delay}}` | How long it takes. |
                | `**Helper:** watches the mirror` | What a second person does. |
                | `**Stop if:** it grinds` | At which sight one goes no further. |
                | `**Good:** {{normal}}` | Whatever else the coach says of it, under a label of your own. |
                | `- **It stays dark:** call us. [](phone:hours)` | A point below the step: what one may see, and what to do then. A procedure has two at most, a trouble guide as many as there are. |

                ## Names in procedures

                The text of a procedure is Markdown, filled in for each coach with Mustache.

                | Written | What comes of it |
                | --- | --- |
                | `{{unit.size.height}}` | The value stands there. If the coach does not state it, the check tells you. |
                | `{{#has.generator}}…{{/has.generator}}` | The text between stays where it is true or stated. |
                | `{{^has.generator}}…{{/has.generator}}` | The text between stays where it is not. |
                | `{{#slide.slide-out}}…{{/slide.slide-out}}` | The text between is repeated for each thing that holds the role. Within it, `{{name}}`, `{{id}}` and all keys of the thing may be used alone. |

                A name that does not exist is a mistake wherever it stands. Within a section, a name is looked for in the
                innermost thing first, then outward.

                | Name | What it gives |
                | --- | --- |
                | `unit.<key>` | A fact of the coach by [its key](#the-coach-unityaml); those of a record within it by one more name: `{{unit.water.full-sign}}`. |
                | `fleet.<key>` | A fact of the fleet by [its key](#the-fleet-fleetyaml): `{{fleet.fuel-rule}}`. |
                | `country.<key>` | A fact of the country that the coach is hired out in, by [its key](#countries-countriesusyaml): `{{country.food.limit}}`. |
                | `phone.<id>` | The number of that [phone](#phone): `{{phone.after-hours}}`. A reference, `[](phone:after-hours)`, can be tapped to call. |
                | `has.<feature>` | Whether the coach has [a feature](#features), for sections. |
                """);
        row(
                "`count.compartments-<side>`",
                "How many doors of compartments there are on a side: "
                        + codes(Arrays.stream(Side.values()).map(Type::word).toList(), "or")
                        + ". A compartment that goes right through has two.");
        page.append("""
                | `all.<kind>` | Every thing of [a kind](#kinds) in walking order, for sections: `{{#all.switch}}…{{/all.switch}}`. |
                | `reckoned.<what>` | What is worked out from the coach: `bleach-for-50ppm` and `bleach-for-100ppm`, how much household bleach disinfects its fresh tank; `lowest-sign`, the lowest height sign that it may be driven under, with the margin; `extension-cord`, the sentence that says which one may be used, if any. |
                | `procedure.<id>`, `trouble.<id>` | Whether that one applies to the coach, for a section around a reference to it: `{{#trouble.no-heat}}See [](trouble:no-heat).{{/trouble.no-heat}}` |
                | `acts.<situation>` | The steps that this coach's equipment has for a situation, each from the file of its kind, in the order of this coach and under a heading for each place: `{{acts.refueling}}`. It stands on a line of its own. |
                | `turn.<turn>`, `turn-back.<turn>` | The procedures that set up what has that turn, by the files of equipment, and those that take it back: `{{#turn-back.plug}}Unplug: [](procedure:{{id}}){{/turn-back.plug}}`. `each` gives all of them in the order of this coach, or from its end: `{{#turn-back.each}}1. [](procedure:{{id}}){{/turn-back.each}}`. Each has `id` and `title`. |
                | `<kind>.<id>` | The thing of that id, for a procedure of one coach: `{{tank.gray.capacity}}`. |
                | `<kind>.<role>` | All that hold that [role](roles.yaml), in walking order from the entry door. If only one holds it, its keys may follow at once: `{{tank.fresh.capacity}}`. |
                | `any.<kind>.<role>` | Whether the coach has such a thing, for text that stands there once however many there are: `{{#any.switch.water-pump-switch}}Turn off the pump at one of these: [](switch:water-pump-switch).{{/any.switch.water-pump-switch}}` |
                | `<key>.<key>` | Where a fact names another thing by its id, the keys of that thing may follow: `{{tank.name}}` within a connection. |
                | `place` | Within a thing: where it is, in words put together from `side`, `in` and `where`. |
                | `heats`, `cools` | Within a switch that works a room's heating or cooling: whether it does, by the appliances that it `feeds` or that name it under `controls`. |

                ### Kinds

                """);
        row("Kind", "What it is");
        row("---", "---");
        Kinds.ALL.forEach(kind -> row("[" + code(kind.name()) + "](#" + kind.name() + ")", kind.meaning()));
        page.append("""

                ### Features

                A feature follows from the description and is never written down itself. Sections ask for it as
                `has.<feature>`; the `when` of a head joins features with `and`, `or` and `not`, which binds closest, and with
                brackets: `black-tank and not macerator`. `every coach` stands for itself alone.

                """);
        row("Feature", "The coach has it when");
        row("---", "---");
        EquipmentKinds kinds = FleetReader.equipment(new Folder(Path.of("no-folder-of-a-fleet")), told -> {})
                .kinds();
        Map<String, List<String>> when = new TreeMap<>();
        for (Equipment kind : kinds.all()) {
            String its = kind.facts().get(Equipment.THERE_WHEN);
            when.computeIfAbsent(kind.id(), it -> new ArrayList<>()).add(its);
            kind.facts()
                    .all(Equipment.FEATURES)
                    .forEach(given -> when.computeIfAbsent(given.facts().get(GivenFeature.ID), it -> new ArrayList<>())
                            .add(given.facts().find(GivenFeature.THERE_WHEN).orElse(its)));
        }
        when.forEach((word, conditions) -> row(
                code(word),
                conditions.stream().distinct().map(ReferencePage::code).collect(joining(" or "))));
    }

    private void models() {
        page.append("""

                ## Sisters and their model

                What several coaches share stands once, in `units/models/<model>/model.yaml`, with the keys of a coach; photos, films,
                procedures, trouble guides, stages and translations of the model lie beside it. A coach names it, `model: tern-28`, and
                says only what differs. One level is enough: a model has no model.

                - A record is laid over that of the same key, and so are records within it. A list of things is laid over by the
                  ids: what the coach says of `gray-tank` goes for the `gray-tank` of the model, and what has an id that the model
                  does not have is the coach's own. Any other list, and every value, stands instead of the model's.
                - Things keep the order of the model; those of the coach alone follow.
                - What nobody can say for several coaches, a model cannot say either:
                  """).append(ofEachCoach()).append("""
                .

                Three keys may stand in every record of a coach, and are no facts themselves:

                """);
        row("Key", "Meaning");
        row("---", "---");
        Aside.ALL.forEach(aside -> row(code(aside.name()), aside.meaning()));
        page.append("""

                `bayfolio show <id>` prints a coach as it is, each line with the place that it comes from, and `bayfolio show <id>
                --changed` what differs. The schema for a description that names a model is `units/models/<model>/unit.schema.json`;
                it offers the ids of the model.
                """);
    }

    /** Of all records of a coach, in their order. */
    private static String ofEachCoach() {
        Set<Shape<?>> records = new LinkedHashSet<>();
        records(Unit.SHAPE, records);
        Set<String> names = new LinkedHashSet<>();
        records.forEach(shape -> shape.keys().stream()
                .filter(shape::ofEachCoach)
                .forEach(key -> names.add(code(key.name()) + (shape == Unit.SHAPE ? "" : " (" + shape.name() + ")"))));
        names.removeIf(name -> name.startsWith("`checked-") && name.contains("("));
        return String.join(", ", names);
    }

    private static void records(Shape<?> shape, Set<Shape<?>> into) {
        if (into.add(shape)) {
            for (Key<?> key : shape.keys()) {
                Type<?> type = key.type() instanceof Type.ListOf<?> list ? list.element() : key.type();
                if (type instanceof Type.Nested<?> nested) {
                    records(nested.shape(), into);
                }
            }
        }
    }

    private void films() {
        page.append("""

                ## Films

                A film lies in `units/<id>/films/`, or in the folder of a model, and beside it its chapters in the form of WebVTT. Above the time of each cue
                stands the id of what is seen from then on; the page of that leads to its moment. What is told of it stands
                below the time.

                ```
                WEBVTT

                entry-door
                00:04.000 --> 00:11.500
                Lift the handle, then pull.

                l4-service-bay
                00:11.500 --> 00:20.000
                Gloves on before you touch a handle.
                ```

                A cue that names nothing on the coach is a mistake, as is one that begins before the one above it is over. In
                what is given out those are left out whose thing is for staff; the film itself is given out as it is.
                """);
    }

    private void references() {
        page.append("""

                ## References

                A reference is a Markdown link that names a thing by its kind: `[](switch:house-battery-switch)`. Left empty,
                the brackets are filled in with the thing's name and place; words of your own, `[this switch](switch:…)`, are
                kept. One that names nothing is a mistake, and so is one that a renter's procedure makes to a procedure for
                staff.

                A step that works a switch or valve names the state that it wants in the title of the link: `1. Open
                [](switch:black-dump-valve "open").` Below the step then stands what the coach says of it: how it is worked, its
                plate, what that state looks like and what the wrong one looks like. `on` and `open` take `work` and `on-look`,
                `off` and `shut` take `work-off` and `off-look`; `work` takes `work` alone, for what is moved, held or set;
                `at-pickup`, `driving`, `stored` and `returned` tell how it stands then. Where a role is held by several and
                one of them is enough, the title begins with `any`: `[](switch:water-pump-switch "any off")`,
                `[](item:fire-extinguisher "any")`.

                In a step the places of things stand below what is done, so that `Turn off the pump:` and a reference reads “Turn off the
                pump.” A strong word with a colon puts what follows it below the step, under that label: `**Good:** {{normal}}`.
                Do not paste a fact of the coach into a sentence; it may be one itself.

                | Written | What it leads to |
                | --- | --- |
                | `[](<kind>:<id>)` | The thing of that [kind](#kinds) and id, on the coach or at the site. |
                | `[](<kind>:<role>)` | All things that hold that [role](roles.yaml), joined by “and”, or by “or” where the title says `any`. |
                | `[](procedure:<id>)` | Another procedure, if it applies to the coach. |
                | `[](trouble:<id>)` | A trouble guide, if it applies to the coach. |
                | `[](word:<id>)` | A [word](words.yaml) of the glossary. |
                """);
        row(
                "`[](page:<name>)`",
                "A page: " + codes(PageKind.FOR_EVERYBODY, "or") + "; in texts for staff "
                        + codes(PageKind.FOR_STAFF, "or") + ", too.");
        row(
                "`[](stage:<stage>)`",
                "The procedures of a part of the trip: "
                        + codes(Arrays.stream(Stage.values()).map(Stage::word).toList(), "or")
                        + ". There must be one for renters.");
        row(
                "`[](phone:<id>)`",
                "A number to call, as the [fleet](#the-fleet-fleetyaml) lists it; `emergency` gives those of the [country](#countries-countriesusyaml).");
    }

    private void unitsOfMeasure() {
        page.append("""

                ## Units of measure

                A number, one blank or none, and the unit spelled exactly so. Decimals are set off by a point, thousands by a
                comma or not at all: `1,250.5 W`. Only temperatures may be below zero. Feet and inches may stand together:
                `12 ft 11 in`. Write a measure as you took it; the handbook shows it in both systems.

                """);
        row("What is measured", "Example", "Units taken");
        row("---", "---", "---");
        for (Scale<?> scale : Scale.all()) {
            row(capital(scale.name()), code(scale.example()), codes(scale.units(), ""));
        }
        page.append("""

                `gal`, `qt` and `cup` are those of the United States, and `mpg` counts such gallons; `t` is a tonne of 1,000 kg.
                """);
    }

    /** To a heading of this page, by the anchor that readers of Markdown give it. */
    private static String link(String title) {
        String anchor = title.toLowerCase(Locale.ROOT).replaceAll("[^a-z -]", "");
        return "[" + title + "](#" + anchor.replace(' ', '-') + ")";
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private static String code(String written) {
        return "`" + written + "`";
    }

    private static String codes(Collection<String> each, String last) {
        return joined(each.stream().map(ReferencePage::code).toList(), last);
    }

    private static String joined(List<String> each, String last) {
        if (last.isEmpty() || each.size() == 1) {
            return String.join(", ", each);
        }
        return String.join(", ", each.subList(0, each.size() - 1)) + " " + last + " " + each.get(each.size() - 1);
    }
}
