package bayfolio.start;

import bayfolio.fact.Aside;
import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Own;
import bayfolio.model.Size;
import bayfolio.model.Unit;
import bayfolio.read.Edit;
import bayfolio.read.FleetReader;
import bayfolio.read.Folder;
import bayfolio.read.Rewrite;
import bayfolio.read.RewriteException;
import bayfolio.read.Value;
import bayfolio.source.Located;
import bayfolio.source.SourceFile;
import bayfolio.source.Steps;
import bayfolio.source.UnitsPath;
import bayfolio.survey.Records;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The description of a coach that does not exist yet. What somebody has to look up on it is marked as such ({@link
 * Aside#TO_CONFIRM}), so that nothing that was only taken over gets out.
 *
 * @param text of its file
 * @param toConfirm how many facts are marked
 * @param scripts files that come with it, by their paths in its folder
 */
public record NewCoach(String id, String text, int toConfirm, Map<String, byte[]> scripts) {
    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    /** The folder of the site that all coaches share. */
    private static final String ASSETS = "assets";

    private static final Set<String> TOLD = Set.of("id", "name", "roles", "model");

    /** What is seen on one coach and on no other. */
    private static final Set<Key<?>> OF_ONE = Set.of(Unit.PHOTOS, Unit.FILMS, Unit.COVER, Unit.NOTICES, Unit.ACCEPT);

    private static final List<String> SCRIPTS = List.of("procedures", "trouble", "stages");

    public NewCoach {
        scripts = Map.copyOf(scripts);
    }

    /**
     * Who it is.
     *
     * @param number as it is painted on the coach
     */
    public record Named(String id, String name, Optional<String> number) {}

    /** One of a model, of which nothing is known but that. */
    public static NewCoach ofModel(Folder folder, Named named, String model) throws StartException {
        check(folder, named);
        if (!folder.models().contains(model)) {
            throw new StartException("There is no model `" + model + "`" + near(model, folder.models()));
        }
        String text = "# yaml-language-server: $schema=../models/" + model + "/unit.schema.json\n" + "id: " + named.id
                + "\nmodel: " + model + "\nname: " + named.id + "\n";
        return marked(folder, named, text, List.of(), NewCoach::isAsked, Map.of());
    }

    /** One that is taken over from another, without what is that one's own. */
    public static NewCoach like(Folder folder, Named named, String other) throws StartException, IOException {
        check(folder, named);
        if (!folder.coaches().contains(other)) {
            throw new StartException("There is no coach `" + other + "`" + near(other, folder.coaches()));
        }
        Path there = folder.root().resolve("units").resolve(other);
        SourceFile file = new SourceFile("units/" + other + "/unit.yaml", Files.readString(there.resolve("unit.yaml")));
        Unit unit = read(folder, file);
        List<Edit> edits = new ArrayList<>();
        for (Records.Entry record : new Records(unit).all()) {
            Facts facts = record.facts();
            facts.each((key, fact) -> {
                boolean its = facts.shape().ofEachCoach(key) && !TOLD.contains(key.name())
                        || OF_ONE.contains(key)
                        || key.name().equals("photos");
                Steps way = record.at().key(key.name());
                boolean gone = edits.stream().anyMatch(edit -> way.within(edit.at()));
                if (its && !gone && fact.at().file() == unit.facts().at().file()) {
                    edits.add(new Edit.Remove(way));
                }
            });
        }
        Map<String, byte[]> scripts = new LinkedHashMap<>();
        for (String kind : SCRIPTS) {
            for (String name : folder.files("units/" + other + "/" + kind, ".md")) {
                scripts.put(
                        kind + "/" + name,
                        Files.readAllBytes(there.resolve(kind).resolve(name)));
            }
        }
        // Two of a kind differ in height more often than anybody thinks.
        Asked asked = (facts, key) -> isAsked(facts, key)
                || key == Size.HEIGHT && facts.at(key).file().path().startsWith("units/" + named.id + "/");
        return marked(folder, named, file.text(), edits, asked, scripts);
    }

    /** The first one of a fleet: the least that there can be, all of it to be looked up. */
    public static NewCoach first(Folder folder, Named named) throws StartException, IOException {
        check(folder, named);
        try (InputStream in =
                Objects.requireNonNull(NewCoach.class.getResourceAsStream("/bayfolio/first-coach.yaml"))) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return marked(
                    folder,
                    named,
                    text,
                    List.of(),
                    (facts, key) -> isAsked(facts, key)
                            || !TOLD.contains(key.name())
                                    && facts.ifRead(key)
                                            .filter(NewCoach::isPlain)
                                            .isPresent(),
                    Map.of());
        }
    }

    private static void check(Folder folder, Named named) throws StartException {
        if (!ID.matcher(named.id).matches() || !UnitsPath.isCoach(named.id) || named.id.equals(ASSETS)) {
            throw new StartException(
                    "`" + named.id
                            + "` cannot be the id of a coach: write small letters, digits and single hyphens, such as `heron`.");
        }
        if (folder.coaches().contains(named.id) || folder.models().contains(named.id)) {
            throw new StartException("There is a coach or a model `" + named.id + "` already.");
        }
    }

    private static String near(String name, List<String> known) {
        List<String> near = NearNames.to(name, known);
        return (known.isEmpty() ? "; there is none." : "; there is " + String.join(", ", known) + ".")
                + (near.isEmpty() ? "" : " Did you mean `" + near.get(0) + "`?");
    }

    private static Unit read(Folder folder, SourceFile file) throws StartException {
        List<Finding> findings = new ArrayList<>();
        return FleetReader.unit(folder, file, findings::add)
                .orElseThrow(() -> new StartException(
                        findings.isEmpty()
                                ? file + " cannot be read."
                                : findings.get(0).at() + ": " + findings.get(0).message()));
    }

    /** Whether a fact is to be looked up. */
    private interface Asked {
        boolean of(Facts record, Key<?> key);
    }

    /** What is each coach's own and not stated. */
    private static boolean isAsked(Facts record, Key<?> key) {
        return record.ifRead(key).isEmpty() && Own.asked(record, key);
    }

    /** A single value: a list is written by a person who sees all of it. */
    private static boolean isPlain(Located<?> fact) {
        return !(fact.value() instanceof Described) && !(fact.value() instanceof List<?>);
    }

    private static NewCoach marked(
            Folder folder, Named named, String text, List<Edit> edits, Asked asked, Map<String, byte[]> scripts)
            throws StartException {
        List<Edit> first = new ArrayList<>(edits);
        first.add(new Edit.Put(Steps.of("id"), Value.text(named.id)));
        first.add(new Edit.Put(Steps.of("name"), Value.text(named.name)));
        named.number.ifPresent(number -> first.add(new Edit.Put(Steps.of("number"), Value.text(number))));
        try {
            String path = "units/" + named.id + "/unit.yaml";
            SourceFile its = new SourceFile(path, Rewrite.of(new SourceFile(path, text), first));
            List<Edit> marks = new ArrayList<>();
            int count = 0;
            for (Records.Entry record : new Records(read(folder, its)).all()) {
                List<String> names = record.facts().shape().keys().stream()
                        .filter(key -> asked.of(record.facts(), key))
                        .map(Key::name)
                        .toList();
                if (!names.isEmpty()) {
                    count += names.size();
                    marks.add(new Edit.Put(
                            record.at().key(Aside.TO_CONFIRM.name()), Value.list(names.toArray(String[]::new))));
                }
            }
            return new NewCoach(named.id, Rewrite.of(its, marks), count, scripts);
        } catch (RewriteException e) {
            throw new StartException("That cannot be written: " + e.getMessage());
        }
    }

    /** Its folder, whole or not at all. */
    public void write(Folder folder) throws IOException {
        Path units = folder.root().resolve("units");
        Path beside = units.resolve("." + id + "-begun");
        Files.createDirectories(beside);
        Files.writeString(beside.resolve("unit.yaml"), text);
        for (Map.Entry<String, byte[]> script : scripts.entrySet()) {
            Path file = beside.resolve(script.getKey());
            Files.createDirectories(file.getParent());
            Files.write(file, script.getValue());
        }
        Files.move(beside, units.resolve(id), StandardCopyOption.ATOMIC_MOVE);
        folder.writeSchemas();
    }
}
