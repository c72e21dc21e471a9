package bayfolio.edition;

import bayfolio.finding.Finding;
import bayfolio.model.Unit;
import bayfolio.read.Folder;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The editions of one coach, which are read when they are asked for: each is large. */
public final class Editions {
    /** In the folder of the coach. */
    public static final String FOLDER = "editions";

    private static final Pattern NAME = Pattern.compile("([1-9][0-9]{0,5})\\.json");

    private final Folder folder;
    private final String unit;
    private final Set<String> ids;
    private final TreeSet<Integer> numbers;

    /** @param ids those that the coach has had: an edition has the one of its day */
    private Editions(Folder folder, String unit, Set<String> ids, TreeSet<Integer> numbers) {
        this.folder = folder;
        this.unit = unit;
        this.ids = Set.copyOf(ids);
        this.numbers = numbers;
    }

    /**
     * @param findings of files that are no editions, and of numbers that are missing
     */
    public static Editions of(Folder folder, Unit coach, Consumer<Finding> findings) {
        String unit = coach.id();
        TreeSet<Integer> numbers = new TreeSet<>();
        for (String file : folder.files(in(unit), "")) {
            Matcher name = NAME.matcher(file);
            if (name.matches()) {
                numbers.add(Integer.parseInt(name.group(1)));
            } else if (file.endsWith(".json")) {
                findings.accept(EditionFile.misplaced(
                                Place.whole(new SourceFile(in(unit) + "/" + file, "")),
                                "the name of the file is no number of an edition, such as `1.json`")
                        .mend("Move it out of this folder, in which `issue` alone writes."));
            }
        }
        int before = 0;
        for (int number : numbers) {
            if (number != before + 1) {
                findings.accept(Finding.error(
                                "edition-missing",
                                Place.whole(new SourceFile(path(unit, number), "")),
                                "edition " + (before + 1) + " of `" + unit + "`, which came before it, is missing")
                        .mend("Take it back from version control; no number is given twice."));
            }
            before = number;
        }
        Set<String> ids = new HashSet<>(coach.facts().all(Unit.FORMERLY));
        ids.add(unit);
        return new Editions(folder, unit, ids, numbers);
    }

    /**
     * What is wrong with those of a coach. Each is large: of the last one, which readers have, it is known whether it is as
     * it was issued, and of others when they are read.
     */
    public static List<Finding> faults(Folder folder, Unit coach) {
        List<Finding> findings = new ArrayList<>();
        Editions editions = of(folder, coach, findings::add);
        String unit = coach.id();
        int last = editions.last();
        if (last > 0) {
            editions.text(path(unit, last), findings::add)
                    .flatMap(file -> EditionFile.fault(file, unit, last, editions.ids))
                    .ifPresent(findings::add);
            AsPrinted.read(folder, unit, last, findings::add);
        }
        return findings;
    }

    /** All that lies where they are. */
    public static List<Path> files(Folder folder, String unit) {
        return folder.files(in(unit), "").stream()
                .map(name -> folder.root().resolve(in(unit)).resolve(name))
                .toList();
    }

    private static String in(String unit) {
        return "units/" + unit + "/" + FOLDER;
    }

    /** Where an edition is, or will be. */
    public static String path(String unit, int number) {
        return in(unit) + "/" + number + ".json";
    }

    /** Where it is written down how its book was printed, once it was. */
    public static String pages(String unit, int number) {
        return in(unit) + "/" + number + ".pages";
    }

    /** In their order. */
    public List<Integer> numbers() {
        return List.copyOf(numbers);
    }

    /** The number of the last one; 0 where there is none. */
    public int last() {
        return numbers.isEmpty() ? 0 : numbers.last();
    }

    /** Empty where there is none of that number, or it could not be read, which is told. */
    public Optional<Edition> read(int number, Consumer<Finding> findings) {
        return numbers.contains(number)
                ? text(path(unit, number), findings)
                        .flatMap(file -> EditionFile.read(file, unit, number, ids, findings))
                : Optional.empty();
    }

    /** Past the limit that files of writers have: a program wrote it, and has to read it whole. */
    private Optional<SourceFile> text(String path, Consumer<Finding> findings) {
        try {
            return Optional.of(
                    new SourceFile(path, Files.readString(folder.root().resolve(path))));
        } catch (IOException e) {
            findings.accept(
                    EditionFile.unreadable(Place.whole(new SourceFile(path, "")), "the file cannot be read as text"));
            return Optional.empty();
        }
    }
}
