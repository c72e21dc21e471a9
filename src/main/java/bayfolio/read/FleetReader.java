package bayfolio.read;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.finding.Finding;
import bayfolio.model.Country;
import bayfolio.model.FactTexts;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.HireMarks;
import bayfolio.model.Rewording;
import bayfolio.model.Role;
import bayfolio.model.Roles;
import bayfolio.model.Sources;
import bayfolio.model.Unit;
import bayfolio.model.Words;
import bayfolio.procedure.Condition;
import bayfolio.procedure.ConditionReader;
import bayfolio.procedure.Form;
import bayfolio.procedure.Head;
import bayfolio.procedure.Library;
import bayfolio.procedure.Script;
import bayfolio.procedure.Translation;
import bayfolio.procedure.TranslationHead;
import bayfolio.procedure.Translations;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads a whole fleet folder; what is broken in one file hides nothing of the others. */
public final class FleetReader {
    private static final String FLEET = "units/fleet.yaml";

    /** The folder of texts in other languages. */
    private static final String TRANSLATIONS = "translations";

    private static final String FACTS = "facts.yaml";

    private static final String SHARED = "units/shared";

    /** What every shared procedure counts on. */
    private static final String LEAST_FLEET = """
            name: Our Coaches
            base-address: https://handbook.example
            country: us
            languages: [en-US]
            phones:
              - {id: hours, number: +1 555-0100}
              - {id: after-hours, number: +1 555-0100}
              - {id: roadside, number: +1 555-0100}
            site-switches:
              - id: site-breaker
                name: Site breaker
                roles: [site-breaker]
                make: breaker-handle
                access: free
                where: on the post of your site, at the outlet
                work-off: Push the handle all the way to the word OFF
                off-look: the handle is all the way over to the word OFF
            """;

    private static final String COUNTRIES = "countries";

    private final Folder folder;
    private final List<Finding> findings = new ArrayList<>();

    private FleetReader(Folder folder) {
        this.folder = folder;
    }

    /**
     * What a folder says.
     *
     * @param fleet as far as it could be read whole
     * @param folders names of the folders of coaches, also of those that could not be read
     * @param findings what could not be read
     */
    public record Reading(Fleet fleet, Library library, List<String> folders, List<Finding> findings) {
        public Reading {
            folders = List.copyOf(folders);
            findings = List.copyOf(findings);
        }
    }

    public static Reading read(Folder folder) {
        return new FleetReader(folder).read();
    }

    private Reading read() {
        List<String> names = folder.folders("units").stream()
                .filter(name -> !name.equals("shared"))
                .toList();
        Optional<Roles> roles = shared("roles.yaml", Roles.SHAPE);
        Optional<Words> words = shared("words.yaml", Words.SHAPE);
        Optional<Sources> sources = shared("sources.yaml", Sources.SHAPE);
        List<Country> countries = countries(folder, findings::add);
        // Without what they name, coaches and procedures would seem wrong everywhere.
        boolean judged = roles.filter(it -> it.facts().whole()).isPresent()
                && words.filter(it -> it.facts().whole()).isPresent()
                && sources.filter(it -> it.facts().whole()).isPresent()
                && countries.stream().allMatch(it -> it.facts().whole());
        Optional<Map<String, Role>> roleById = roles.filter(it -> judged).map(FleetReader::byId);
        // Coaches are read beside what they share, each folder by itself; what comes of it keeps the order of the
        // names.
        CompletableFuture<List<OfACoach>> beside = CompletableFuture.supplyAsync(() -> names.parallelStream()
                .map(name -> new FleetReader(folder).coach(name, roleById))
                .toList());
        FleetFacts facts = fleetFile()
                .flatMap(file -> yaml(file, FleetFacts.SHAPE, roleById, findings::add))
                .orElseGet(
                        () -> new FleetFacts(Facts.unread(FleetFacts.SHAPE, Place.whole(new SourceFile(FLEET, "")))));
        Scripts shared = scripts(SHARED, Optional.empty());
        List<OfACoach> coaches = beside.join();
        List<Script> scripts = new ArrayList<>(shared.read);
        coaches.forEach(it -> scripts.addAll(it.scripts.read));
        coaches.forEach(it -> findings.addAll(it.findings));
        List<Unit> units =
                coaches.stream().flatMap(coach -> coach.unit.stream()).toList();
        List<Optional<String>> unread = new ArrayList<>(shared.unread);
        coaches.forEach(it -> unread.addAll(it.scripts.unread));
        Fleet fleet = new Fleet(
                facts,
                judged ? units : List.of(),
                all(roles, Roles.ROLES, judged),
                all(words, Words.WORDS, judged),
                all(sources, Sources.SOURCES, judged),
                countries,
                coaches.stream()
                        .filter(it -> it.unit.isEmpty())
                        .map(OfACoach::folder)
                        .toList());
        Map<String, HireMarks> marks = new TreeMap<>();
        coaches.forEach(coach -> coach.unit.ifPresent(unit -> coach.marks.ifPresent(it -> marks.put(unit.id(), it))));
        List<Translation> texts = new ArrayList<>();
        List<Rewording.OfALanguage> reworded = new ArrayList<>();
        translated(SHARED, Optional.empty(), texts, reworded);
        coaches.forEach(coach -> translated("units/" + coach.folder, coach.unit.map(Unit::id), texts, reworded));
        Translations translations = new Translations(texts, new Rewording(reworded));
        return new Reading(
                fleet.marked(marks), new Library(judged ? scripts : List.of(), unread, translations), names, findings);
    }

