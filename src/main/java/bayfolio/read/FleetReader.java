package bayfolio.read;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.finding.Finding;
import bayfolio.model.Condition;
import bayfolio.model.ConditionReader;
import bayfolio.model.Country;
import bayfolio.model.Difference;
import bayfolio.model.Equipment;
import bayfolio.model.EquipmentKinds;
import bayfolio.model.FactTexts;
import bayfolio.model.FeatureWords;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.HireMarks;
import bayfolio.model.Rewording;
import bayfolio.model.Role;
import bayfolio.model.Roles;
import bayfolio.model.Shared;
import bayfolio.model.Sources;
import bayfolio.model.Unit;
import bayfolio.model.Units;
import bayfolio.model.Whose;
import bayfolio.model.Words;
import bayfolio.procedure.Acts;
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
import bayfolio.source.UnitsPath;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads a whole fleet folder; what is broken in one file hides nothing of the others. */
public final class FleetReader {
    public static final String FLEET = "units/fleet.yaml";

    /** The folder of texts in other languages. */
    static final String TRANSLATIONS = "translations";

    static final String FACTS = "facts.yaml";

    private static final String SHARED = "units/shared";

    /** What every shared procedure counts on. */
    public static final String LEAST_FLEET = """
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

    static final String COUNTRIES = "countries";

    static final Keeper.Reader<Optional<Roles>> ROLES = shared(Roles.SHAPE);
    static final Keeper.Reader<Optional<Words>> WORDS = shared(Words.SHAPE);
    static final Keeper.Reader<Optional<Sources>> SOURCES = shared(Sources.SHAPE);
    private static final Keeper.Reader<Optional<Country>> COUNTRY = shared(Country.SHAPE);
    private static final Keeper.Reader<Optional<HireMarks>> HIRE_MARKS = (folder, path, findings) ->
            folder.text(path, findings).flatMap(file -> yaml(file, HireMarks.SHAPE, findings));
    private static final Keeper.Reader<Optional<Acts>> ACTS =
            (folder, path, findings) -> folder.text(path, findings).flatMap(file -> acts(file, findings));

    /** What is wrong with one kind leaves the others as they are. */
    private static final Keeper.Reader<Equipped> EQUIPMENT = (folder, path, findings) -> {
        List<Optional<Acts>> files = equipmentFiles(folder).stream()
                .map(file -> folder.read(ACTS, file, findings))
                .toList();
        List<Acts> acts = files.stream().flatMap(Optional::stream).toList();
        boolean whole =
                files.stream().allMatch(Optional::isPresent) && acts.stream().allMatch(Acts::whole);
        return new Equipped(
                new EquipmentKinds(acts.stream().map(Acts::equipment).toList(), whole, findings), acts);
    };

    /** Most edits of a kind leave them as they are, and with them the procedures. */
    private static final Keeper.Reader<FeatureWords> FEATURES =
            (folder, path, findings) -> equipment(folder, told -> {}).kinds().words();

    private static final Keeper.Reader<Lists> LISTS = (folder, path, findings) -> {
        Optional<Roles> roles = folder.read(ROLES, "roles.yaml", told -> {});
        boolean judged = judged(
                roles,
                folder.read(WORDS, "words.yaml", told -> {}),
                folder.read(SOURCES, "sources.yaml", told -> {}),
                countries(folder, told -> {}));
        return new Lists(
                roles.filter(it -> judged).map(FleetReader::byId),
                Optional.of(equipment(folder, told -> {}).kinds()));
    };

    private static final Keeper.Reader<Optional<FleetFacts>> FACTS_OF_ALL =
            (folder, path, findings) -> folder.text(path, findings)
                    .flatMap(file -> yaml(file, FleetFacts.SHAPE, folder.read(LISTS, SHARED, told -> {}), findings));

    static final Keeper.Reader<Optional<Model>> MODEL = (folder, name, findings) -> {
        // Coaches take over records of it as they are: as what it may name says.
        folder.read(LISTS, SHARED, told -> {});
        return folder.text(Model.FOLDER + "/" + name + "/model.yaml", findings)
                .flatMap(file -> Model.of(file, findings));
    };

    private static final Keeper.Reader<Optional<Resolved>> COACH = new Keeper.Large<>(
            (folder, name, findings) -> folder.text("units/" + name + "/unit.yaml", findings)
                    .flatMap(file -> Resolved.of(
                            folder,
                            file,
                            folder.read(LISTS, SHARED, told -> {}),
                            Layered.models(folder, file, told -> {}),
                            findings)),
            coach -> coach.map(Resolved::bytes).orElse(0L));

    /** Procedures of a coach stay while its id does. */
    private static final Keeper.Reader<Optional<String>> ID =
            (folder, name, findings) -> folder.read(COACH, name, told -> {})
                    .flatMap(Resolved::unit)
                    .filter(it -> it.facts().read(Unit.ID))
                    .map(Unit::id);

    private static final Keeper.Reader<Optional<Script>> SCRIPT = (folder, path, findings) -> folder.text(
                    path, findings)
            .flatMap(file -> whose(folder, path)
                    .flatMap(whose -> script(file, whose, folder.read(FEATURES, SHARED, told -> {}), findings)));

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

    /** What cannot be read of the file of a fleet. */
    public static List<Finding> faults(SourceFile file) {
        List<Finding> findings = new ArrayList<>();
        yaml(file, FleetFacts.SHAPE, findings::add);
        return findings;
    }

    /** One coach for itself, over the model that it names; empty where nobody knows what it is. */
    public static Optional<Unit> unit(Folder folder, SourceFile file, Consumer<Finding> findings) {
        Lists lists = new Lists(
                Optional.empty(), Optional.of(equipment(folder, findings).kinds()));
        return Resolved.of(folder, file, lists, findings).flatMap(Resolved::unit);
    }

    public static Reading read(Folder folder) {
        Folder now = folder.now();
        Reading reading = new FleetReader(now).read();
        now.forgetTheRest();
        return reading;
    }

    private Reading read() {
        List<String> names = folder.coaches();
        Optional<Roles> roles = folder.read(ROLES, "roles.yaml", findings::add);
        Optional<Words> words = folder.read(WORDS, "words.yaml", findings::add);
        Optional<Sources> sources = folder.read(SOURCES, "sources.yaml", findings::add);
        List<Country> countries = countries(folder, findings::add);
        boolean judged = judged(roles, words, sources, countries);
        equipmentFiles(folder).parallelStream().forEach(file -> folder.read(ACTS, file, told -> {}));
        Equipped equipped = equipment(folder, findings::add);
        Map<String, List<Finding>> ofModels = new TreeMap<>();
        Set<String> models = models(ofModels);
        // Coaches are read beside what they share, each folder by itself; what comes of it keeps the order of the
        // names.
        CompletableFuture<List<OfACoach>> beside = CompletableFuture.supplyAsync(() -> names.parallelStream()
                .map(name -> new FleetReader(folder).coach(name))
                .toList());
        FleetFacts facts = fleetFacts()
                .orElseGet(
                        () -> new FleetFacts(Facts.unread(FleetFacts.SHAPE, Place.whole(new SourceFile(FLEET, "")))));
        Scripts shared = scripts(SHARED, Whose.ALL);
        List<OfACoach> coaches = beside.join();
        Map<String, List<String>> byModel = byModel(coaches);
        ofModels.forEach((model, found) -> findings.addAll(told(model, found, byModel.getOrDefault(model, List.of()))));
        Map<String, Scripts> scriptsOfModels = new TreeMap<>();
        models.stream()
                .filter(byModel::containsKey)
                .forEach(model ->
                        scriptsOfModels.put(model, scripts(Model.FOLDER + "/" + model, new Whose.OfAModel(model))));
        List<Script> scripts = new ArrayList<>(shared.read);
        scriptsOfModels.values().forEach(it -> scripts.addAll(it.read));
        coaches.forEach(it -> scripts.addAll(it.scripts.read));
        coaches.forEach(it -> findings.addAll(it.findings));
        List<OfACoach> known =
                coaches.stream().filter(coach -> coach.unit.isPresent()).toList();
        known.stream()
                .filter(coach -> models.contains(coach.unit.orElseThrow()))
                .map(coach -> unit(coach.folder))
                .forEach(unit -> findings.add(Finding.error(
                                "duplicate-id",
                                unit.facts().at(Unit.ID),
                                "the id `" + unit.id() + "` belongs to a model already, at " + Model.FOLDER + "/"
                                        + unit.id())
                        .mend("Give one of them an id of its own.")));
        List<String> folders = known.stream().map(OfACoach::folder).toList();
        Units units = new Units(
                known.stream()
                        .map(coach -> new Units.Name(coach.unit.orElseThrow(), coach.model))
                        .toList(),
                turn -> unit(folders.get(turn)));
        List<Whose> unread = new ArrayList<>(shared.unread);
        scriptsOfModels.values().forEach(it -> unread.addAll(it.unread));
        coaches.forEach(it -> unread.addAll(it.scripts.unread));
        Fleet fleet = new Fleet(
                facts,
                judged ? units : List.<Unit>of(),
                new Shared(
                        all(roles, Roles.ROLES, judged),
                        all(words, Words.WORDS, judged),
                        all(sources, Sources.SOURCES, judged),
                        countries,
                        judged ? equipped.kinds() : EquipmentKinds.NONE),
                coaches.stream()
                        .filter(it -> it.unit.isEmpty())
                        .map(OfACoach::folder)
                        .toList());
        Ledger.Told ledger = folder.read(Ledger.READ, Ledger.FILE, findings::add);
        // Where no coach was taken, none is missed.
        (judged ? ledger.of(fleet) : ledger.faults().stream()).forEach(findings::add);
        Map<String, HireMarks> marks = new TreeMap<>();
        coaches.forEach(coach -> coach.unit.ifPresent(unit -> coach.marks.ifPresent(it -> marks.put(unit, it))));
        List<Translation> texts = new ArrayList<>();
        List<Rewording.OfALanguage> reworded = new ArrayList<>();
        translated(SHARED, Optional.of(Whose.ALL), texts, reworded);
        scriptsOfModels
                .keySet()
                .forEach(model -> translated(
                        Model.FOLDER + "/" + model, Optional.of(new Whose.OfAModel(model)), texts, reworded));
        coaches.forEach(
                coach -> translated("units/" + coach.folder, coach.unit.map(Whose.OfACoach::new), texts, reworded));
        Map<String, Difference> differences = new TreeMap<>();
        coaches.forEach(
                coach -> coach.unit.ifPresent(unit -> coach.difference.ifPresent(it -> differences.put(unit, it))));
        Translations translations = new Translations(texts, new Rewording(reworded));
        return new Reading(
                fleet.marked(marks).layered(differences).having(ledger.ledger().had(fleet)),
                new Library(judged ? scripts : List.of(), judged ? equipped.acts() : List.of(), unread, translations),
                names,
                findings);
    }

    private static <T extends Described> Keeper.Reader<Optional<T>> shared(Shape<T> shape) {
        return (folder, name, findings) ->
                folder.text(SHARED + "/" + name, findings).flatMap(file -> yaml(file, shape, findings));
    }

    /** Without what they name, coaches and procedures would seem wrong everywhere. */
    private static boolean judged(
            Optional<Roles> roles, Optional<Words> words, Optional<Sources> sources, List<Country> countries) {
        return roles.filter(it -> it.facts().whole()).isPresent()
                && words.filter(it -> it.facts().whole()).isPresent()
                && sources.filter(it -> it.facts().whole()).isPresent()
                && countries.stream().allMatch(it -> it.facts().whole());
    }

    /** Empty where nobody knows which coach a procedure is for. */
    private static Optional<Whose> whose(Folder folder, String path) {
        return path.startsWith(SHARED + "/")
                ? Optional.of(Whose.ALL)
                : UnitsPath.model(path)
                        .<Whose>map(Whose.OfAModel::new)
                        .or(() -> UnitsPath.coach(path)
                                .flatMap(name -> folder.read(ID, name, told -> {}))
                                .map(Whose.OfACoach::new));
    }

    private Optional<FleetFacts> fleetFacts() {
        if (folder.has(FLEET)) {
            return folder.read(FACTS_OF_ALL, FLEET, findings::add);
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
     * @param unit its id; empty where nobody knows which coach it is
     */
    private record OfACoach(
            String folder,
            Optional<String> model,
            Optional<String> unit,
            Optional<Difference> difference,
            Optional<HireMarks> marks,
            Scripts scripts,
            List<Finding> findings) {}

    /** As it was read; one that nobody can tell from others was left out. */
    private Unit unit(String name) {
        return folder.read(COACH, name, told -> {}).flatMap(Resolved::unit).orElseThrow();
    }

    private OfACoach coach(String name) {
        String path = "units/" + name;
        HiddenCharacters.told(path, Place.whole(new SourceFile(path, "")), findings::add);
        Optional<Resolved> resolved = folder.read(COACH, name, findings::add);
        Optional<Unit> unit =
                resolved.flatMap(Resolved::unit).filter(it -> it.facts().read(Unit.ID));
        Scripts scripts =
                unit.map(it -> scripts(path, new Whose.OfACoach(it.id()))).orElse(new Scripts(List.of(), List.of()));
        unit.ifPresent(it -> Photos.check(folder, it, findings::add));
        unit.ifPresent(it -> Films.check(folder, it, findings::add));
        // What is wrong in a model is told once, with all of its coaches.
        findings.replaceAll(
                finding -> UnitsPath.model(finding.at().file().path()).isPresent()
                        ? finding.on(unit.map(Unit::id).orElse(name))
                        : finding);
        return new OfACoach(
                name,
                resolved.map(Resolved::model)
                        .orElseGet(() ->
                                folder.text(path + "/unit.yaml", told -> {}).flatMap(Layered::model)),
                unit.map(Unit::id),
                resolved.flatMap(Resolved::difference),
                marks(path + "/marks.yaml"),
                scripts,
                findings);
    }

    /**
     * The names of all.
     *
     * @param found gets what is wrong with each
     */
    private Set<String> models(Map<String, List<Finding>> found) {
        Set<String> models = new TreeSet<>(folder.models());
        for (String name : models) {
            String path = Model.FOLDER + "/" + name;
            List<Finding> its = new ArrayList<>();
            HiddenCharacters.told(path, Place.whole(new SourceFile(path, "")), its::add);
            folder.read(MODEL, name, its::add);
            found.put(name, its);
        }
        return models;
    }

    /** Folders of the coaches that name each model, also of those that could not be read. */
    private static Map<String, List<String>> byModel(List<OfACoach> coaches) {
        Map<String, List<String>> byModel = new TreeMap<>();
        coaches.forEach(coach -> coach.model.ifPresent(
                model -> byModel.computeIfAbsent(model, it -> new ArrayList<>()).add(coach.folder)));
        return byModel;
    }

    /** What is wrong with a model is told once for all of its coaches; one that no coach has harms nobody. */
    private static List<Finding> told(String model, List<Finding> found, List<String> coaches) {
        Place whole = Place.whole(new SourceFile(Model.FOLDER + "/" + model + "/model.yaml", ""));
        return coaches.isEmpty()
                ? List.of(Finding.warning(
                                "model-without-coach",
                                whole,
                                "no coach names the model `" + model + "`, and nothing in it is looked at")
                        .mend("Write `model: " + model + "` in a description, or take the folder away."))
                : found.stream().map(finding -> finding.on(coaches)).toList();
    }

    private Optional<HireMarks> marks(String path) {
        return folder.has(path)
                ? folder.read(HIRE_MARKS, path, findings::add)
                        .filter(it -> it.facts().read(HireMarks.MARKS))
                : Optional.empty();
    }

    /** One file a country, each named after it. */
    static List<Country> countries(Folder folder, Consumer<Finding> findings) {
        return folder.files(SHARED + "/" + COUNTRIES, ".yaml").stream()
                .flatMap(name -> folder.read(COUNTRY, COUNTRIES + "/" + name, findings).stream())
                .toList();
    }

    /** Any role is let pass. */
    static <T extends Described> Optional<T> yaml(SourceFile file, Shape<T> shape, Consumer<Finding> findings) {
        return yaml(file, shape, Lists.ANY, findings);
    }

    /**
     * @param lists what may be named
     */
    static <T extends Described> Optional<T> yaml(
            SourceFile file, Shape<T> shape, Lists lists, Consumer<Finding> findings) {
        List<Finding> broken = new ArrayList<>();
        Optional<Node> node = Yaml.compose(file, file.text(), 1, broken::add);
        if (node.isEmpty()) {
            spoilt(file, shape, broken).forEach(findings);
        }
        return node.flatMap(it -> new Decoder(file, 1, lists, Optional.empty(), findings).record(it, shape));
    }

    /** What is told of a file that is no YAML as a whole: what is wrong with its parts, where they can be told apart. */
    static List<Finding> spoilt(SourceFile file, Shape<?> shape, List<Finding> broken) {
        boolean somewhere = broken.stream().noneMatch(finding -> finding.at().equals(Place.whole(file)));
        List<Finding> byBlock = somewhere ? byBlock(file, shape) : List.of();
        boolean found = byBlock.stream().anyMatch(finding -> finding.code().equals("yaml-syntax"));
        // Where no block is broken by itself, what is wrong lies between them.
        return found ? byBlock : broken;
    }

    /** What is wrong in a file that is no YAML as a whole, block by block. */
    private static List<Finding> byBlock(SourceFile file, Shape<?> shape) {
        List<Finding> findings = new ArrayList<>();
        for (Yaml.Block block : Yaml.blocks(file)) {
            if (!block.text().isBlank()) {
                List<Finding> ofBlock = new ArrayList<>();
                Yaml.compose(file, block.text(), block.firstLine(), ofBlock::add)
                        .ifPresent(
                                node -> new Decoder(file, block.firstLine(), Lists.ANY, Optional.empty(), ofBlock::add)
                                        .part(node, shape));
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
     * @param unread whose others could not be read: see {@link Library#Library(List, List, List, Translations)}
     */
    private record Scripts(List<Script> read, List<Whose> unread) {}

    private Scripts scripts(String path, Whose whose) {
        List<OfAFile> files = Stream.of(Form.values())
                .filter(form -> form != Form.EQUIPMENT)
                .flatMap(form -> folder.files(path + "/" + form.folder(), ".md").stream()
                        .map(name -> path + "/" + form.folder() + "/" + name))
                .toList()
                .parallelStream()
                .map(this::script)
                .toList();
        files.forEach(it -> findings.addAll(it.findings));
        return new Scripts(
                files.stream().flatMap(it -> it.script.stream()).toList(),
                files.stream()
                        .filter(it -> it.script.isEmpty())
                        .map(it -> whose)
                        .distinct()
                        .toList());
    }

    /**
     * What is there in other languages: a folder for each language, in it the folders of the forms, and a file for facts.
     *
     * @param whose of which coaches; empty where nobody knows which facts those have
     */
    private void translated(
            String path, Optional<Whose> whose, List<Translation> texts, List<Rewording.OfALanguage> facts) {
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
            if (folder.has(of + FACTS)) {
                whose.ifPresent(its -> folder.text(of + FACTS, findings::add)
                        .flatMap(file -> yaml(file, FactTexts.SHAPE, findings::add))
                        .filter(it -> it.facts().read(FactTexts.TEXTS))
                        .ifPresent(it -> facts.add(new Rewording.OfALanguage(language, its, it))));
            }
        }
    }

    private Optional<Translation> translation(String language, Form form, Headed text) {
        return Yaml.compose(text.file(), text.head(), 2, findings::add)
                .flatMap(node -> new Decoder(text.file(), 2, Lists.ANY, Optional.empty(), findings::add)
                        .record(node, TranslationHead.SHAPE))
                .filter(head -> head.facts().whole())
                .map(head -> new Translation(language, form, head, text.file(), text.body(), text.firstLine()));
    }

    /** What one procedure file says. */
    private record OfAFile(Optional<Script> script, List<Finding> findings) {}

    private OfAFile script(String path) {
        List<Finding> found = new ArrayList<>();
        HiddenCharacters.told(path.substring(path.lastIndexOf('/')), Place.whole(new SourceFile(path, "")), found::add);
        return new OfAFile(folder.read(SCRIPT, path, found::add), found);
    }

    /**
     * The kinds of equipment that there are.
     *
     * @param acts what each adds to pages
     */
    record Equipped(EquipmentKinds kinds, List<Acts> acts) {}

    static Equipped equipment(Folder folder, Consumer<Finding> findings) {
        return folder.read(EQUIPMENT, SHARED, findings);
    }

    /** One file a kind, each named after it. */
    private static List<String> equipmentFiles(Folder folder) {
        String path = SHARED + "/" + Form.EQUIPMENT.folder();
        return folder.files(path, ".md").stream().map(name -> path + "/" + name).toList();
    }

    static Optional<Acts> acts(SourceFile file, Consumer<Finding> findings) {
        return headed(file, findings)
                .flatMap(text -> Yaml.compose(file, text.head(), 2, findings)
                        .flatMap(node -> new Decoder(file, 2, Lists.ANY, Optional.empty(), findings)
                                .record(node, Equipment.SHAPE))
                        .filter(it -> it.facts().read(Equipment.ID))
                        .map(it -> Acts.of(it, file, text.body(), text.firstLine(), findings)));
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
    static Optional<Script> script(SourceFile file, Whose whose, FeatureWords words, Consumer<Finding> findings) {
        return headed(file, findings).flatMap(text -> script(text, whose, words, findings));
    }

    private static Optional<Script> script(Headed text, Whose whose, FeatureWords words, Consumer<Finding> findings) {
        SourceFile file = text.file();
        return Yaml.compose(file, text.head(), 2, findings)
                .flatMap(node -> new Decoder(file, 2, Lists.ANY, Optional.empty(), findings).record(node, Head.SHAPE))
                .filter(it -> it.facts().read(Head.ID))
                .map(it -> Script.of(
                        form(file),
                        it,
                        it.facts()
                                .ifRead(Head.WHEN)
                                .map(when -> ConditionReader.read(when, words, findings))
                                .orElse(new Condition.Unread<>()),
                        file,
                        text.body(),
                        text.firstLine(),
                        whose,
                        findings));
    }
}
