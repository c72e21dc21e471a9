package bayfolio.publish;

import bayfolio.check.Check;
import bayfolio.model.Unit;
import bayfolio.procedure.Form;
import bayfolio.procedure.Script;
import bayfolio.source.Digest;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.CodeSource;
import java.security.MessageDigest;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Digests of all that the files of a coach are made of: while it is the same, so are they. Nothing of it is listed by hand
 * but what does not belong to it: it is everything in the folder of the coach, of its model and of what is shared, the theme
 * and the program itself, without the procedures that are not for this coach.
 */
final class Inputs {
    /** Of them only what is for a coach counts. */
    private static final List<String> SCRIPTS = Stream.of(Form.values())
            .filter(form -> form != Form.EQUIPMENT)
            .map(form -> "units/shared/" + form.folder() + "/")
            .toList();

    private final Check check;
    private final Path root;
    private final byte[] shared;

    /** Most are for many coaches. */
    private final Map<Script, String> scripts = new ConcurrentHashMap<>();

    Inputs(Check check, Path root, Publisher.Wanted wanted) throws IOException {
        this.check = check;
        this.root = root;
        MessageDigest digest = Digest.sha256();
        add(digest, program());
        add(digest, wanted.printing().toString());
        add(digest, new TreeSet<>(wanted.ways()).toString());
        add(digest, String.valueOf(check.fleet().asOf()));
        files(digest, "themes", path -> true);
        files(digest, "units/fleet.yaml", path -> true);
        files(digest, "units/shared", path -> SCRIPTS.stream().noneMatch(path::startsWith));
        this.shared = digest.digest();
    }

    String of(Unit unit) throws IOException {
        MessageDigest digest = Digest.sha256();
        digest.update(shared);
        files(digest, "units/" + unit.id(), path -> true);
        Optional<String> model = unit.model();
        if (model.isPresent()) {
            files(digest, "units/models/" + model.get(), path -> true);
        }
        for (Script script : check.library().of(unit)) {
            add(digest, scripts.computeIfAbsent(script, Inputs::of));
        }
        return Digest.whole(digest);
    }

    private static String of(Script script) {
        MessageDigest digest = Digest.sha256();
        add(digest, script.file().path());
        add(digest, script.file().text());
        return Digest.whole(digest);
    }

    /** All files in a folder, or the one, by their paths in the fleet folder. */
    private void files(MessageDigest digest, String within, Predicate<String> counts) throws IOException {
        Path folder = root.resolve(within);
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        TreeSet<String> paths;
        try (Stream<Path> all = Files.walk(folder)) {
            paths = all.filter(path -> Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS))
                    .map(path -> root.relativize(path).toString().replace('\\', '/'))
                    .filter(counts)
                    .collect(Collectors.toCollection(TreeSet::new));
        }
        for (String path : paths) {
            add(digest, path);
            byte[] bytes = Files.readAllBytes(root.resolve(path));
            add(digest, String.valueOf(bytes.length));
            digest.update(bytes);
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