    private Optional<SourceFile> fleetFile() {
        if (folder.has(FLEET)) {
            return folder.text(FLEET, findings::add);
        }
        findings.add(Finding.error("unreadable-file", Place.whole(new SourceFile(FLEET, "")), "the file is missing")
                .mend("Write it with your own name, address and numbers. This is the least it takes:\n"
                        + LEAST_FLEET.strip()));
        return Optional.empty();
    }

    private static <T> List<T> all(Optional<? extends Described> file, Key<List<Located<T>>> key, boolean judged) {
        return judged ? file.orElseThrow().facts().all(key) : List.of();
    }

    static Map<String, Role> byId(Roles roles) {
        return roles.facts().all(Roles.ROLES).stream()
                .collect(Collectors.toUnmodifiableMap(Role::id, it -> it, (first, second) -> first));
    }

    /**
     * What the folder of one coach says.
     *
     * @param unit empty where nobody knows which coach it is
     */
    private record OfACoach(
            String folder, Optional<Unit> unit, Optional<HireMarks> marks, Scripts scripts, List<Finding> findings) {}

    private OfACoach coach(String name, Optional<Map<String, Role>> roles) {
        String path = "units/" + name;
        HiddenCharacters.told(path, Place.whole(new SourceFile(path, "")), findings::add);
        Optional<Unit> unit = folder.text(path + "/unit.yaml", findings::add)
                .flatMap(file -> FileCache.read(
                        file,
                        List.of(roles, films(folder, path + "/").cues()),
                        (it, told) -> unit(folder, it, roles, told),
                        findings::add))
                .filter(it -> it.facts().read(Unit.ID));
        Scripts scripts = unit.map(it -> scripts(path, Optional.of(it.id()))).orElse(new Scripts(List.of(), List.of()));
        unit.ifPresent(it -> Photos.check(folder, path + "/photos", it, findings::add));
        unit.ifPresent(it -> films(folder, path + "/").check(it, findings::add));
        return new OfACoach(name, unit, marks(path + "/marks.yaml"), scripts, findings);
    }

    private Optional<HireMarks> marks(String path) {
        return folder.has(path)
                ? folder.text(path, findings::add)
                        .flatMap(file ->
                                FileCache.read(file, (it, told) -> yaml(it, HireMarks.SHAPE, told), findings::add))
                        .filter(it -> it.facts().read(HireMarks.MARKS))
                : Optional.empty();
    }

    /** The description of a coach, with what other files in its folder say. */
    static Optional<Unit> unit(
            Folder folder, SourceFile file, Optional<Map<String, Role>> roles, Consumer<Finding> findings) {
        return yaml(file, Unit.SHAPE, roles, Optional.of(films(folder, file.path())), findings);
    }

    /** @param path of a file in the folder of the coach */
    static Films films(Folder folder, String path) {
        return new Films(folder, path.substring(0, path.lastIndexOf('/') + 1) + "films");
    }

    private <T extends Described> Optional<T> shared(String name, Shape<T> shape) {
        return shared(folder, name, shape, findings::add);
    }

    private static <T extends Described> Optional<T> shared(
            Folder folder, String name, Shape<T> shape, Consumer<Finding> findings) {
        return folder.text(SHARED + "/" + name, findings)
                .flatMap(file -> FileCache.read(file, (it, told) -> yaml(it, shape, told), findings));
    }

