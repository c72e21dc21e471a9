package bayfolio.issue;

import bayfolio.edition.Editions;
import bayfolio.finding.Finding;
import bayfolio.read.NewFile;
import bayfolio.read.Replacement;
import bayfolio.read.Swap;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What is to be done about a coach after changes, as a Markdown file that people tick off. Made anew, it keeps their ticks and
 * their own lines; what is no longer due goes, unless it is ticked.
 */
public final class WorkList {
    /** No edition: those are files of JSON. */
    private static final String NAME = "to-do.md";

    private static final long MOST_BYTES = 4L << 20;
    private static final String DONE = "Done";

    private static final Pattern SINCE = Pattern.compile("<!-- since edition ([1-9][0-9]{0,5}) -->");
    private static final Pattern ITEM =
            Pattern.compile("[-*+] \\[(.)] .*<!-- ([a-z][a-z-]*/[^ ]+) ([0-9a-f]{12}) -->\\s*");
    private static final Pattern MARK = Pattern.compile("(<{7}|\\|{7}|>{7})( .*)?|={7}");
    private static final String HEADING = "## ";

    private final SourceFile file;
    private final byte[] bytes;

    /** Numbers of the edition since which it tells; empty where it does not say. */
    private final Optional<Integer> since;

    private final List<String> opening = new ArrayList<>();
    private final Map<String, Section> sections = new LinkedHashMap<>();

    /** An item as it stands there, with the indented lines below it, which are somebody's. */
    private record Item(boolean ticked, String key, String state, List<String> lines) {}

    private record Section(List<Item> items, List<String> own) {}

    private WorkList(SourceFile file, byte[] bytes, Optional<Integer> since) {
        this.file = file;
        this.bytes = bytes;
        this.since = since;
    }

    /** Where it is, below the fleet folder. */
    public static String path(String unit) {
        return "units/" + unit + "/" + Editions.FOLDER + "/" + NAME;
    }

    /**
     * @param root the fleet folder
     * @param findings of a file that cannot be read; then it is empty, and nothing may be written
     * @return as it is there; without a line where there is none yet
     */
    public static Optional<WorkList> read(Path root, String unit, Consumer<Finding> findings) throws IOException {
        String path = path(unit);
        Path at = root.resolve(path);
        if (!Files.exists(at, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.of(new WorkList(new SourceFile(path, ""), new byte[0], Optional.empty()));
        }
        if (!Files.isRegularFile(at) || Files.size(at) > MOST_BYTES) {
            findings.accept(unreadable(path, "it is no file, or one of more than 4 MB"));
            return Optional.empty();
        }
        byte[] bytes = Files.readAllBytes(at);
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return of(new SourceFile(path, text.startsWith("\uFEFF") ? text.substring(1) : text), bytes, findings);
        } catch (CharacterCodingException e) {
            findings.accept(unreadable(path, "the file cannot be read as UTF-8 text"));
            return Optional.empty();
        }
    }

    private static Finding unreadable(String path, String why) {
        return unreadable(Place.whole(new SourceFile(path, "")), why)
                .mend("Save it as UTF-8 text, or take it away; `changes --work-list` then begins a new one.");
    }

    private static Finding unreadable(Place at, String why) {
        return Finding.error("work-list-unreadable", at, why);
    }

