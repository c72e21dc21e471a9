package bayfolio.procedure;

import bayfolio.Folders;
import bayfolio.catalog.Catalog;
import bayfolio.document.PageKind;
import bayfolio.fact.Facts;
import bayfolio.finding.Finding;
import bayfolio.model.Coach;
import bayfolio.model.Condition;
import bayfolio.model.Fleet;
import bayfolio.model.Whose;
import bayfolio.read.FleetReader;
import bayfolio.reckon.TestCoach;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** The demo fleet, and scripts for it that a test writes. */
public final class Demo {
    private static final FleetReader.Reading READING = FleetReader.read(Folders.at(Path.of(".")));
    /** The words of the program, with titles of pages and stages that nothing else says. */
    public static final Catalog SCREEN = screen();

    private static Catalog screen() {
        Map<String, Located<String>> words = new TreeMap<>(TestCoach.WORDS.patterns());
        Stream.concat(
                        Stream.concat(PageKind.FOR_EVERYBODY.stream(), PageKind.FOR_STAFF.stream())
                                .map(id -> "page." + id),
                        Stream.of(Stage.values()).map(stage -> "stage." + stage.word()))
                .forEach(key ->
                        words.put(key, new Located<>("words of " + key, Place.whole(new SourceFile("words", "")))));
        return new Catalog("en-US", words);
    }

    private Demo() {}

    public static Fleet fleet() {
        return READING.fleet();
    }

    static Library library() {
        return READING.library();
    }

    public static Coach coach(String id) {
        return new Coach(
                fleet(),
                fleet().units().stream()
                        .filter(it -> it.id().equals(id))
                        .findFirst()
                        .orElseThrow());
    }

    static References references(Coach coach, boolean staff) {
        return new References(coach, library(), SCREEN, staff, true);
    }

    /** A script whose body begins on line 8 of its file. */
    static Script script(String body, Consumer<Finding> findings) {
        return script("by-test", Who.RENTER, Stage.LIVING, new Condition.Always<>(), List.of(), body, findings);
    }

    public static Script script(
            String id,
            Who who,
            Stage stage,
            Condition<String> when,
            List<String> formerly,
            String body,
            Consumer<Finding> findings) {
        return script(id, who, stage, when, formerly, body, Whose.ALL, findings);
    }

    /**
     * @param whose of which it is the own, so that ids are names in it
     */
    static Script script(
            String id,
            Who who,
            Stage stage,
            Condition<String> when,
            List<String> formerly,
            String body,
            Whose whose,
            Consumer<Finding> findings) {
        SourceFile file = new SourceFile("units/shared/procedures/" + id + ".md", "---\n".repeat(7) + body);
        Place top = Place.of(file, 2, 1, 3);
        Facts facts = Facts.draft(Head.SHAPE, top)
                .put(Head.ID, new Located<>(id, top))
                .put(Head.TITLE, new Located<>("Written by a test", top))
                .put(Head.STAGE, new Located<>(stage, top))
                .put(Head.WHO, new Located<>(who, top))
                .put(Head.WHEN, new Located<>("every coach", top))
                .put(
                        Head.FORMERLY,
                        new Located<>(
                                formerly.stream()
                                        .map(it -> new Located<>(it, top))
                                        .toList(),
                                top))
                .done();
        Head head = new Head(facts);
        return Script.of(Form.PROCEDURE, head, when, file, body, 8, whose, findings);
    }

    public static Procedure fill(String coachId, String body, Consumer<Finding> findings) {
        Coach coach = coach(coachId);
        return ProcedureFiller.fill(script(body, findings), coach, references(coach, false), findings);
    }
}