    /** One file a country, each named after it. */
    static List<Country> countries(Folder folder, Consumer<Finding> findings) {
        return folder.files(SHARED + "/" + COUNTRIES, ".yaml").stream()
                .flatMap(name -> shared(folder, COUNTRIES + "/" + name, Country.SHAPE, findings).stream())
                .toList();
    }

    /** Any role is let pass. */
    static <T extends Described> Optional<T> yaml(SourceFile file, Shape<T> shape, Consumer<Finding> findings) {
        return yaml(file, shape, Optional.empty(), findings);
    }

    /**
     * @param roles those there are, by their ids; empty where any is let pass
     */
    static <T extends Described> Optional<T> yaml(
            SourceFile file, Shape<T> shape, Optional<Map<String, Role>> roles, Consumer<Finding> findings) {
        return yaml(file, shape, roles, Optional.empty(), findings);
    }

    private static <T extends Described> Optional<T> yaml(
            SourceFile file,
            Shape<T> shape,
            Optional<Map<String, Role>> roles,
            Optional<Films> films,
            Consumer<Finding> findings) {
        List<Finding> broken = new ArrayList<>();
        Optional<Node> node = Yaml.compose(file, file.text(), 1, broken::add);
        if (node.isPresent()) {
            return new Decoder(file, 1, roles, films, findings).record(node.get(), shape);
        }
        boolean somewhere = broken.stream().noneMatch(finding -> finding.at().equals(Place.whole(file)));
        List<Finding> byBlock = somewhere ? byBlock(file, shape, roles, films) : List.of();
        boolean found = byBlock.stream().anyMatch(finding -> finding.code().equals("yaml-syntax"));
        // Where no block is broken by itself, what is wrong lies between them.
        (found ? byBlock : broken).forEach(findings);
        return Optional.empty();
    }

    /** What is wrong in a file that is no YAML as a whole, block by block. */
    private static List<Finding> byBlock(
            SourceFile file, Shape<?> shape, Optional<Map<String, Role>> roles, Optional<Films> films) {
        List<Finding> findings = new ArrayList<>();
        for (Yaml.Block block : Yaml.blocks(file)) {
            if (!block.text().isBlank()) {
                List<Finding> ofBlock = new ArrayList<>();
                Yaml.compose(file, block.text(), block.firstLine(), ofBlock::add)
                        .ifPresent(node ->
                                new Decoder(file, block.firstLine(), roles, films, ofBlock::add).part(node, shape));
                // A block of comments says nothing, and that is no mistake.
                ofBlock.removeIf(finding -> finding.code().equals("unreadable-file"));
                findings.addAll(ofBlock);
            }
        }
        return findings;
    }

    /**
     * The scripts in a folder.
     *
     * @param unread whose others could not be read: see {@link Library#Library(List, List, Translations)}
     */
    private record Scripts(List<Script> read, List<Optional<String>> unread) {}

    private Scripts scripts(String path, Optional<String> unit) {
        List<OfAFile> files = Stream.of(Form.values())
                .flatMap(form -> folder.files(path + "/" + form.folder(), ".md").stream()
                        .map(name -> path + "/" + form.folder() + "/" + name))
                .toList()
                .parallelStream()
                .map(file -> script(file, unit))
                .toList();
        files.forEach(it -> findings.addAll(it.findings));
        return new Scripts(
                files.stream().flatMap(it -> it.script.stream()).toList(),
                files.stream()
                        .filter(it -> it.script.isEmpty())
                        .map(it -> unit)
                        .distinct()
                        .toList());
    }

    /**
     * What is there in other languages: a folder for each language, in it the folders of the forms, and a file for facts.
     *
     * @param unit the coach that it is of; empty for what all share
     */
    private void translated(
            String path, Optional<String> unit, List<Translation> texts, List<Rewording.OfALanguage> facts) {
        String root = path + "/" + TRANSLATIONS;
        for (String language : folder.folders(root)) {
            String of = root + "/" + language + "/";
            for (Form form : Form.values()) {
                folder.files(of + form.folder(), ".md")
                        .forEach(name -> folder.text(of + form.folder() + "/" + name, findings::add)
                                .flatMap(file -> headed(file, findings::add))
                                .flatMap(text -> translation(language, form, text))
                                .ifPresent(texts::add));
            }
            // Of a coach that could not be read nobody knows which facts there are.
            if (folder.has(of + FACTS) && (path.equals(SHARED) || unit.isPresent())) {
                folder.text(of + FACTS, findings::add)
                        .flatMap(file -> yaml(file, FactTexts.SHAPE, findings::add))
                        .filter(it -> it.facts().read(FactTexts.TEXTS))
                        .ifPresent(it -> facts.add(new Rewording.OfALanguage(language, unit, it)));
            }
        }
    }

