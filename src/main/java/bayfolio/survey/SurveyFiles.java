package bayfolio.survey;

import bayfolio.catalog.Catalog;
import bayfolio.fact.Facts;
import bayfolio.fact.UnreadException;
import bayfolio.model.Coach;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.model.Wording;
import bayfolio.render.Means;
import bayfolio.render.html.View;
import bayfolio.render.html.Words;
import bayfolio.render.print.Clipboard;
import bayfolio.render.theme.Theme;
import bayfolio.source.Hidden;
import bayfolio.source.SourceFile;
import bayfolio.template.Template;
import bayfolio.template.TemplateProblem;
import com.google.gson.Gson;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What one takes along to a coach: a page for the phone, which stands by itself, and a sheet for the clip-board. */
public final class SurveyFiles {
    private static final String PAGE = "survey.html";
    private static final String SHEET = "survey.pdf";

    private static final List<String> SCRIPT_SAYS = List.of("unkept", "kept", "unread", "picture", "shows", "remove");

    /** Stands for a number that only the script knows. */
    private static final String NUMBER = "{done}";

    private static final Pattern ASSET = Pattern.compile("url\\(([a-z0-9-]+\\.svg)\\)");

    private final Survey survey;
    private final Means means;
    private final Catalog words;
    private final List<TemplateProblem> complaints = new ArrayList<>();

    private SurveyFiles(Survey survey, Means means) {
        this.survey = survey;
        this.means = means;
        this.words = means.catalogs().of(survey.coach().languages());
    }

    /** By their names. */
    public static Map<String, byte[]> of(Survey survey, Means means) {
        SurveyFiles files = new SurveyFiles(survey, means);
        Map<String, byte[]> made = new TreeMap<>();
        made.put(PAGE, files.page().getBytes(StandardCharsets.UTF_8));
        made.put(SHEET, files.sheet());
        return made;
    }

    private String page() {
        Theme theme = means.theme();
        String style = alone(asset("style.css")) + part("survey.css");
        String script = part("survey.js");
        SourceFile file = theme.template("survey/page").orElseThrow(() -> missing("survey/page.mustache"));
        String page = Template.compile(file, Template.Escape.HTML, theme::template, complaints::add)
                .fill(
                        names().with("word", new Words().of(words))
                                .with("style-digest", digest(style))
                                .with("script-digest", digest(script))
                                .names(),
                        complaints::add)
                .text();
        if (!complaints.isEmpty()) {
            throw new IllegalStateException(complaints.get(0).toString());
        }
        return page.replace("/*style*/", style).replace("/*script*/", script).replace("/*data*/", data());
    }

    /** Without anything that lies beside it: the page is one file. */
    private String alone(String style) {
        Matcher asset = ASSET.matcher(style);
        return asset.replaceAll(it -> Matcher.quoteReplacement("url(data:image/svg+xml;base64,"
                + Base64.getEncoder().encodeToString(asset(it.group(1)).getBytes(StandardCharsets.UTF_8)) + ")"));
    }

    private String asset(String name) {
        byte[] bytes = means.theme().assets().get(name);
        if (bytes == null) {
            throw missing("assets/" + name);
        }
        return new String(bytes, StandardCharsets.UTF_8).replace("\r\n", "\n");
    }

    private String part(String name) {
        return means.theme()
                .part("survey/" + name)
                .orElseThrow(() -> missing("survey/" + name))
                .text();
    }

    private static IllegalArgumentException missing(String path) {
        return new IllegalArgumentException("the theme has no `" + path + "`");
    }

