package bayfolio.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.catalog.Catalog;
import bayfolio.explain.Calculator;
import bayfolio.explain.Explained;
import bayfolio.explain.Explanations;
import bayfolio.model.Coach;
import bayfolio.model.Fleet;
import bayfolio.read.FleetReader;
import bayfolio.read.Overlay;
import bayfolio.render.theme.Theme;
import bayfolio.render.theme.UnknownThemeException;
import bayfolio.source.SourceFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** A small coach with what a test says of it. */
public final class TestCoach {
    private static final Path TINY = Path.of("src/test/resources/bayfolio/rules/tiny");

    private TestCoach() {}

    /**
     * @param yaml laid over the description of the tiny coach
     */
    public static Coach of(String yaml) {
        return read(whole(), Optional.of(new SourceFile("test", yaml)));
    }

    /**
     * The tiny coach without what it says under a key.
     *
     * @param key of the description itself
     */
    public static Coach without(String key) {
        String less = whole().text().replaceFirst("(?m)^" + key + ":\\n(?:  .*\\n)+", "");
        assertThat(less).isNotEqualTo(whole().text());
        return read(new SourceFile(whole().path(), less), Optional.empty());
    }

    /** One of the demo fleet. */
    public static Coach demo(String id) {
        Fleet fleet = FleetReader.read(Folders.at(Path.of(""))).fleet();
        return fleet.units().stream()
                .filter(unit -> unit.id().equals(id))
                .map(unit -> new Coach(fleet, unit))
                .findFirst()
                .orElseThrow();
    }

    private static SourceFile whole() {
        return file("units/tiny/unit.yaml", TINY.resolve("unit.yaml"));
    }

    private static Coach read(SourceFile whole, Optional<SourceFile> snippet) {
        Overlay overlay = new Overlay(Folders.at(Path.of("")));
        overlay.fleet(file("units/fleet.yaml", TINY.resolve("fleet.yaml")), Optional.empty());
        overlay.coach(whole, snippet);
        FleetReader.Reading reading = overlay.read();
        assertThat(reading.findings()).isEmpty();
        return new Coach(reading.fleet(), reading.fleet().units().get(0));
    }

    private static SourceFile file(String name, Path path) {
        try {
            return new SourceFile(name, Files.readString(path));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The words of the built-in theme. */
    public static final Catalog WORDS = words();

    private static Catalog words() {
        try {
            return Theme.load(Path.of(""), Theme.BUILT_IN).catalogs().of("en-US");
        } catch (IOException | UnknownThemeException e) {
            throw new IllegalStateException(e);
        }
    }

    /** What comes of a question, in those words. */
    public static Explained told(Question question, Coach coach) {
        return Explanations.of(question, coach, WORDS);
    }

    /** All that a reader sees of it. */
    public static String said(Explained explained) {
        return explained instanceof Explained.Explanation it
                ? String.join(
                        "\n",
                        it.answer(),
                        it.grids().toString(),
                        it.inputs().stream()
                                .map(input -> input.name() + ": " + input.value())
                                .toList()
                                .toString(),
                        it.steps().toString(),
                        it.assumed().toString())
                : explained.toString();
    }

    public static Optional<Calculator> calculator(Question question, Coach coach) {
        return Explanations.calculators(coach, WORDS).stream()
                .filter(each -> each.question() == question)
                .findFirst();
    }
}
