package bayfolio.issue;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.check.CheckedCoach;
import bayfolio.document.Audience;
import bayfolio.document.DocumentJson;
import bayfolio.edition.Change;
import bayfolio.edition.Changed;
import bayfolio.edition.Comparison;
import bayfolio.edition.Snapshot;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What holds of all comparisons, after random edits of descriptions and texts: a word more, a line less, two lines turned
 * about. {@code -Dedits=1000} makes edits until a reader sees so many of them, on five coaches of the demo fleet side by side;
 * {@code -Dedits.seed=7} makes others.
 */
final class ChangesTest {
    private static final int EDITS = Integer.getInteger("edits", 5);
    private static final long SEED = Long.getLong("edits.seed", 20);
    private static final List<String> COACHES = List.of("dunlin", "redpoll", "phalarope", "turnstone", "whimbrel");

    @TempDir
    private Path folder;

    /** Side by side, each coach in a fleet folder of its own. */
    @Test
    void eachEditThatAReaderSeesIsToldAndNothingElse() {
        SoftAssertions edits = new SoftAssertions();
        IntStream.range(0, COACHES.size()).parallel().forEach(lane -> {
            try {
                edited(COACHES.get(lane), (EDITS + lane) / COACHES.size(), new Random(SEED + lane), edits);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        edits.assertAll();
    }

    /** @param wanted how many edits a reader is to see */
    private void edited(String coach, int wanted, Random random, SoftAssertions edits) throws IOException {
        Path root = DemoFleet.copy(Path.of(""), folder.resolve(coach));
        Now before = States.now(root, coach);
        Snapshot was = before.snapshot();
        Map<String, String> pages = pages(before);
        assertThat(Comparison.of(was, was)).isEmpty();
        for (int seen = 0; seen < wanted; ) {
            Edit edit = edit(root, before.coach(), random);
            Optional<Now> read = States.ifRead(root, coach);
            Files.writeString(edit.file, edit.before);
            if (read.isEmpty()) {
                continue;
            }
            Now after = read.get();
            Snapshot is = after.snapshot();
            List<Changed> there = Comparison.of(was, is);
            List<Changed> back = Comparison.of(is, was);

            edits.assertThat(mirrored(there)).as(edit.toString()).isEqualTo(told(back));
            edits.assertThat(applied(was.facts(), there)).as(edit.toString()).isEqualTo(joined(is.facts()));
            if (after.handbook().isEmpty()) {
                continue;
            }
            Set<String> differ = differing(pages, pages(after));
            if (!differ.isEmpty()) {
                seen++;
                edits.assertThat(there).as(edit.toString()).isNotEmpty();
            }
            Set<String> told = new TreeSet<>();
            there.forEach(changed -> told.addAll(changed.pages()));
            edits.assertThat(told).as(edit.toString()).isEqualTo(differ);
        }
    }

    private record Edit(Path file, String before, String what) {
        @Override
        public String toString() {
            return file + ": " + what;
        }
    }

    /** Of a description, or of a text that all coaches share; most often one that this coach has. */
    private static Edit edit(Path root, CheckedCoach coach, Random random) throws IOException {
        List<Path> files = new ArrayList<>();
        if (random.nextInt(8) == 0) {
            try (Stream<Path> shared = Files.walk(root.resolve("units/shared"))) {
                shared.filter(path -> path.toString().endsWith(".md")).sorted().forEach(files::add);
            }
        } else if (random.nextInt(3) == 0) {
            coach.library()
                    .of(coach.unit())
                    .forEach(script -> files.add(root.resolve(script.file().path())));
        } else {
            files.add(root.resolve("units/" + coach.unit().id() + "/unit.yaml"));
        }
        Path file = files.get(random.nextInt(files.size()));
        String text = Files.readString(file);
        List<String> lines = new ArrayList<>(text.lines().toList());
        String after = text;
        String what = "";
        while (after.equals(text)) {
            int line = 8 + random.nextInt(lines.size() - 10);
            what = lines.get(line);
            after = edited(lines, line, random.nextInt(6));
        }
        Files.writeString(file, after);
        return new Edit(file, text, what);
    }

    private static String edited(List<String> before, int line, int how) {
        List<String> lines = new ArrayList<>(before);
        String what = lines.get(line);
        switch (how) {
            case 0 -> lines.remove(line);
            case 1, 2, 3 -> lines.set(line, what.replaceFirst("([a-z]{4,})([.]?)(?= \\{#.*|$)", "$1 again$2"));
            case 4 -> lines.set(line, what.replaceFirst("\\b([1-9])([0-9]?)(?=[ .,0-9]*$| [a-zA-Z%]+$)", "$1$2$2"));
            default -> {
                lines.set(line, lines.get(line + 1));
                lines.set(line + 1, what);
            }
        }
        return String.join("\n", lines) + "\n";
    }

    /** Pages of both readers of which the normal form is otherwise, by the document itself and not by its parts. */
    private static Set<String> differing(Map<String, String> was, Map<String, String> is) {
        Set<String> all = new TreeSet<>(was.keySet());
        all.addAll(is.keySet());
        all.removeIf(page ->
                was.containsKey(page) && is.containsKey(page) && was.get(page).equals(is.get(page)));
        return all;
    }

    private static Map<String, String> pages(Now now) {
        Map<String, String> pages = new TreeMap<>();
        for (JsonElement part : JsonParser.parseString(
                        DocumentJson.asRead(now.handbook().orElseThrow().seenBy(Audience.STAFF)))
                .getAsJsonObject()
                .getAsJsonArray("parts")) {
            for (JsonElement page : part.getAsJsonObject().getAsJsonArray("pages")) {
                pages.put(page.getAsJsonObject().get("id").getAsString(), page.toString());
            }
        }
        return pages;
    }

    private static List<String> told(List<Changed> changes) {
        return changes.stream()
                .map(it -> it.change() + " " + it.technical())
                .sorted()
                .toList();
    }

    /** What the same comparison has to tell the other way round. */
    private static List<String> mirrored(List<Changed> changes) {
        return told(changes.stream()
                .map(it -> new Changed(
                        mirrored(it.change()),
                        it.technical(),
                        new TreeSet<>(),
                        new TreeSet<>(),
                        new TreeSet<>(),
                        false))
                .toList());
    }

    private static Change mirrored(Change change) {
        return change.accept(new Change.Visitor<Change>() {
            @Override
            public Change added(Change.Added it) {
                return new Change.Removed(it.thing(), turned(it.values()));
            }

            @Override
            public Change removed(Change.Removed it) {
                return new Change.Added(it.thing(), turned(it.values()));
            }

            @Override
            public Change renamed(Change.Renamed it) {
                return new Change.Renamed(
                        new Change.Thing(it.thing().kind(), it.was(), it.thing().name()),
                        it.thing().id(),
                        it.by());
            }

            @Override
            public Change moved(Change.Moved it) {
                return new Change.Moved(it.thing(), turned(it.values()));
            }

            @Override
            public Change relabelled(Change.Relabelled it) {
                Change.Thing thing = it.value().way().endsWith("/ name")
                        ? new Change.Thing(
                                it.thing().kind(), it.thing().id(), it.value().before())
                        : it.thing();
                return new Change.Relabelled(thing, turned(it.value()));
            }

            @Override
            public Change atPickup(Change.AtPickup it) {
                return new Change.AtPickup(it.thing(), turned(it.value()));
            }

            @Override
            public Change fact(Change.ValueChanged it) {
                return new Change.ValueChanged(it.of(), turned(it.value()));
            }

            @Override
            public Change page(Change.PageAdded it) {
                return new Change.PageRemoved(it.page(), it.title());
            }

            @Override
            public Change page(Change.PageRemoved it) {
                return new Change.PageAdded(it.page(), it.title());
            }

            @Override
            public Change step(Change.StepAdded it) {
                return new Change.StepRemoved(it.step(), it.text());
            }

            @Override
            public Change step(Change.StepRemoved it) {
                return new Change.StepAdded(it.step(), it.text());
            }

            @Override
            public Change steps(Change.StepsReordered it) {
                return new Change.StepsReordered(it.list(), it.after(), it.before());
            }

            @Override
            public Change parts(Change.PartsReordered it) {
                return new Change.PartsReordered(it.list(), it.after(), it.before());
            }

            @Override
            public Change hazard(Change.HazardAdded it) {
                return new Change.HazardRemoved(it.hazard(), it.text());
            }

            @Override
            public Change hazard(Change.HazardRemoved it) {
                return new Change.HazardAdded(it.hazard(), it.text());
            }

            @Override
            public Change number(Change.NumberChanged it) {
                return new Change.NumberChanged(it.question(), it.after(), it.before(), it.because());
            }

            @Override
            public Change text(Change.TextChanged it) {
                return new Change.TextChanged(it.part(), it.after(), it.before());
            }
        });
    }

    private static List<Change.Value> turned(List<Change.Value> values) {
        return values.stream().map(ChangesTest::turned).toList();
    }

    private static Change.Value turned(Change.Value value) {
        return new Change.Value(value.way(), value.after(), value.before());
    }

    /** Facts with what the changes tell of them. */
    private static Map<String, String> applied(SortedMap<String, List<String>> facts, List<Changed> changes) {
        Map<String, String> applied = joined(facts);
        for (Changed changed : changes) {
            if (changed.change() instanceof Change.Renamed) {
                continue;
            }
            for (JsonObject value : values(ChangeJson.of("", "", "", Consequences.unasked(List.of(changed))))) {
                String after = value.get("after").getAsString();
                if (after.isEmpty()) {
                    applied.remove(value.get("way").getAsString());
                } else {
                    applied.put(value.get("way").getAsString(), after);
                }
            }
        }
        return applied;
    }

    /** All values in what programs are told. */
    private static List<JsonObject> values(JsonElement json) {
        List<JsonObject> all = new ArrayList<>();
        if (json instanceof JsonObject object) {
            if (object.has("way")) {
                all.add(object);
            }
            object.entrySet().forEach(field -> all.addAll(values(field.getValue())));
        } else if (json instanceof JsonArray array) {
            array.forEach(each -> all.addAll(values(each)));
        }
        return all;
    }

    private static Map<String, String> joined(SortedMap<String, List<String>> facts) {
        Map<String, String> joined = new TreeMap<>();
        facts.forEach((way, values) -> joined.put(way, String.join(", ", values)));
        joined.values().removeIf(String::isEmpty);
        return joined;
    }

    /** What is told after an edit of one file. */
    private List<Changed> changes(String coach, String path, UnaryOperator<String> edit) throws IOException {
        Path root = DemoFleet.copy(Path.of(""), folder);
        Now before = States.now(root, coach);
        Path file = root.resolve(path);
        String text = Files.readString(file);
        String after = edit.apply(text);
        assertThat(after).isNotEqualTo(text);
        Files.writeString(file, after);
        return Comparison.of(before.snapshot(), States.now(root, coach).snapshot());
    }

    /** Those of an emergency stand below no heading. */
    @Test
    void stepsInAnotherOrderAreOnTheirPage() throws Exception {
        String pin = "1. Pull out the pin. {#pull-out-pin}\n";
        List<Changed> changes = changes(
                "phalarope",
                "units/shared/procedures/use-fire-extinguisher.md",
                text -> text.replaceFirst("(?m)^(\\Q" + pin + "\\E)(.*\\n)", "$2$1"));

        assertThat(changes).singleElement().satisfies(changed -> {
            assertThat(changed.change()).isInstanceOf(Change.StepsReordered.class);
            assertThat(changed.pages()).containsExactly("do/use-fire-extinguisher");
        });
    }

    /** The lists of a stage follow its text. */
    @Test
    void pointersInAnotherOrderAreOnTheirPage() throws Exception {
        List<Changed> changes = changes(
                "turnstone",
                "units/shared/stages/emergency.md",
                text -> text.replaceFirst(
                        "(?s)(## What if a storm or flood comes.*?)(## What if there is thunder.*?)(?=## )", "$2$1"));

        assertThat(changes)
                .filteredOn(it -> it.change() instanceof Change.PartsReordered)
                .allMatch(it -> !it.technical() && it.said().isEmpty())
                .flatExtracting(Changed::pages)
                .contains("home", "procedures");
    }

    /** A thing under another id is the same: by what it was called before, and by what it is for. */
    @Test
    void aNewIdIsNoNewThing() throws Exception {
        Set<String> kinds = new HashSet<>();
        List<Changed> changes = changes(
                "whimbrel",
                "units/whimbrel/unit.yaml",
                text -> text.replace("id: gray-dump-valve\n", "id: gray-valve\n"));
        changes.forEach(changed -> kinds.add(changed.change().getClass().getSimpleName()));

        assertThat(changes.stream().map(Changed::change))
                .contains(new Change.Renamed(
                        new Change.Thing("switch", "gray-valve", "Gray tank valve"),
                        "gray-dump-valve",
                        Change.By.ROLE));
        assertThat(kinds).doesNotContain("Added", "Removed");
    }
}
