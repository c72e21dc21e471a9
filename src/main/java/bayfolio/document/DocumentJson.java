package bayfolio.document;

import bayfolio.explain.Calculator;
import bayfolio.fact.Type;
import bayfolio.model.Photo;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import com.google.gson.FormattingStyle;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The normal form of a handbook: every part with its name, its readers, its language and what it came from; stable, so that
 * two of them can be compared. Fields stand in the order in which the records of this package declare them, lists in
 * reading order; what is empty is left out, and so are readers, language and sources that are those of the part around.
 * Lines and columns are none of it: a blank line in a description changes nothing.
 */
public final class DocumentJson {
    /** Of the form. It goes up when a reader of the one before would misread it. */
    public static final int VERSION = 1;

    private final JsonWriter json;

    /** Whether what nobody reads is left out: whom a part is for, and what it came from. */
    private final boolean asRead;

    /** What pages say by themselves, where that is known. */
    private final Optional<Function<Page, String>> pages;

    private DocumentJson(JsonWriter json, boolean asRead, Optional<Function<Page, String>> pages) {
        this.json = json;
        this.asRead = asRead;
        this.pages = pages;
    }

    public static String of(Handbook handbook) {
        return written(false, Optional.empty(), json -> json.write(handbook));
    }

    /** What a reader reads of his copy, and nothing of how it came to be: two that read the same are the same. */
    public static String asRead(Handbook handbook) {
        return written(true, Optional.of(handbook::asRead), json -> json.write(handbook));
    }

    /** The same of one page alone; {@link Handbook#asRead} has it already. */
    static String asRead(Page page) {
        return written(
                true,
                Optional.empty(),
                json -> json.record(page, around(page.stamp().language())));
    }

    /** Something that is written, of whatever is to be. */
    private interface Writing {
        void to(DocumentJson json) throws IOException;
    }

    private static String written(boolean asRead, Optional<Function<Page, String>> pages, Writing writing) {
        StringWriter text = new StringWriter();
        JsonWriter json = new JsonWriter(text);
        json.setFormattingStyle(FormattingStyle.PRETTY.withIndent(""));
        json.setHtmlSafe(false);
        try {
            writing.to(new DocumentJson(json, asRead, pages));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text + "\n";
    }

    /** What is not told of a part, since it goes without saying. */
    private static Stamp around(String language) {
        return new Stamp(PageKind.HOME.node(), Audience.EVERYBODY, From.PROGRAM, language);
    }

    private void write(Handbook handbook) throws IOException {
        json.beginObject();
        json.name("version").value(VERSION);
        json.name("unit").value(handbook.unit());
        json.name("name").value(handbook.name());
        maybe("number", handbook.cover().number());
        maybe("kind", handbook.cover().kind());
        maybe("photo", handbook.cover().photo().map(Photo::id).orElse(""));
        json.name("language").value(handbook.language());
        if (handbook.reader().isPresent()) {
            json.name("reader").value(Type.word(handbook.reader().get()));
        }
        Stamp around = around(handbook.language());
        json.name("parts").beginArray();
        for (Handbook.Part part : handbook.parts()) {
            record(part, around);
        }
        json.endArray();
        json.endObject();
    }

    private void maybe(String name, String text) throws IOException {
        if (!text.isEmpty()) {
            json.name(name).value(text);
        }
    }

    private void record(Record record, Stamp around) throws IOException {
        json.beginObject();
        RecordForm form = RecordForm.of(record.getClass());
        if (form.isOneOfSeveral()) {
            json.name("kind").value(form.kind());
        }
        Stamp inside = record instanceof Node node ? node.stamp() : around;
        for (RecordForm.Field field : form.fields()) {
            Object value = field.value(record);
            if (value instanceof Stamp stamp) {
                stamp(stamp, around);
            } else if (!saysNothing(value) && !(asRead && value instanceof Audience)) {
                json.name(field.name());
                value(value, inside);
            }
        }
        json.endObject();
    }

    private void stamp(Stamp stamp, Stamp around) throws IOException {
        json.name("id").value(stamp.id().toString());
        if (!asRead && stamp.audience() != around.audience()) {
            json.name("audience").value(Type.word(stamp.audience()));
        }
        if (!stamp.language().equals(around.language())) {
            json.name("language").value(stamp.language());
        }
        if (!asRead && !names(stamp.from()).equals(names(around.from()))) {
            json.name("from").beginArray();
            for (String name : names(stamp.from())) {
                json.value(name);
            }
            json.endArray();
        }
    }

    /** Such as {@code fact:switch/pump-switch/plate}. */
    private static List<String> names(From from) {
        return from.sources().stream()
                .map(source -> Type.word(source.sort()) + ":" + source.name())
                .toList();
    }

    private void value(@Nullable Object value, Stamp around) throws IOException {
        if (value instanceof Inline.Text text) {
            json.value(text.text());
        } else if (value instanceof Calculator calculator) {
            plain(CalculatorFields.of(calculator));
        } else if (value instanceof Target target) {
            json.value(target.written());
        } else if (value instanceof Optional<?> optional) {
            value(optional.orElseThrow(), around);
        } else if (value instanceof NodeId id) {
            json.value(id.toString());
        } else if (value instanceof Page page
                && pages.isPresent()
                && page.stamp().language().equals(around.language())) {
            json.jsonValue(pages.get().apply(page).strip());
        } else if (value instanceof Record record) {
            record(record, around);
        } else if (value instanceof List<?> list) {
            json.beginArray();
            for (Object each : list) {
                value(each, around);
            }
            json.endArray();
        } else if (value instanceof Enum<?> word) {
            json.value(Type.word(word));
        } else {
            plain(value);
        }
    }

    /** Numbers, words, yes or no, lists and maps of such. */
    private void plain(@Nullable Object value) throws IOException {
        if (value instanceof Map<?, ?> map) {
            json.beginObject();
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                json.name(String.valueOf(entry.getKey()));
                plain(entry.getValue());
            }
            json.endObject();
        } else if (value instanceof List<?> list) {
            json.beginArray();
            for (Object each : list) {
                plain(each);
            }
            json.endArray();
        } else if (value instanceof Number number) {
            json.value(number);
        } else if (value instanceof Boolean yes) {
            json.value(yes.booleanValue());
        } else {
            json.value(Objects.toString(value));
        }
    }

    private static boolean saysNothing(@Nullable Object value) {
        return value instanceof List<?> list && list.isEmpty()
                || value instanceof Optional<?> optional && optional.isEmpty()
                || value instanceof String text && text.isEmpty()
                || value instanceof Boolean yes && !yes
                || value instanceof Audience audience && audience == Audience.EVERYBODY;
    }
}
