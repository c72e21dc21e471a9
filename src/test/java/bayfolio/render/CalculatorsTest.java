package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.catalog.Catalog;
import bayfolio.explain.Calculator;
import bayfolio.explain.Explanations;
import bayfolio.model.Coach;
import bayfolio.model.Fleet;
import bayfolio.model.Unit;
import bayfolio.reckon.Question;
import bayfolio.reckon.TestCoach;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import com.google.gson.Gson;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.Select;

/** The scripts of the forms, in a real browser, beside the reckonings of the program. */
class CalculatorsTest {
    private static final Path ASSETS = Path.of("themes/harbor/assets");
    private static final Gson GSON = new Gson();

    /** For each question, spread over the coaches; the table of cases is larger than 2,000. */
    private static final int CASES = 800;

    @SuppressWarnings("NullAway.Init") // set before the first test
    private static ChromeDriver browser;

    @SuppressWarnings("NullAway.Init")
    private static Fleet fleet;

    @BeforeAll
    static void open(@TempDir Path profile) throws Exception {
        fleet = DemoFleet.of(Path.of("")).check().fleet();
        browser = Browser.open(profile);
    }

    @AfterAll
    static void close() {
        browser.quit();
    }

    /** What the script said to a choice. */
    private record Said(String answer, List<List<String>> rows) {}

    @Test
    void scriptsAndProgramGiveTheSameAnswersToTheLastDigit() throws Exception {
        Random random = new Random(20_261_125);
        Map<Question, Integer> cases = new EnumMap<>(Question.class);
        browser.get("data:text/html,<title>x</title>");
        run("shown");
        run("said");
        for (Unit unit : coaches()) {
            for (Calculator calculator : Explanations.calculators(new Coach(fleet, unit), TestCoach.WORDS)) {
                String question = calculator.question().id();
                run(question);
                List<Map<String, Object>> choices = new ArrayList<>();
                for (int each = 0; each < CASES / coaches().size(); each++) {
                    choices.add(choice(calculator, random));
                }
                List<Said> said = said(question, calculator.figures(), choices);
                for (int each = 0; each < choices.size(); each++) {
                    Calculator.Result result = calculator.result(new Calculator.Chosen(choices.get(each)));
                    assertThat(said.get(each))
                            .as(unit.id() + " " + question + " " + choices.get(each))
                            .isEqualTo(new Said(result.answer(), result.rows()));
                }
                cases.merge(calculator.question(), choices.size(), Integer::sum);
            }
        }

        assertThat(cases.values().stream().mapToInt(Integer::intValue).sum()).isGreaterThanOrEqualTo(2000);
    }

    /** With a comma in a figure and a point between its thousands, as much of Europe writes it. */
    @Test
    void scriptsShowFiguresAsTheLanguageDoes() throws Exception {
        Map<String, Located<String>> words = new TreeMap<>(TestCoach.WORDS.patterns());
        words.put("number.decimal", new Located<>(",", Place.whole(new SourceFile("words", ""))));
        words.put("number.thousands", new Located<>(".", Place.whole(new SourceFile("words", ""))));
        Catalog german = new Catalog("de-DE", words);
        Random random = new Random(20_261_128);
        browser.get("data:text/html,<title>x</title>");
        run("shown");
        run("said");
        boolean comma = false;
        for (Calculator calculator :
                Explanations.calculators(new Coach(fleet, fleet.units().get(0)), german)) {
            run(calculator.question().id());
            List<Map<String, Object>> choices = new ArrayList<>();
            for (int each = 0; each < 50; each++) {
                choices.add(choice(calculator, random));
            }
            List<Said> said = said(calculator.question().id(), calculator.figures(), choices);
            for (int each = 0; each < choices.size(); each++) {
                Calculator.Result result = calculator.result(new Calculator.Chosen(choices.get(each)));
                assertThat(said.get(each)).isEqualTo(new Said(result.answer(), result.rows()));
                comma |= result.rows().toString().matches(".*[0-9],[0-9] A .*");
            }
        }

        assertThat(comma).isTrue();
    }

    private static void run(String script) throws Exception {
        browser.executeScript(Files.readString(ASSETS.resolve(script + ".js")));
    }

    private static List<Said> said(String question, Map<String, Object> figures, List<Map<String, Object>> choices) {
        Object said = browser.executeScript(
                """
                var figures = JSON.parse(arguments[1]);
                return JSON.stringify(JSON.parse(arguments[2]).map(function (choice) {
                    var result = window.bayfolio[arguments[0]](figures, choice);
                    return {answer: result.answer, rows: result.rows};
                }));
                """.replace("window.bayfolio[arguments[0]]", "window.bayfolio['" + question + "']"),
                question,
                GSON.toJson(figures),
                GSON.toJson(choices));
        return List.of(GSON.fromJson((String) java.util.Objects.requireNonNull(said), Said[].class));
    }

    private static Map<String, Object> choice(Calculator calculator, Random random) {
        Map<String, Object> choice = new LinkedHashMap<>();
        for (Calculator.Field field : calculator.fields()) {
            choice.put(field.name(), chosen(field.kind(), random));
        }
        return choice;
    }

