package bayfolio.edition;

import bayfolio.finding.Finding;
import bayfolio.read.Folder;
import bayfolio.read.WholeFile;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How the book of an edition was printed, in a file beside the edition, of which there are only facts and texts. It has a
 * line for each page: {@code a4 57 3f9a1b2c0d1e do/level do/hook-up}, the paper, the number, a digest, and what is on it.
 *
 * @param books pages in their order, by the name of the paper
 */
public record AsPrinted(String unit, int edition, SortedMap<String, List<PrintedPage>> books) {
    private static final Pattern LINE =
            Pattern.compile("([a-z0-9]+) ([1-9][0-9]{0,4}) ([0-9a-f]{12})((?: [a-z0-9/-]+)*)");

    public AsPrinted {
        books = Collections.unmodifiableSortedMap(new TreeMap<>(books));
    }

    /** @param findings where the file is no longer as it was written; the pages that differ cannot be found then */
    public static Optional<AsPrinted> read(Folder folder, String unit, int edition, Consumer<Finding> findings) {
        String path = Editions.pages(unit, edition);
        if (!folder.has(path)) {
            return Optional.empty();
        }
        SourceFile file = folder.named(path).orElseGet(() -> new SourceFile(path, ""));
        SortedMap<String, List<PrintedPage>> books = new TreeMap<>();
        int number = 0;
        for (String line : file.text().lines().toList()) {
            number++;
            Matcher page = LINE.matcher(line);
            List<PrintedPage> pages =
                    page.matches() ? books.computeIfAbsent(page.group(1), it -> new ArrayList<>()) : List.of();
            if (!page.matches() || pages.size() + 1 != Integer.parseInt(page.group(2))) {
                return unreadable(Place.of(file, number, 1, line.length()), edition, findings);
            }
            pages.add(new PrintedPage(
                    page.group(3),
                    page.group(4).isEmpty()
                            ? List.of()
                            : List.of(page.group(4).substring(1).split(" "))));
        }
        return books.isEmpty()
                ? unreadable(Place.whole(file), edition, findings)
                : Optional.of(new AsPrinted(unit, edition, books));
    }

    private static Optional<AsPrinted> unreadable(Place at, int edition, Consumer<Finding> findings) {
        findings.accept(
                Finding.error(
                                "pages-unreadable",
                                at,
                                "it does not tell how the book of edition " + edition
                                        + " was printed, with a line for each page")
                        .mend(
                                "Take the file back from version control, or take it away; then the whole book is to be printed."));
        return Optional.empty();
    }

    public boolean isKept(Path root) {
        Path file = file(root);
        try {
            return Files.exists(file) && Files.readString(file).equals(text());
        } catch (IOException e) {
            return false;
        }
    }

    /** Whole, or as it was. */
    public void keep(Path root) throws IOException {
        new WholeFile(file(root), text().getBytes(StandardCharsets.UTF_8)).make();
    }

    private Path file(Path root) {
        return root.resolve(Editions.pages(unit, edition));
    }

    private String text() {
        StringBuilder text = new StringBuilder();
        books.forEach((paper, pages) -> {
            for (int i = 0; i < pages.size(); i++) {
                PrintedPage page = pages.get(i);
                text.append(paper).append(' ').append(i + 1).append(' ').append(page.digest());
                page.holds().forEach(it -> text.append(' ').append(it));
                text.append('\n');
            }
        });
        return text.toString();
    }
}