    private static Optional<WorkList> of(SourceFile file, byte[] bytes, Consumer<Finding> findings) {
        Optional<Integer> since = Optional.empty();
        boolean wrong = false;
        List<String> lines = file.text().lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            Place at = Place.of(file, i + 1, 1, line.codePointCount(0, line.length()));
            Matcher item = ITEM.matcher(line);
            Matcher edition = SINCE.matcher(line);
            if (MARK.matcher(line).matches()) {
                findings.accept(Finding.error("conflict-marker", at, "`" + line + "` is left of a merge")
                        .mend("Take out the lines of marks and keep the items of both sides."));
                wrong = true;
            } else if (item.matches() && !" xX".contains(item.group(1))) {
                findings.accept(
                        unreadable(at, "`[" + item.group(1) + "]` is neither `[ ]`, to be done, nor `[x]`, done")
                                .mend("Write `[x]` where it is done, else `[ ]`."));
                wrong = true;
            } else if (since.isEmpty() && edition.find()) {
                since = Optional.of(Integer.parseInt(edition.group(1)));
            }
        }
        if (wrong) {
            return Optional.empty();
        }
        WorkList list = new WorkList(file, bytes, since);
        list.take(lines);
        return Optional.of(list);
    }

    private void take(List<String> lines) {
        Section section = new Section(new ArrayList<>(), opening);
        sections.put("", section);
        boolean below = false;
        for (String line : lines) {
            Matcher item = ITEM.matcher(line);
            if (line.startsWith(HEADING)) {
                section = sections.computeIfAbsent(
                        line.substring(HEADING.length()).strip(),
                        it -> new Section(new ArrayList<>(), new ArrayList<>()));
                below = false;
            } else if (item.matches()) {
                section.items()
                        .add(new Item(
                                !item.group(1).equals(" "),
                                item.group(2),
                                item.group(3),
                                new ArrayList<>(List.of(line))));
                below = true;
            } else if (below && line.matches("[ \\t]+\\S.*")) {
                section.items().get(section.items().size() - 1).lines().add(line);
            } else {
                below = false;
                section.own().add(line);
            }
        }
    }

    /** The edition since which it tells: its own for as long as something in it is still to be done, else the last one. */
    public int since(Editions editions) {
        return since.filter(editions.numbers()::contains)
                .filter(it -> items().anyMatch(item -> !item.ticked()))
                .orElse(editions.last());
    }

    /** Whether anything in it is done. */
    public boolean ticked() {
        return items().anyMatch(Item::ticked);
    }

    private Stream<Item> items() {
        return sections.values().stream().flatMap(section -> section.items().stream());
    }

    /**
     * Its text with what is due by now; the same text where nothing is otherwise.
     *
     * @param since the edition with which the coach was compared
     */
    public String with(String coach, int since, List<Consequences> changes) {
        List<Due> due = Due.of(changes);
        Map<String, Item> known = known();
        List<String> lines = new ArrayList<>(List.of(
                "# To do: " + coach,
                "",
                "Made by `bayfolio changes " + coach
                        + " --work-list`. Tick what is done; ticks and lines of your own stay.",
                "<!-- since edition " + since + " -->"));
        lines.addAll(block(ownOpening()));
        Set<String> told = new LinkedHashSet<>();
        Set<String> headings = new LinkedHashSet<>(List.of("", DONE));
        for (Due.Group group : Due.Group.values()) {
            headings.add(group.heading());
            List<String> items = new ArrayList<>();
            due.stream().filter(it -> it.group() == group).forEach(it -> {
                told.add(it.key());
                items.addAll(lines(it, Optional.ofNullable(known.get(it.key()))));
            });
            section(lines, group.heading(), items, own(group.heading(), known, due));
        }
        sections.forEach((heading, section) -> {
            if (!headings.contains(heading)) {
                section(lines, heading, List.of(), own(heading, known, due));
            }
        });
        List<String> done = new ArrayList<>();
        known.values().stream()
                .filter(item -> item.ticked() && !told.contains(item.key()))
                .forEach(item -> done.addAll(item.lines()));
        section(lines, DONE, done, own(DONE, known, due));
        return String.join("\n", lines) + "\n";
    }

    /** Each once; where a merge has left two, the one that is ticked. */
    private Map<String, Item> known() {
        Map<String, Item> known = new LinkedHashMap<>();
        items().distinct()
                .forEach(item -> known.merge(item.key(), item, (one, other) -> {
                    Item kept = one.ticked() || !other.ticked() ? one : other;
                    List<String> all = new ArrayList<>(kept.lines());
                    (kept == one ? other : one)
                            .lines().stream()
                                    .skip(1)
                                    .filter(it -> !all.contains(it))
                                    .forEach(all::add);
                    return new Item(kept.ticked(), kept.key(), kept.state(), all);
                }));
        return known;
    }

    /**
     * What has to stand in it for its items to be known again under other names of things. What was done for the changes that there
     * were is done for the same changes under those names; what was done for others stays so.
     *
     * @param names gives the key that an item has from then on
     * @param was what follows from the changes under the names so far
     * @param is the same under the others
     */
    public List<Replacement> renamed(UnaryOperator<String> names, List<Consequences> was, List<Consequences> is) {
        Map<String, String> states = new HashMap<>();
        Due.of(is).forEach(due -> states.put(due.key(), due.state()));
        Map<String, String> known = new HashMap<>();
        Due.of(was).forEach(due -> {
            String now = states.get(names.apply(due.key()));
            if (now != null) {
                known.put(due.key() + " " + due.state(), now);
            }
        });
        List<Replacement> all = new ArrayList<>();
        List<String> lines = file.text().lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            Matcher item = ITEM.matcher(lines.get(i));
            if (item.matches()) {
                String before = item.group(2) + " " + item.group(3);
                String after = names.apply(item.group(2)) + " " + known.getOrDefault(before, item.group(3));
                int column = lines.get(i).codePointCount(0, item.start(2)) + 1;
                if (!after.equals(before)) {
                    all.add(new Replacement(Place.of(file, i + 1, column, before.length()), before, after));
                }
            }
        }
        return all;
    }

    private static List<String> lines(Due due, Optional<Item> item) {
        boolean done =
                item.filter(it -> it.ticked() && it.state().equals(due.state())).isPresent();
        List<String> lines = new ArrayList<>();
        lines.add("- [" + (done ? "x" : " ") + "] " + due.text() + " <!-- " + due.key() + " " + due.state() + " -->");
        item.ifPresent(it -> lines.addAll(it.lines().subList(1, it.lines().size())));
        return lines;
    }

    /** Lines of a section that are somebody's own, with those below items that are no longer due. */
    private List<String> own(String heading, Map<String, Item> known, List<Due> due) {
        Section section = sections.get(heading);
        if (section == null) {
            return List.of();
        }
        List<String> own = new ArrayList<>(section.own());
        section.items().stream()
                .filter(item -> due.stream().noneMatch(it -> it.key().equals(item.key())))
                .filter(item -> !known.getOrDefault(item.key(), item).ticked())
                .forEach(
                        item -> item.lines().stream().skip(1).map(String::strip).forEach(own::add));
        return own;
    }

    private List<String> ownOpening() {
        return opening.stream()
                .filter(line -> !line.startsWith("# To do: ")
                        && !line.startsWith("Made by `bayfolio changes ")
                        && !SINCE.matcher(line).matches())
                .toList();
    }

    private static void section(List<String> lines, String heading, List<String> items, List<String> own) {
        List<String> block = block(own);
        if (!items.isEmpty() || !block.isEmpty()) {
            lines.add("");
            lines.add(HEADING + heading);
            if (!items.isEmpty()) {
                lines.add("");
                lines.addAll(items);
            }
            lines.addAll(block);
        }
    }

    /** Somebody's lines after a blank one, without those around them. */
    private static List<String> block(List<String> own) {
        int from = 0;
        int to = own.size();
        while (from < to && own.get(from).isBlank()) {
            from++;
        }
        while (to > from && own.get(to - 1).isBlank()) {
            to--;
        }
        List<String> block = new ArrayList<>(own.subList(from, to));
        if (!block.isEmpty()) {
            block.add(0, "");
        }
        return block;
    }

    /**
     * Writes it whole.
     *
     * @return whether there was something to write: nothing is begun where nothing is to be done
     * @throws IOException where somebody has changed it meanwhile, or it cannot be written
     */
    public boolean write(Path root, String text) throws IOException {
        boolean windows = file.text().contains("\r\n");
        byte[] after = (windows ? text.replace("\n", "\r\n") : text).getBytes(StandardCharsets.UTF_8);
        Path at = root.resolve(file.path());
        if (Arrays.equals(bytes, after) || bytes.length == 0 && !text.contains("\n" + HEADING)) {
            return false;
        }
        if (Files.exists(at, LinkOption.NOFOLLOW_LINKS)) {
            new Swap(at, bytes, after).make();
        } else {
            Files.createDirectories(at.getParent());
            new NewFile(at, after).make();
        }
        return true;
    }

    /** How many items of a text are still to be done. */
    public static long open(String text) {
        return text.lines()
                .map(ITEM::matcher)
                .filter(it -> it.matches() && it.group(1).equals(" "))
                .count();
    }
}
