package bayfolio.survey;

import bayfolio.fact.Aside;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.Photo;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.read.Edit;
import bayfolio.read.LineDifference;
import bayfolio.read.Rewrite;
import bayfolio.read.RewriteException;
import bayfolio.read.Swap;
import bayfolio.read.Value;
import bayfolio.read.ValueReader;
import bayfolio.source.Digest;
import bayfolio.source.SourceFile;
import bayfolio.source.Steps;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What was entered at a coach, on its way into the files of the writer. Nothing is written before {@link #make}.
 *
 * <p>What was seen on a coach goes into the file of that coach, over what its model says of all of them. One that says something else by now than it did when the page was made stays as it is, and is told.
 */
public final class Take {
    /** Larger than any day's pictures from a phone. */
    public static final long MOST_BYTES = 128L << 20;

    private final Answers answers;
    private final Unit unit;
    private final Path root;
    private final Records records;
    private final boolean declare;
    private final List<Told> told = new ArrayList<>();
    private final Map<String, SourceFile> before = new TreeMap<>();
    private final Map<String, byte[]> bytes = new TreeMap<>();
    private final Map<String, String> after = new TreeMap<>();
    private final Map<Path, byte[]> photos = new LinkedHashMap<>();
    private int taken;
    private int already;

    private Take(Answers answers, Unit unit, Path root, boolean declare) {
        this.answers = answers;
        this.unit = unit;
        this.root = root;
        this.declare = declare;
        this.records = new Records(unit);
    }

    /**
     * @param file what the page of a survey gave out
     * @param root the fleet folder
     * @param declare whether its pictures are listed under {@code photos}, too
     * @throws TakeException where nothing can be taken of it
     */
    public static Take of(Path file, Fleet fleet, Path root, boolean declare) throws IOException, TakeException {
        long size = Files.size(file);
        if (size > MOST_BYTES) {
            throw new TakeException(file + ": it has " + size + " bytes; the most that is read is " + MOST_BYTES);
        }
        Answers answers;
        try {
            answers = Answers.read(new SourceFile(file.toString(), text(Files.readAllBytes(file))));
        } catch (Answers.Unreadable | CharacterCodingException e) {
            String why = e instanceof CharacterCodingException ? "it is no text" : e.getMessage();
            throw new TakeException(file + ": " + why + "; nothing was taken");
        }
        Unit unit = fleet.units().stream()
                .filter(it -> it.id().equals(answers.coach()))
                .findFirst()
                .orElseThrow(() -> new TakeException(file + ": it is of coach `" + answers.coach()
                        + "`, which this fleet does not have, or which cannot be read; nothing was taken"));
        Take take = new Take(answers, unit, root, declare);
        take.all();
        return take;
    }

    private static String text(byte[] bytes) throws CharacterCodingException {
        return StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(bytes))
                .toString();
    }

    private void all() throws IOException {
        Set<String> seen = new LinkedHashSet<>();
        for (Answers.Fact fact : answers.facts()) {
            if (seen.add(fact.path())) {
                fact(fact);
            } else {
                tell(fact.path(), "it is answered twice, and the first answer holds");
            }
        }
        for (Answers.Seen compared : answers.compared()) {
            compared(compared);
        }
        for (Answers.Picture picture : answers.pictures()) {
            picture(picture);
        }
    }

    // ---- facts

    private void fact(Answers.Fact fact) throws IOException {
        Optional<Records.Slot> found = records.slot(fact.path());
        if (found.isEmpty()) {
            tell(fact.path(), "there is no such fact of coach `" + unit.id() + "`");
            return;
        }
        Records.Slot slot = found.get();
        if (!Field.isOne(slot.key().type()) || slot.key().name().equals("id")) {
            tell(fact.path(), "`" + slot.key().name() + "` is changed by hand only");
            return;
        }
        Optional<String> is = records.written(slot);
        Value.Scalar value = ValueReader.written(slot.key(), now(fact, is));
        if (is.isPresent() && is.get().equals(value.text())) {
            already++;
            confirmed(slot);
            return;
        }
        if (!is.equals(fact.was())) {
            told.add(new Told(
                    slot.record().facts().at(slot.key()),
                    "`" + fact.path() + "` says " + quoted(is) + " by now and said " + quoted(fact.was())
                            + " when it was looked at; the answer, " + quoted(Optional.of(fact.now()))
                            + ", is not taken"));
            return;
        }
        List<Finding> faults = ValueReader.faults(slot.shape(), slot.key(), value, answers.place(fact.path()));
        if (!faults.isEmpty()) {
            faults.forEach(fault -> tell(
                    fact.path(),
                    fault.message() + fault.mend().map(it -> "; " + it).orElse("")));
            return;
        }
        Optional<SourceFile> below = records.stating(slot).filter(file -> !file.equals(records.own()));
        if (below.isPresent() && slot.at().all().stream().anyMatch(Steps.Nth.class::isInstance)) {
            tell(fact.path(), "the model says it in a list that only a person can say anew, at " + below.get());
            return;
        }
        if (edit(records.own().path(), new Edit.Put(slot.at(), value), fact.path())) {
            taken++;
            if (below.isPresent()) {
                keepModel(slot, is.orElse(""));
            }
            confirmed(slot);
        }
    }

    /** What is typed into a line ends where its letters do; a text of several lines keeps the line break at its end. */
    private static String now(Answers.Fact fact, Optional<String> is) {
        String stripped = fact.now().replace("\r\n", "\n").strip();
        return is.filter(it -> it.endsWith("\n")).isPresent() ? stripped + "\n" : stripped;
    }

    private static String quoted(Optional<String> value) {
        return value.map(it -> "`" + it.strip() + "`").orElse("nothing");
    }

    /** Whoever looked has held it against what the model says. */
    private void keepModel(Records.Slot slot, String model) throws IOException {
        edit(
                records.own().path(),
                new Edit.Put(
                        slot.at()
                                .around()
                                .key(Aside.MODEL_SAID.name())
                                .key(slot.key().name()),
                        Value.text(Digest.of(model))),
                slot.at().toString());
    }

    /** It is to be confirmed no more, nor is a record that it is the first fact of. */
    private void confirmed(Records.Slot slot) throws IOException {
        Set<String> files = new LinkedHashSet<>(
                List.of(records.own().path(), slot.record().facts().at().file().path()));
        for (Steps at = slot.at(); !at.all().isEmpty(); at = at.around()) {
            Steps marked = at.around().key(Aside.TO_CONFIRM.name()).id(at.last().toString());
            for (String path : files) {
                if (at.last() instanceof Steps.Key
                        && said(path).flatMap(it -> it.at(marked)).isPresent()) {
                    edit(path, new Edit.Remove(marked), slot.at().toString());
                }
            }
        }
    }

    private void compared(Answers.Seen compared) throws IOException {
        Optional<Records.Entry> entry = records.find(compared.path());
        Optional<Thing> thing = entry.flatMap(Records.Entry::thing);
        if (entry.isEmpty() || thing.isEmpty() && !compared.path().isEmpty()) {
            tell(compared.path(), "there is no such thing on coach `" + unit.id() + "`");
            return;
        }
        Key<LocalDate> on = thing.map(it -> it.identity().checkedOn()).orElse(Unit.CHECKED_ON);
        Key<String> by = thing.map(it -> it.identity().checkedBy()).orElse(Unit.CHECKED_BY);
        Records.Entry record = entry.get();
        if (record.facts()
                .ifRead(on)
                .filter(day -> !day.value().isBefore(compared.on()))
                .isPresent()) {
            already++;
            return;
        }
        if (looked(record, on, compared.on().toString()) && !answers.by().isEmpty()) {
            looked(record, by, answers.by());
        }
        taken++;
    }

    /** Who looked at a coach, and when, is its own. */
    private boolean looked(Records.Entry record, Key<?> key, String value) throws IOException {
        return edit(
                records.own().path(),
                new Edit.Put(record.at(key), Value.text(value)),
                record.at(key).toString());
    }

    // ---- pictures

    private void picture(Answers.Picture picture) throws IOException {
        Optional<Records.Entry> of = records.find(picture.of());
        if (of.isEmpty()) {
            tell(picture.of(), "there is no such thing on coach `" + unit.id() + "`; its picture is not taken");
            return;
        }
        Optional<byte[]> clean = Pictures.clean(picture.bytes());
        if (clean.isEmpty()) {
            tell(picture.of(), "its picture is none that can be read, or one that is too large");
            return;
        }
        // What it is called is made here, whatever the file says.
        String thing = of.get().thing().map(Thing::id).orElse(unit.id());
        String name = thing + "-" + Digest.of(List.of(clean.get()));
        Path folder = root.resolve(records.own().folder()).resolve("photos");
        Path file = folder.resolve(name + ".jpg");
        if (Files.exists(folder) && !folder.toRealPath().startsWith(root.toRealPath())) {
            tell(picture.of(), "the folder of photos is a link that leads out of the fleet folder");
            return;
        }
        if (Files.exists(file) || photos.containsKey(file)) {
            already++;
            return;
        }
        photos.put(file, clean.get());
        taken++;
        if (declare) {
            declare(of.get(), name, picture);
        }
    }

    private void declare(Records.Entry of, String id, Answers.Picture picture) throws IOException {
        String called = of.facts()
                .shape()
                .key("name")
                .flatMap(of.facts()::ifRead)
                .map(it -> it.value().toString())
                .orElse(id);
        Map<String, Value> photo = new LinkedHashMap<>();
        photo.put(Photo.SHAPE.key("id").orElseThrow().name(), Value.text(id));
        photo.put("name", Value.text(called));
        photo.put(Photo.FILE.name(), Value.text(id + ".jpg"));
        photo.put(
                Photo.ALT.name(),
                Value.text(picture.shows().isBlank() ? called : picture.shows().strip()));
        photo.put(Photo.TAKEN_ON.name(), Value.text(picture.on().toString()));
        String file = records.own().path();
        if (edit(file, new Edit.Add(Steps.of(Unit.PHOTOS.name()), new Value.Entries(photo)), picture.of())) {
            Optional<Key<?>> named = of.facts().shape().key("photos");
            if (of.thing().isPresent() && named.isPresent()) {
                edit(file, new Edit.Add(of.at(named.get()), Value.text(id)), picture.of());
            }
        }
    }

    // ---- files

    private boolean edit(String path, Edit edit, String of) throws IOException {
        Optional<SourceFile> file = raw(path);
        if (file.isEmpty()) {
            tell(of, "`" + path + "` is no file of this fleet");
            return false;
        }
        try {
            after.put(
                    path,
                    Rewrite.of(
                            new SourceFile(
                                    path, after.getOrDefault(path, file.get().text())),
                            List.of(edit)));
            return true;
        } catch (RewriteException e) {
            tell(of, String.valueOf(e.getMessage()));
            return false;
        }
    }

    private Optional<Value> said(String path) throws IOException {
        Optional<SourceFile> file = raw(path);
        try {
            return file.isEmpty()
                    ? Optional.empty()
                    : Optional.of(Rewrite.read(new SourceFile(
                            path, after.getOrDefault(path, file.get().text()))));
        } catch (RewriteException e) {
            return Optional.empty();
        }
    }

    /** As it lies on disk; what the program carries is not there. */
    private Optional<SourceFile> raw(String path) throws IOException {
        SourceFile known = before.get(path);
        Path file = root.resolve(path);
        if (known == null && path.startsWith("units/") && Files.isRegularFile(file)) {
            byte[] there = Files.readAllBytes(file);
            known = new SourceFile(path, text(there));
            if (!records.isSame(known)) {
                throw new FileSystemException(
                        path, null, "somebody has changed it meanwhile; nothing was written, try again");
            }
            before.put(path, known);
            bytes.put(path, there);
        }
        return Optional.ofNullable(known);
    }

    private void tell(String path, String what) {
        told.add(new Told(answers.place(path), "`" + path + "`: " + what));
    }

    // ---- what came of it

    public Unit unit() {
        return unit;
    }

    /** What was not taken, and why. */
    public List<Told> told() {
        return List.copyOf(told);
    }

    /** Whether the description has changed since the page was made. */
    public boolean older() {
        return !records.digest().equals(answers.edition());
    }

    public int taken() {
        return taken;
    }

    /** What is so already. */
    public int already() {
        return already;
    }

    private List<String> changed() {
        return after.keySet().stream()
                .filter(path -> !text(path).equals(after.get(path)))
                .toList();
    }

    private String text(String path) {
        SourceFile file = before.get(path);
        return file == null ? "" : file.text();
    }

    public boolean isNothing() {
        return changed().isEmpty() && photos.isEmpty();
    }

    /** All that would be written. */
    public String difference() {
        StringBuilder told = new StringBuilder();
        changed().forEach(path -> told.append(LineDifference.of(path, text(path), after.getOrDefault(path, ""))));
        photos.keySet()
                .forEach(file -> told.append("+++ ")
                        .append(root.relativize(file).toString().replace('\\', '/'))
                        .append('\n'));
        return told.toString();
    }

    /**
     * Writes it: each file whole or not at all. Pictures come first, since the description may name them.
     *
     * @throws IOException where a file says something else by now, or cannot be written
     */
    public void make() throws IOException {
        for (Map.Entry<Path, byte[]> photo : photos.entrySet()) {
            Files.createDirectories(photo.getKey().toAbsolutePath().getParent());
            Files.write(photo.getKey(), photo.getValue(), StandardOpenOption.CREATE_NEW);
        }
        for (String path : changed()) {
            new Swap(
                            root.resolve(path),
                            bytes.getOrDefault(path, new byte[0]),
                            after.getOrDefault(path, "").getBytes(StandardCharsets.UTF_8))
                    .make();
        }
    }
}
