package bayfolio.rename;

import bayfolio.finding.Finding;
import bayfolio.procedure.Form;
import bayfolio.procedure.Script;
import bayfolio.read.Folder;
import bayfolio.read.Rewrite;
import bayfolio.read.RewriteException;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Files that hold the name and cannot be read, so that nobody knows what is to be changed in them. */
final class Unread {
    private final Folder folder;
    private final NewName name;
    private final List<Finding> told;
    private final Set<String> texts;
    private final List<Against> against = new ArrayList<>();

    /**
     * @param told what was found when the fleet was read
     * @param scripts all texts that could be read
     */
    Unread(Folder folder, NewName name, List<Finding> told, List<Script> scripts) {
        this.folder = folder;
        this.name = name;
        this.told = told;
        this.texts = scripts.stream()
                .filter(script -> !script.template().malformed())
                .map(script -> script.file().path())
                .collect(Collectors.toSet());
    }

    List<Finding> findings() throws IOException {
        List<Finding> findings = new ArrayList<>();
        for (String beside : name.folders()) {
            for (String path : files(beside)) {
                findings.addAll(findings(path));
            }
        }
        return findings;
    }

    private List<String> files(String beside) throws IOException {
        Path root = folder.root().resolve(beside);
        if (!Files.isDirectory(root)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> folder.root().relativize(file).toString().replace('\\', '/'))
                    .filter(path -> !path.contains("/.") && (path.endsWith(".yaml") || isText(path)))
                    .sorted()
                    .toList();
        }
    }

    private static boolean isText(String path) {
        return path.endsWith(".md")
                && Stream.of(Form.values()).anyMatch(form -> path.contains("/" + form.folder() + "/"));
    }

    private List<Finding> findings(String path) {
        List<Finding> its = new ArrayList<>();
        Optional<SourceFile> file = folder.text(path, its::add);
        if (file.isEmpty()) {
            return its;
        }
        Matcher used = NewId.alone(name.before()).matcher(file.get().text());
        if (!used.find() || isRead(file.get())) {
            return List.of();
        }
        List<Finding> known = told.stream()
                .filter(finding ->
                        finding.isError() && finding.at().file().path().equals(path))
                .toList();
        if (known.isEmpty()) {
            against.add(new Against(Place.whole(file.get()), "this file holds the name and cannot be read"));
        }
        return known;
    }

    /** The same of files of which nothing else was told; known once {@link #findings} has been asked. */
    List<Against> against() {
        return List.copyOf(against);
    }

    private boolean isRead(SourceFile file) {
        if (!file.path().endsWith(".yaml")) {
            return texts.contains(file.path());
        }
        try {
            Rewrite.read(file);
            return true;
        } catch (RewriteException e) {
            return false;
        }
    }
}