    private static String digest(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "sha256-" + Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** What the script must know; letters that would end it are escapes. */
    private String data() {
        Map<String, String> said = new TreeMap<>();
        SCRIPT_SAYS.forEach(word -> said.put(word, words.say("survey." + word)));
        said.put("progress", words.say("survey.progress", "done", NUMBER, "all", Integer.toString(survey.count())));
        Map<String, String> was = new LinkedHashMap<>();
        survey.stops()
                .forEach(stop -> stop.asks()
                        .forEach(ask ->
                                ask.was().ifPresent(it -> was.put(ask.at().toString(), it))));
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("form", Answers.FORM);
        data.put("coach", survey.coach().unit().id());
        data.put("edition", survey.edition());
        data.put("words", said);
        data.put("was", was);
        return Hidden.escaped(new Gson().toJson(data));
    }

    private byte[] sheet() {
        return new Clipboard(means)
                .of(
                        names().with("looked", words.say("survey.looked"))
                                .with("fact", words.say("survey.fact"))
                                .with("now", words.say("survey.now"))
                                .with("found", words.say("survey.found")),
                        coach(),
                        survey.edition(),
                        words);
    }

    // ---- what both show

    private String coach() {
        Facts unit = survey.coach().unit().facts();
        return Stream.of(Unit.NUMBER, Unit.NAME)
                .flatMap(key -> unit.ifRead(key).stream())
                .map(it -> it.value())
                .reduce((number, name) -> number + " " + name)
                .orElse(survey.coach().unit().id());
    }

    private View names() {
        List<View> stops = new ArrayList<>();
        for (Survey.Stop stop : survey.stops()) {
            stops.add(stop(stop, "s" + (stops.size() + 1)));
        }
        return new View()
                .with("language", words.language())
                .with("title", words.say("survey.title", "coach", coach()))
                .with("stops", stops);
    }

    private View stop(Survey.Stop stop, String id) {
        String place = stop.thing().map(this::place).orElse("");
        List<View> asks = new ArrayList<>();
        List<View> again = new ArrayList<>();
        for (Ask ask : stop.asks()) {
            View view = ask(ask, id + "-" + (asks.size() + again.size() + 1));
            (ask.again() ? again : asks).add(view);
        }
        return new View()
                .with("id", id)
                .with("path", stop.at().toString())
                .with("heading", stop.thing().map(SurveyFiles::name).orElse(words.say("survey.whole")))
                .with("placed", !place.isEmpty())
                .with("place", place)
                .with("compared", words.say(stop.thing().isPresent() ? "survey.compared" : "survey.compared-whole"))
                .with("asks", asks)
                .with("anew", !asks.isEmpty())
                .with("seldom", !again.isEmpty())
                .with("described", words.say("survey.described", "count", again.size()))
                .with("again", again);
    }

    private static String name(Thing thing) {
        return thing.facts()
                .ifRead(thing.identity().name())
                .map(it -> it.value())
                .orElse(thing.id());
    }

    /** Nothing where its place could not be read. */
    private String place(Thing thing) {
        String[] place = {""};
        UnreadException.upTo(() -> place[0] = new Wording(survey.coach(), words).place(thing));
        return place[0];
    }

    private View ask(Ask ask, String id) {
        Coach coach = survey.coach();
        Field field = Field.of(ask.key().type(), coach, words);
        String hint = field.example().isEmpty()
                ? ""
                : words.say(
                        field.kind() == Field.Kind.WHOLE ? "survey.range" : "survey.example",
                        "example",
                        field.example());
        Optional<String> shown = ask.was()
                .map(String::strip)
                .map(it -> field.choices().stream()
                        .filter(choice -> choice.written().equals(it))
                        .map(Field.Choice::name)
                        .findFirst()
                        .orElse(it));
        return new View()
                .with("id", id)
                .with("path", ask.at().toString())
                .with("label", label(ask))
                .with("meaning", ask.key().meaning().replace("`", "\""))
                .with("hinted", !hint.isEmpty())
                .with("hint", hint)
                .with(
                        "why",
                        ask.why().stream()
                                .map(why -> new View().with("reason", reason(why)))
                                .toList())
                .with("known", ask.was().isPresent())
                .with("was", shown.orElse(""))
                .with(
                        "stated",
                        shown.map(it -> words.say("survey.stated", "value", it))
                                .orElseGet(() -> words.say("survey.unstated")))
                .with("lines", field.kind() == Field.Kind.LINES)
                .with("line", field.kind() == Field.Kind.LINE)
                .with("whole", field.kind() == Field.Kind.WHOLE)
                .with("day", field.kind() == Field.Kind.DAY)
                .with("choice", field.kind() == Field.Kind.CHOICE)
                .with(
                        "choices",
                        field.choices().stream()
                                .map(it ->
                                        new View().with("written", it.written()).with("name", it.name()))
                                .toList());
    }

    private String label(Ask ask) {
        return words.find("fact." + ask.shape().name() + "." + ask.key().name())
                .or(() -> words.find("fact." + ask.key().name()))
                .orElse(ask.key().name());
    }

    private String reason(Why why) {
        return switch (why.reason()) {
            case PROCEDURE -> words.say("survey.why.procedure", "of", why.of());
            case QUESTION -> words.say("survey.why.question", "of", why.of());
            case FEATURE -> words.say("survey.why.feature", "of", why.of());
            case REQUIRED -> words.say("survey.why.required");
            case OWN -> words.say("survey.why.own");
            case OLD ->
                why.of().isEmpty() ? words.say("survey.why.never") : words.say("survey.why.old", "of", why.of());
            case TO_CONFIRM -> words.say("survey.why.to-confirm");
        };
    }
}