    private static Object chosen(Calculator.Kind kind, Random random) {
        if (kind instanceof Calculator.Kind.Tick) {
            return random.nextInt(3) == 0;
        }
        if (kind instanceof Calculator.Kind.Choice choice) {
            return random.nextInt(choice.choices().size());
        }
        Calculator.Kind.Number number = (Calculator.Kind.Number) kind;
        int steps = (int) Math.round((number.most() - number.least()) / number.step());
        return number.least() + random.nextInt(steps + 1) * number.step();
    }

    private static List<Unit> coaches() {
        return fleet.units().stream()
                .filter(unit -> DemoFleet.looked().contains(unit.id()))
                .toList();
    }

    /** The form on the page: a person ticks a thing, and hears what comes of it. */
    @Test
    void aReaderTicksAndSeesTheLegFillUp() {
        browser.get(DemoFleet.web()
                .resolve("whimbrel/worked-out/runs-together.html")
                .toUri()
                .toString());
        WebElement form = browser.findElement(By.cssSelector("[data-question=runs-together] form"));
        new Select(form.findElement(By.tagName("select"))).selectByVisibleText("30 A outlet");
        assertThat(form.findElement(By.className("answer")).getText()).isEqualTo("This fits.");

        tick(form, "Front air conditioner");
        tick(form, "Microwave");

        assertThat(form.findElement(By.className("answer")).getText())
                .isEqualTo("Too much. Switch off first: Microwave.");
        assertThat(form.findElements(By.cssSelector(".filled.over"))).isNotEmpty();
        assertThat(form.findElement(By.cssSelector("[role=status]")).isDisplayed())
                .isTrue();
    }

    private static void tick(WebElement form, String label) {
        WebElement field = form.findElements(By.tagName("label")).stream()
                .filter(each -> each.getText().equals(label))
                .findFirst()
                .orElseThrow();
        // Not below the bar at the thumb.
        browser.executeScript("arguments[0].scrollIntoView({ block: 'center' })", field);
        field.click();
    }

    /** Every field has a label of its own, and every script that a page names is there. */
    @Test
    void everyFieldIsLabeled() {
        for (Unit unit : coaches()) {
            TreeSet<String> built = new TreeSet<>();
            for (Calculator calculator : Explanations.calculators(new Coach(fleet, unit), TestCoach.WORDS)) {
                browser.get(DemoFleet.web()
                        .resolve(unit.id() + "/worked-out/"
                                + calculator.question().id() + ".html")
                        .toUri()
                        .toString());
                for (WebElement form : browser.findElements(By.cssSelector("[data-question] form"))) {
                    built.add(form.findElement(By.xpath("..")).getDomAttribute("data-question"));
                    for (WebElement field : form.findElements(By.cssSelector("input, select"))) {
                        assertThat(field.getAccessibleName()).as(unit.id()).isNotBlank();
                    }
                }
            }
            assertThat(built)
                    .containsExactlyElementsOf(
                            new TreeSet<>(Explanations.calculators(new Coach(fleet, unit), TestCoach.WORDS).stream()
                                    .map(each -> each.question().id())
                                    .toList()));
        }
    }

    /** On the page for a smaller outlet nobody has to find that again; where a coach has none, it begins as usual. */
    @Test
    void aFormBeginsWithTheCaseOfItsPage() {
        int begun = 0;
        for (Map.Entry<String, byte[]> file : DemoFleet.files(DemoFleet.web()).entrySet()) {
            if (file.getKey().matches(".*/do/(connect-smaller-supply|budget-power)\\.html")) {
                JsonObject supply = supply(file.getValue());
                JsonObject usual = supply(Objects.requireNonNull(DemoFleet.files(DemoFleet.web())
                        .get(file.getKey().replaceFirst("/do/.*", "/worked-out/runs-together.html"))));
                assertThat(usual.get("chosen").getAsInt()).isZero();
                assertThat(supply.getAsJsonArray("choices")).isEqualTo(usual.getAsJsonArray("choices"));
                int chosen = supply.get("chosen").getAsInt();
                String first = supply.getAsJsonArray("choices").get(chosen).getAsString();
                assertThat(first).as(file.getKey()).contains(" A");
                begun += chosen > 0 ? 1 : 0;
            }
        }
        assertThat(begun).isGreaterThan(4);
    }

    /** Who camps in frost asks of the night in frost. */
    @Test
    void theNightOfThePageForFrostIsAFrostyOne() {
        byte[] page =
                Objects.requireNonNull(DemoFleet.files(DemoFleet.web()).get("dunlin/do/camp-below-freezing.html"));
        String asks = Jsoup.parse(new String(page, StandardCharsets.UTF_8))
                .select("[data-question=a-night]")
                .attr("data-asks");

        assertThat(JsonParser.parseString(asks)
                        .getAsJsonArray()
                        .get(0)
                        .getAsJsonObject()
                        .get("chosen")
                        .getAsInt())
                .as("the second of the temperatures is that of freezing")
                .isEqualTo(1);
    }

    private static JsonObject supply(byte[] page) {
        String asks = Jsoup.parse(new String(page, StandardCharsets.UTF_8))
                .select("[data-question=runs-together]")
                .attr("data-asks");
        return JsonParser.parseString(asks).getAsJsonArray().get(0).getAsJsonObject();
    }
}