    private Optional<Translation> translation(String language, Form form, Headed text) {
        return Yaml.compose(text.file(), text.head(), 2, findings::add)
                .flatMap(node -> new Decoder(text.file(), 2, Optional.empty(), Optional.empty(), findings::add)
                        .record(node, TranslationHead.SHAPE))
                .filter(head -> head.facts().whole())
                .map(head -> new Translation(language, form, head, text.file(), text.body(), text.firstLine()));
    }

    /** What one procedure file says. */
    private record OfAFile(Optional<Script> script, List<Finding> findings) {}

    private OfAFile script(String path, Optional<String> unit) {
        List<Finding> found = new ArrayList<>();
        HiddenCharacters.told(path.substring(path.lastIndexOf('/')), Place.whole(new SourceFile(path, "")), found::add);
        Optional<Script> script = folder.text(path, found::add)
                .flatMap(file -> unit.isPresent()
                        ? script(file, unit, found::add)
                        : FileCache.read(file, (it, told) -> script(it, unit, told), found::add));
        return new OfAFile(script, found);
    }

    /** What a file is tells its folder. */
    private static Form form(SourceFile file) {
        return Stream.of(Form.values())
                .filter(form -> file.path().contains("/" + form.folder() + "/"))
                .findFirst()
                .orElse(Form.PROCEDURE);
    }

    /** The first stretch of lines without an empty one that is too long; it may be a single paragraph. */
    private static Optional<Finding> tooLong(SourceFile file, List<String> lines) {
        int first = 0;
        int length = 0;
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).isBlank()) {
                first = i + 1;
                length = 0;
            }
            length += lines.get(i).length() + 1;
            if (length > Folder.MOST_CHARACTERS) {
                return Optional.of(Folder.tooLong(Place.of(file, first + 1, 1, 0), "this paragraph", length));
            }
        }
        return Optional.empty();
    }

    /**
     * A text below a head between two lines of three hyphens.
     *
     * @param firstLine of the body
     */
    private record Headed(SourceFile file, String head, String body, int firstLine) {}

    private static Optional<Headed> headed(SourceFile file, Consumer<Finding> findings) {
        List<String> lines = file.text().lines().toList();
        boolean begun = !lines.isEmpty() && lines.get(0).strip().equals("---");
        int end = !begun
                ? -1
                : lines.subList(1, lines.size()).stream()
                        .map(String::strip)
                        .toList()
                        .indexOf("---");
        if (end < 0) {
            findings.accept(Finding.error(
                            "missing-head",
                            Place.whole(file),
                            begun ? "the head has no end" : "the file does not begin with a head")
                    .mend("Begin with a line `---`, then id, title, stage, who and when, then a line `---`."));
            return Optional.empty();
        }
        String head = String.join("\n", lines.subList(1, end + 1));
        String body = String.join("\n", lines.subList(end + 2, lines.size()));
        HiddenCharacters.inMarkdown(file, body, end + 3, findings);
        Optional<Finding> tooLong = tooLong(file, lines);
        if (tooLong.isPresent()) {
            findings.accept(tooLong.get());
            return Optional.empty();
        }
        return Optional.of(new Headed(file, head, body, end + 3));
    }

    /** A procedure or trouble guide, as Markdown below its head. */
    static Optional<Script> script(SourceFile file, Optional<String> unit, Consumer<Finding> findings) {
        return headed(file, findings).flatMap(text -> script(text, unit, findings));
    }

    private static Optional<Script> script(Headed text, Optional<String> unit, Consumer<Finding> findings) {
        SourceFile file = text.file();
        return Yaml.compose(file, text.head(), 2, findings)
                .flatMap(node ->
                        new Decoder(file, 2, Optional.empty(), Optional.empty(), findings).record(node, Head.SHAPE))
                .filter(it -> it.facts().read(Head.ID))
                .map(it -> Script.of(
                        form(file),
                        it,
                        it.facts()
                                .ifRead(Head.WHEN)
                                .map(when -> ConditionReader.read(when, findings))
                                .orElse(new Condition.Unread<>()),
                        file,
                        text.body(),
                        text.firstLine(),
                        unit,
                        findings));
    }
}
