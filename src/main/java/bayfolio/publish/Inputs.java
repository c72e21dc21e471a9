package bayfolio.publish;

import bayfolio.model.Fleet;
import bayfolio.model.Unit;
import bayfolio.procedure.Form;
import bayfolio.procedure.Library;
import bayfolio.procedure.Script;
import bayfolio.source.Digest;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.security.MessageDigest;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Digests of all that is known of a coach by: while it is the same, so are its files, and what is found in it. Nothing of it
 * is listed by hand but what does not belong to it: it is everything in the folder of the coach, of its model and of what
 * is shared, the theme and the program itself; for its files without the procedures that are not for this coach.
 */
final class Inputs {
    private static final Set<String> SCRIPTS = Stream.of(Form.values())
            .filter(form -> form != Form.EQUIPMENT)
            .map(Form::folder)
            .collect(Collectors.toUnmodifiableSet());

    private static final String SHARED = "units/shared";

    private final Fleet fleet;
    private final FleetState files;
    private final byte[] shared;

    /** Most are for many coaches. */
    private final Map<Script, String> scripts = new ConcurrentHashMap<>();

    /** @param files of the fleet as they were before it was read */
    Inputs(Fleet fleet, FleetState files) throws IOException {
        this.fleet = fleet;
        this.files = files;
        MessageDigest digest = Digest.sha256();
        add(digest, program());
        add(digest, String.valueOf(fleet.asOf()));
        digest.update(files.contents("themes"));
        digest.update(files.contents("units/fleet.yaml"));
        for (String name : namesIn(files.root().resolve(SHARED))) {
            if (!SCRIPTS.contains(name)) {
                add(digest, name);
                digest.update(files.contents(SHARED + "/" + name));
            }
        }
        this.shared = digest.digest();
    }

    /** For what is found in it: all procedures may be named by its texts, and what all its sisters have may be missing. */
    String ofFindings(Unit unit) throws IOException {
        MessageDigest digest = own(unit);
        add(digest, fleet.customs().missing(unit, fleet.roles()).toString());
        for (String folder : new TreeSet<>(SCRIPTS)) {
            digest.update(files.contents(SHARED + "/" + folder));
        }
        return Digest.whole(digest);
    }

    /** For its files. */
    String ofFiles(Unit unit, Library library, Publisher.Wanted wanted) throws IOException {
        MessageDigest digest = own(unit);
        add(digest, wanted.printing().toString());
        add(digest, new TreeSet<>(wanted.ways()).toString());
        for (Script script : library.of(unit)) {
            add(digest, scripts.computeIfAbsent(script, Inputs::of));
        }
        return Digest.whole(digest);
    }

    private MessageDigest own(Unit unit) throws IOException {
        MessageDigest digest = Digest.sha256();
        digest.update(shared);
        add(digest, unit.id());
        add(digest, fleet.had(unit).toString());
        digest.update(files.contents("units/" + unit.id()));
        if (unit.model().isPresent()) {
            digest.update(files.contents("units/models/" + unit.model().get()));
        }
        return digest;
    }

    private static String of(Script script) {
        MessageDigest digest = Digest.sha256();
        add(digest, script.file().path());
        add(digest, script.file().text());
        return Digest.whole(digest);
    }

    private static Set<String> namesIn(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return Set.of();
        }
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.map(entry -> entry.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new));
        }
    }

    /** The program as it was built: another build may make other files of the same. */
    private static String program() throws IOException {
        CodeSource source = Inputs.class.getProtectionDomain().getCodeSource();
        if (source == null) {
            return "";
        }
        try (Stream<Path> files = Files.walk(Path.of(source.getLocation().toURI()))) {
            return files.filter(Files::isRegularFile)
                    .map(file -> file.getFileName() + " " + file.toFile().length() + " "
                            + file.toFile().lastModified())
                    .sorted()
                    .collect(Collectors.joining("\n"));
        } catch (URISyntaxException e) {
            throw new IOException(e);
        }
    }

    private static void add(MessageDigest digest, String text) {
        digest.update(text.getBytes(StandardCharsets.UTF_8));
        digest.update((byte) 0);
    }
}
