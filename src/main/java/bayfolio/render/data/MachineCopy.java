package bayfolio.render.data;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.Handbook;
import bayfolio.document.Page;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.fact.Type;
import bayfolio.model.Photo;
import bayfolio.render.Means;
import bayfolio.render.Media;
import bayfolio.render.Output;
import bayfolio.render.web.WebSite;
import bayfolio.source.Digest;
import bayfolio.source.Resource;
import bayfolio.template.TemplateProblem;
import com.google.gson.FormattingStyle;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The handbook of a coach as data for other programs: what there is, by lasting names, with a digest of each part. It is made
 * of the handbook as its reader sees it and of nothing else that is known of the coach, so no more can be in it.
 */
public final class MachineCopy implements Output {
    /** Of the form. It goes up when a program that reads the one before would misread it. */
    static final int VERSION = 1;

    /** In the folder of a coach; no phone keeps it. */
    public static final String FILE = "handbook.json";

    /** At the root of each copy, of all coaches. */
    public static final String SCHEMA = "handbook.schema.json";

    private static final Gson GSON = new GsonBuilder()
            .setFormattingStyle(FormattingStyle.PRETTY.withIndent(""))
            .disableHtmlEscaping()
            .create();

    private final Means means;

    /** Where the renters' copy is published, with a slash at its end. */
    private final String base;

    public MachineCopy(Means means) {
        this.means = means;
        this.base = means.fleet().address();
    }

    @Override
    public List<TemplateProblem> complaints() {
        return List.of();
    }

    @Override
    public boolean of(Audience reader) {
        return true;
    }

    @Override
    public Map<String, byte[]> shared(Whole fleet) {
        return Map.of(SCHEMA, Resource.bytes(SCHEMA));
    }

    @Override
    public Map<String, byte[]> files(Handbook handbook, Media media, Around around) {
        String json = GSON.toJson(of(handbook, media)) + "\n";
        return Map.of(handbook.unit() + "/" + FILE, json.getBytes(StandardCharsets.UTF_8));
    }

    private JsonObject of(Handbook handbook, Media media) {
        JsonArray pages = new JsonArray();
        List<String> digests = new ArrayList<>();
        for (Page page : handbook.pages()) {
            String digest = Said.digest(handbook, page);
            digests.add(digest);
            pages.add(page(handbook, page, digest));
        }
        JsonObject json = new JsonObject();
        json.addProperty("$schema", base + SCHEMA);
        json.addProperty("version", VERSION);
        json.add("coach", coach(handbook));
        json.add("fleet", fleet());
        json.addProperty("language", handbook.language());
        json.addProperty("reader", Type.word(handbook.reader().orElseThrow()));
        json.add("edition", edition(handbook));
        json.addProperty("digest", Digest.of(String.join("\n", digests)));
        json.add("pages", pages);
        json.add("facts", Figures.facts(handbook));
        json.add("worked-out", Figures.workedOut(handbook));
        json.add("photos", photos(handbook, media));
        return json;
    }

    private static JsonObject coach(Handbook handbook) {
        Handbook.Cover cover = handbook.cover();
        JsonObject json = new JsonObject();
        json.addProperty("id", handbook.unit());
        json.addProperty("name", cover.name());
        maybe(json, "number", cover.number());
        maybe(json, "kind", cover.kind());
        maybe(json, "photo", cover.photo().map(Photo::id).orElse(""));
        return json;
    }

    private JsonObject fleet() {
        JsonObject json = new JsonObject();
        json.addProperty("name", means.fleet().name());
        json.addProperty("address", base);
        return json;
    }

    private JsonObject edition(Handbook handbook) {
        JsonObject json = new JsonObject();
        json.addProperty("state", handbook.edition());
        handbook.revision().ifPresent(revision -> {
            json.addProperty("number", revision.edition());
            json.addProperty("day", revision.day().toString());
            json.addProperty("as-issued", revision.asIssued());
            json.addProperty("words", WebSite.edition(revision, means.catalogs().of(handbook.language())));
        });
        return json;
    }

    private JsonObject page(Handbook handbook, Page page, String digest) {
        JsonObject json = new JsonObject();
        json.addProperty("id", page.id().toString());
        json.addProperty("kind", Type.word(page.kind()));
        json.addProperty("title", page.title());
        json.addProperty("address", WebSite.file(page.id()));
        if (forStaff(page.stamp())) {
            // Nobody but staff finds it, wherever they keep their copy.
            json.addProperty("staff", true);
        } else {
            json.addProperty("url", base + handbook.unit() + "/" + WebSite.file(page.id()));
        }
        json.addProperty("urgent", page.urgent());
        json.addProperty("digest", digest);
        JsonArray sections = new JsonArray();
        page.sections().forEach(section -> sections.add(section(section)));
        json.add("sections", sections);
        json.add("steps", steps(page));
        return json;
    }

    static boolean forStaff(Stamp stamp) {
        return stamp.audience() == Audience.STAFF;
    }

    private static JsonObject section(Section section) {
        JsonObject json = new JsonObject();
        json.addProperty("id", section.id().toString());
        json.addProperty("title", section.title());
        json.addProperty("anchor", section.anchor());
        return json;
    }

    /** Numbered as they are on the page: those that belong together from 1. */
    private static JsonArray steps(Page page) {
        JsonArray all = new JsonArray();
        page.walk()
                .filter(Content.Steps.class::isInstance)
                .map(Content.Steps.class::cast)
                .forEach(steps -> {
                    int number = 0;
                    for (Content.Steps.Part part : steps.parts()) {
                        for (Content.Steps.Step step : part.steps()) {
                            JsonObject json = new JsonObject();
                            json.addProperty("id", step.id().toString());
                            json.addProperty("number", ++number);
                            json.addProperty("anchor", step.id().within());
                            all.add(json);
                        }
                    }
                });
        return all;
    }

    /** Each as it is at its largest. */
    private static JsonArray photos(Handbook handbook, Media media) {
        Map<String, String> shown = new TreeMap<>();
        handbook.cover().photo().ifPresent(photo -> shown.put(photo.id(), photo.alt()));
        handbook.walk()
                .filter(Content.Picture.class::isInstance)
                .map(Content.Picture.class::cast)
                .forEach(picture -> shown.put(picture.photo(), picture.alt()));
        JsonArray photos = new JsonArray();
        media.photographs().forEach((id, photograph) -> {
            JsonObject json = new JsonObject();
            json.addProperty("id", id);
            json.addProperty("address", WebSite.photo(id));
            maybe(json, "shows", Optional.ofNullable(shown.get(id)).orElse(""));
            json.addProperty("width", photograph.width());
            json.addProperty("height", photograph.height());
            MessageDigest digest = Digest.sha256();
            digest.update(Objects.requireNonNull(photograph.sizes().get(photograph.width())));
            json.addProperty("sha-256", Digest.whole(digest));
            photos.add(json);
        });
        return photos;
    }

    private static void maybe(JsonObject json, String name, String text) {
        if (!text.isEmpty()) {
            json.addProperty(name, text);
        }
    }
}
