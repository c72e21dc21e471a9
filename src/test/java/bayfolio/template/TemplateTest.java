package bayfolio.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import bayfolio.template.Template.Escape;
import bayfolio.template.TemplateProblem.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.TextContentRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TemplateTest {
    private static final Value.Inner GRAY = inner(
            "name", new Value.Text("Gray tank"),
            "capacity", new Value.Text("55 gal"),
            "heated", new Value.Flag(false),
            "plate", new Value.Absent("the plate is not stated", "State it."));
    private static final Value.Inner BLACK =
            inner("name", new Value.Text("Black tank"), "heated", new Value.Flag(true));
    private static final Names COACH = names(
            "name", new Value.Text("Whimbrel"),
            "has",
                    inner(
                            "generator", new Value.Flag(true),
                            "solar", new Value.Flag(false)),
            "gray", new Value.Many("gray", List.of(GRAY)),
            "waste", new Value.Many("waste", List.of(GRAY, BLACK)),
            "spare", new Value.Many("spare", List.of()),
            "words", new Value.Many("words", List.of(new Value.Text("left"), new Value.Text("right"))),
            "solar", new Value.Absent("this coach has no solar charging", "Guard it."));

    private final List<TemplateProblem> complaints = new ArrayList<>();

    @Test
    void knownNamesArePrinted() {
        assertThat(filled("{{name}} has {{gray.capacity}}, {{ gray.name }}."))
                .isEqualTo("Whimbrel has 55 gal, Gray tank.");
        assertThat(complaints).isEmpty();
    }

    @Test
    void anUnknownNameIsToldWithItsPlaceAndNearNames() {
        assertThat(filled("Coach\n  called {{nmae}}!")).isEqualTo("Coach\n  called !");
        assertThat(complaints).singleElement().satisfies(complaint -> {
            assertThat(complaint.kind()).isEqualTo(Kind.UNKNOWN_NAME);
            assertThat(complaint.at()).hasToString("units/t.md:12:10");
            assertThat(complaint.at().endColumn()).isEqualTo(18);
            assertThat(complaint.message()).isEqualTo("there is no name `nmae`");
            assertThat(complaint.near()).containsExactly("name");
        });
    }

    @Test
    void eachOfSeveralUnknownNamesAlikeOnALineIsToldAtItsPlace() {
        filled("{{nmae}} {{#nmae}}{{/nmae}} {{ nmae }}{{^nmae}}{{nmae}}{{/nmae}}{{#nmae}}{{/nmae}}");

        assertThat(complaints).extracting(complaint -> complaint.at().column()).containsExactly(1, 10, 29, 39, 48, 65);
    }

    @Test
    void anUnknownNameWithinANameIsToldWhereItWasLookedFor() {
        assertThat(filled("{{gray.capasity}}")).isEmpty();
        assertThat(complaints).singleElement().satisfies(complaint -> {
            assertThat(complaint.message()).isEqualTo("there is no name `capasity` in `gray`");
            assertThat(complaint.near()).containsExactly("capacity");
        });
    }

    @Test
    void sectionsAskingForUnknownNamesAreTold() {
        assertThat(filled("{{#has.genertor}}runs{{/has.genertor}}{{^sollar}}dark{{/sollar}}"))
                .isEqualTo("dark");
        assertThat(complaints).extracting(TemplateProblem::name).containsExactly("genertor", "sollar");
    }

    @Test
    void anAbsentValueChoosesTheInverseAndIsToldOnlyWhenPrinted() {
        assertThat(filled("{{#solar}}sun{{/solar}}{{^solar}}no sun{{/solar}}")).isEqualTo("no sun");
        assertThat(complaints).isEmpty();

        assertThat(filled("by {{solar}}")).isEqualTo("by ");
        assertThat(complaints).singleElement().satisfies(complaint -> {
            assertThat(complaint.kind()).isEqualTo(Kind.NOTHING_THERE);
            assertThat(complaint.message()).isEqualTo("this coach has no solar charging");
            assertThat(complaint.mend()).isEqualTo("Guard it.");
        });
    }

    @ParameterizedTest
    @CsvSource({
        "has.generator, yes",
        "has.solar, no",
        "gray, yes",
        "waste, yesyes",
        "spare, no",
        "gray.name, yes",
        "gray.plate, no",
        "gray.heated, no",
        "name, yes"
    })
    void aSectionOrItsInverseIsTaken(String name, String taken) {
        assertThat(filled("{{#%1$s}}yes{{/%1$s}}{{^%1$s}}no{{/%1$s}}".formatted(name)))
                .isEqualTo(taken);
        assertThat(complaints).isEmpty();
    }

    @Test
    void sectionsRepeatForEachOfSeveralAndLookOutward() {
        assertThat(filled("{{#waste}}{{name}}{{#has.generator}}!{{/has.generator}} {{/waste}}"))
                .isEqualTo("Gray tank! Black tank! ");
        assertThat(filled("{{#words}}<{{.}}>{{/words}}")).isEqualTo("<left><right>");
        assertThat(complaints).isEmpty();
    }

    @Test
    void whatOnlySomeOfSeveralHaveIsToldForTheOthers() {
        assertThat(filled("{{#waste}}{{name}}: {{capacity}}; {{/waste}}"))
                .isEqualTo("Gray tank: 55 gal; Black tank: ; ");
        assertThat(complaints).singleElement().extracting(TemplateProblem::name).isEqualTo("capacity");
    }

    @Test
    void tagLinesOfTheirOwnPrintNoLines() {
        assertThat(filled("""
                                1. See
                                {{#waste}}
                                1. Empty {{name}}
                                {{/waste}}
                                1. Go
                                """)).isEqualTo("""
                        1. See
                        1. Empty Gray tank
                        1. Empty Black tank
                        1. Go
                        """);
    }

    @Test
    void severalAskedDirectlyAreTold() {
        assertThat(filled("{{waste.capacity}}")).isEmpty();
        assertThat(complaints).singleElement().satisfies(complaint -> {
            assertThat(complaint.message()).isEqualTo("`waste` is held by several on this coach");
            assertThat(complaint.mend()).isEqualTo("Repeat the text with {{#waste}} and {{/waste}}.");
        });
    }

    @Test
    void aTextHasNoNamesWithinIt() {
        filled("{{name.length}}");

        assertThat(complaints)
                .singleElement()
                .extracting(TemplateProblem::message)
                .isEqualTo("`name` has no names within it");
    }

    @Test
    void severalTextsArePrintedWithCommas() {
        assertThat(filled("{{words}}")).isEqualTo("left\\, right");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{{gray}}", "{{waste}}", "{{has}}", "{{.}}", "{{#gray}}{{.}}{{/gray}}"})
    void whatIsNoTextIsNotPrinted(String template) {
        assertThat(filled(template)).isEmpty();
        assertThat(complaints)
                .singleElement()
                .extracting(TemplateProblem::message)
                .asString()
                .endsWith("is not a text to print");
    }

    @Test
    void aFileCallsOthersAndTheirNamesAreChecked() {
        SourceFile page = new SourceFile("themes/page.mustache", "<p>{{>line}}</p>");
        SourceFile line = new SourceFile("themes/line.mustache", "Coach\n{{name}} {{nmae}}");

        Template template = Template.compile(
                page, Escape.HTML, name -> name.equals("line") ? Optional.of(line) : Optional.empty(), complaints::add);

        assertThat(template.fill(COACH, complaints::add).text()).isEqualTo("<p>Coach\nWhimbrel </p>");
        assertThat(complaints)
                .singleElement()
                .extracting(complaint -> complaint.at().toString())
                .isEqualTo("themes/line.mustache:2:10");
    }

    @Test
    void asksAreListedAlsoWhereNoSectionIsTaken() {
        Template template = compile("{{#waste}}{{name}}{{^plate}}{{x}}{{/plate}}{{/waste}}");

        assertThat(template.asked())
                .extracting(Template.Asked::name, asked -> asked.within().map(Template.Asked::name))
                .containsExactly(
                        tuple("waste", Optional.empty()),
                        tuple("name", Optional.of("waste")),
                        tuple("plate", Optional.of("waste")),
                        tuple("x", Optional.of("waste")));
    }

    // ---- escaping ----

    @Test
    void valuesAreEscapedForHtml() {
        Names names = names("x", new Value.Text("<b title=\"a\">Tom's & `mine`</b>"));

        assertThat(compile("<p>{{x}}</p>", Escape.HTML)
                        .fill(names, complaints::add)
                        .text())
                .isEqualTo("<p>&lt;b title&#61;&quot;a&quot;&gt;Tom&#39;s &amp; &#96;mine&#96;&lt;/b&gt;</p>");
    }

    @Test
    void aValueIsOneLineInMarkdown() {
        Names names = names("x", new Value.Text("first \r\n  second\n\n# third"));

        assertThat(compile("1. {{x}}").fill(names, complaints::add).text()).isEqualTo("1. first second \\# third");
    }

    @Test
    void everyAsciiPunctuationReadsAsItselfInMarkdown() {
        StringBuilder punctuation = new StringBuilder("x ");
        for (char c = '!'; c <= '~'; c++) {
            punctuation.append(Character.isLetterOrDigit(c) ? "" : c);
        }

        assertReadsAsItself(punctuation.toString());
    }

    @Test
    void randomTextsReadAsThemselvesInMarkdown() {
        String alphabet = "!\"#$%&'()*+,-./:;<=>?@[\\]^_`{|}~ aZ019\u00e9\u20ac\ud83d\ude80\uE000\u007f";
        int[] letters = alphabet.codePoints().toArray();
        Random random = new Random(20260401);
        for (int i = 0; i < 3_000; i++) {
            StringBuilder text = new StringBuilder();
            int length = 1 + random.nextInt(24);
            for (int j = 0; j < length; j++) {
                text.appendCodePoint(letters[random.nextInt(letters.length)]);
            }
            if (!text.toString().isBlank()) {
                assertReadsAsItself(text.toString().strip());
            }
        }
    }

    /** At the start of a line, within it, in emphasis. */
    private void assertReadsAsItself(String value) {
        Names names = names("x", new Value.Text(value));
        for (String around : List.of("{{x}}", "a {{x}} b", "1. {{x}}", "[{{x}}]", "({{x}})")) {
            String markdown = compile(around).fill(names, complaints::add).text();
            String read = TextContentRenderer.builder()
                    .build()
                    .render(Parser.builder().build().parse(markdown));

            assertThat(read).as(markdown).isEqualTo(around.replace("{{x}}", value));
        }
        assertThat(complaints).isEmpty();
    }

    // ---- places ----

    @Test
    void everyWordOfTheOutputKnowsWhereItIsWritten() {
        Random random = new Random(1837);
        for (int i = 0; i < 400; i++) {
            Generated generated = new Generated(random);
            String template = generated.lines(0);
            SourceFile file = new SourceFile("units/t.md", "---\nhead\n---\n" + template);
            Output output = Template.compile(file, template, 4, Escape.MARKDOWN, complaints::add)
                    .fill(COACH, complaints::add);

            assertThat(complaints).as(template).isEmpty();
            Matcher word = Pattern.compile("\\p{So}?w\\d+x").matcher(output.text());
            while (word.find()) {
                Place at = output.place(word.start(), word.end() - word.start());
                assertThat(at).as(word.group() + " in\n" + template).isEqualTo(place(file, word));
            }
        }
    }

    /** Each word is written once. */
    private static Place place(SourceFile file, Matcher word) {
        for (int line = 1; line <= file.lineCount(); line++) {
            int start = file.line(line).indexOf(word.group());
            if (start >= 0) {
                String before = file.line(line).substring(0, start);
                return Place.of(
                        file,
                        line,
                        1 + before.codePointCount(0, before.length()),
                        word.group().codePointCount(0, word.group().length()));
            }
        }
        throw new AssertionError(word.group() + " is not written");
    }

    /** Templates in which every word is another. */
    private static final class Generated {
        private static final List<String> SECTIONS =
                List.of("#waste", "#gray", "#has.generator", "^has.solar", "^solar", "#has.solar");
        private final Random random;
        private int words;

        Generated(Random random) {
            this.random = random;
        }

        String lines(int depth) {
            StringBuilder text = new StringBuilder();
            int lines = 1 + random.nextInt(4);
            for (int i = 0; i < lines; i++) {
                if (depth < 3 && random.nextInt(4) == 0) {
                    String section = section();
                    text.append(indent())
                            .append("{{")
                            .append(section)
                            .append("}}")
                            .append("\n");
                    text.append(lines(depth + 1));
                    text.append(indent())
                            .append("{{/")
                            .append(section.substring(1))
                            .append("}}\n");
                } else {
                    text.append(indent()).append(line(depth)).append("\n");
                }
            }
            return text.toString();
        }

        private String line(int depth) {
            StringBuilder line = new StringBuilder();
            int pieces = random.nextInt(6);
            for (int i = 0; i < pieces; i++) {
                switch (random.nextInt(depth < 3 ? 6 : 4)) {
                    case 0 -> line.append("{{name}}");
                    case 1 -> line.append(" ");
                    case 2 -> line.append("{{! said aside }}");
                    case 3 -> line.append(word()).append(random.nextBoolean() ? " " : "");
                    default -> {
                        String section = section();
                        line.append("{{").append(section).append("}}");
                        line.append(line(depth + 1));
                        line.append("{{/").append(section.substring(1)).append("}}");
                    }
                }
            }
            return line.toString();
        }

        private String word() {
            return (random.nextInt(3) == 0 ? "\ud83d\ude80" : "") + "w" + words++ + "x";
        }

        private String indent() {
            return " ".repeat(random.nextInt(3) == 0 ? 2 : 0);
        }

        private String section() {
            return SECTIONS.get(random.nextInt(SECTIONS.size()));
        }
    }

    @Test
    void aValueIsOnePlaceAsAWhole() {
        Output output = compile("See {{gray.name}}.").fill(COACH, complaints::add);

        Place at = output.place(output.text().indexOf("tank"), 4);

        assertThat(at).hasToString("units/t.md:11:5");
        assertThat(at.endColumn()).isEqualTo(18);
    }

    @Test
    void aStretchAroundAValueIsAsLongAsItIsWritten() {
        Output output = compile("(switch:{{name}}-one) end").fill(COACH, complaints::add);

        Place at = output.place(1, "switch:Whimbrel\\-one".length() - 1);

        assertThat(at.column()).isEqualTo(2);
        assertThat(at.endColumn()).isEqualTo("(switch:{{name}}-one".length() + 1);
    }

    @Test
    void charactersThatNobodySeesArePrintedAsTheyAre() {
        Names names = names("x", new Value.Text("a\uE000\uE100\uE100b"));

        Output output = compile("one\uE000\uE200 {{x}} two").fill(names, complaints::add);

        assertThat(output.text()).isEqualTo("one\uE000\uE200 a\uE000\uE100\uE100b two");
        assertThat(output.place(output.text().indexOf("two"), 3).column()).isEqualTo(13);
    }

    // ---- malformed templates ----

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    x\\n{{#waste}}\\ny\\nz        | 12 | the section `waste` is never closed
                    {{#waste}}\\n{{#gray}}\\n{{/waste}}\\n{{/gray}} | 13 | `waste` is closed where `gray` is open
                    x\\n\\n{{/waste}}             | 13 | `waste` is closed and was never opened
                    x\\ny {{{name}}}              | 12 | the template is malformed: printing without escaping is not allowed
                    x\\ny {{&name}}               | 12 | the template is malformed: printing without escaping is not allowed
                    x\\ny {{%PRAGMA}} z           | 12 | the template is malformed: pragmas are not allowed
                    x\\n\\n{{=<% %>=}}\\n<%name%> | 13 | the template is malformed: delimiters cannot be changed
                    x\\n{{>line}}\\nz             | 12 | the template is malformed: there is no partial `line`
                    x\\n{{>*line}}\\nz            | 12 | the template is malformed: partials are called by their names only
                    x\\n{{<page}}{{$a}}{{/a}}{{/page}}\\nz | 12 | the template is malformed: inheritance is not allowed
                    x\\n{{?gray}}y{{/gray}}       | 12 | the template is malformed: `?` is not allowed
                    x\\n{{}}\\nz                  | 12 | the template is malformed: Empty mustache
                    x\\n{{#}}{{/}}\\nz            | 12 | the template is malformed: a section needs a name
                    x\\n{{#.}}y{{/.}}\\nz         | 12 | the template is malformed: a section needs a name
                    x\\ny {{name\\nz              | 12 | a tag is not closed
                    x\\ny {{name} z\\nz           | 12 | a tag is not closed
                    x\\ny {{\\nname}}\\nz         | 12 | a tag is not closed
                    x\\n{{! said\\naside}}\\nz    | 12 | a tag is not closed
                    """)
    void aMalformedTemplateIsToldOnItsLineAndPrintsNothing(String written, int line, String message) {
        Template template = compile(written.replace("\\n", "\n"));

        assertThat(complaints).singleElement().satisfies(complaint -> {
            assertThat(complaint.kind()).isEqualTo(Kind.MALFORMED);
            assertThat(complaint.message()).isEqualTo(message);
            assertThat(complaint.at().line()).isEqualTo(line);
            assertThat(complaint.mend()).endsWith(".");
        });
        assertThat(template.malformed()).isTrue();
        assertThat(template.asked()).isEmpty();
        assertThat(template.fill(COACH, complaints::add).isEmpty()).isTrue();
    }

    @Test
    void sectionsWithinSectionsHaveALimit() {
        assertThat(filled("{{#name}}".repeat(32) + "x" + "{{/name}}".repeat(32)))
                .isEqualTo("x");
        assertThat(complaints).isEmpty();

        compile("\n" + "{{#name}}".repeat(100_000));
        assertThat(complaints).singleElement().extracting(TemplateProblem::kind).isEqualTo(Kind.MALFORMED);
    }

    @Test
    void aMalformedPartialIsToldInItsOwnFile() {
        SourceFile page = new SourceFile("themes/page.mustache", "\n\n{{>line}}");
        SourceFile line = new SourceFile("themes/line.mustache", "a\n{{=| |=}}");

        Template.compile(page, Escape.HTML, name -> Optional.of(line), complaints::add);

        assertThat(complaints)
                .singleElement()
                .extracting(complaint -> complaint.at().toString())
                .isEqualTo("themes/line.mustache:2:1");
    }

    @Test
    void whateverIsTypedIsFilledOrTold() {
        String alphabet = "{{}}{}#^/>&!%=<$?.* \n\tname";
        Random random = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            int length = random.nextInt(30);
            for (int j = 0; j < length; j++) {
                int at = random.nextInt(alphabet.length() - 1);
                text.append(
                        random.nextInt(3) == 0
                                ? List.of("{{", "}}", "{{#name}}", "{{/name}}", "{{name}}")
                                        .get(random.nextInt(5))
                                : alphabet.substring(at, at + 1));
            }
            complaints.clear();
            SourceFile file = new SourceFile("units/t.md", text.toString());

            Output output = Template.compile(file, text.toString(), 1, Escape.MARKDOWN, complaints::add)
                    .fill(COACH, complaints::add);

            assertThat(output.text()).as(text.toString()).doesNotContain("Run[", "Inner[");
            assertThat(complaints)
                    .as(text.toString())
                    .allSatisfy(complaint -> assertThat(complaint.at().line())
                            .isLessThanOrEqualTo(text.toString().split("\n", -1).length));
        }
    }

    private String filled(String template) {
        return compile(template).fill(COACH, complaints::add).text();
    }

    private Template compile(String template) {
        return compile(template, Escape.MARKDOWN);
    }

    /** The template begins on line 11 of its file. */
    private Template compile(String template, Escape escape) {
        SourceFile file = new SourceFile("units/t.md", "\n".repeat(10) + template);
        return Template.compile(file, template, 11, escape, complaints::add);
    }

    private static Value.Inner inner(Object... namesAndValues) {
        return new Value.Inner(names(namesAndValues));
    }

    private static Names names(Object... namesAndValues) {
        Map<String, Value> values = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            values.put((String) namesAndValues[i], (Value) namesAndValues[i + 1]);
        }
        return Names.of(values);
    }
}
