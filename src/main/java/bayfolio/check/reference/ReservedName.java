package bayfolio.check.reference;

import bayfolio.check.FleetRule;
import bayfolio.finding.Finding;
import bayfolio.model.Film;
import bayfolio.model.Fleet;
import bayfolio.model.Photo;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.procedure.Head;
import bayfolio.procedure.Library;
import bayfolio.procedure.Script;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Flags a name that becomes that of a file or folder and that is taken: by a device of Windows, whatever its ending, or
 * by the folder of style and script that all coaches share.
 *
 * @see <a href="https://learn.microsoft.com/en-us/windows/win32/fileio/naming-a-file">Naming files, paths, and
 *     namespaces</a>
 */
public final class ReservedName implements FleetRule {
    private static final Pattern DEVICE = Pattern.compile("(?:con|prn|aux|nul|com[0-9]|lpt[0-9])(?:\\..*)?");
    private static final String SHARED = "assets";

    /** In capitals, which many systems do not tell from small letters. */
    private static final String SHORT_ADDRESSES = "l";

    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        return Stream.of(
                        fleet.units().stream().flatMap(ReservedName::ofACoach),
                        fleet.units().stream().flatMap(ReservedName::alike),
                        alike(library.scripts().stream()
                                .map(Script::file)
                                .map(file -> new Located<>(file.path(), Place.whole(file)))),
                        library.scripts().stream().flatMap(script -> {
                            SourceFile file = script.file();
                            String name = file.path().substring(file.path().lastIndexOf('/') + 1);
                            return Stream.concat(
                                    script.head().facts().located(Head.ID).stream()
                                            .flatMap(ReservedName::device),
                                    device(new Located<>(name, Place.whole(file))));
                        }))
                .flatMap(findings -> findings);
    }

    private static Stream<Finding> alike(Unit unit) {
        return Stream.of(
                        unit.photos().stream().flatMap(it -> it.facts().located(Photo.FILE).stream()),
                        unit.films().stream().flatMap(it -> it.facts().located(Film.FILE).stream()))
                .flatMap(ReservedName::alike);
    }

    /** Names of files of one folder, or their paths: who keeps the fleet on a system that takes two for one loses one. */
    private static Stream<Finding> alike(Stream<Located<String>> names) {
        Map<String, Located<String>> first = new HashMap<>();
        List<Finding> findings = new ArrayList<>();
        names.forEach(name -> {
            Located<String> other = first.putIfAbsent(name.value().toLowerCase(Locale.ROOT), name);
            if (other != null && !other.value().equals(name.value())) {
                findings.add(told(
                        name, "differs from `" + other.value() + "` by capitals alone, which many systems do not see"));
            }
        });
        return findings.stream();
    }

    private static Stream<Finding> ofACoach(Unit unit) {
        return Stream.concat(
                unit.facts().located(Unit.ID).stream()
                        .flatMap(id -> id.value().equals(SHARED)
                                ? Stream.of(told(id, "is the folder of the site that all coaches share"))
                                : id.value().equals(SHORT_ADDRESSES)
                                        ? Stream.of(told(id, "is the folder of the site that labels lead to"))
                                        : device(id)),
                Stream.concat(
                                unit.photos().stream()
                                        .flatMap(photo ->
                                                files(photo, photo.facts().located(Photo.FILE))),
                                unit.films().stream()
                                        .flatMap(
                                                film -> files(film, film.facts().located(Film.FILE))))
                        .flatMap(ReservedName::device));
    }

    /** The names of its files: as it was given to us, and as it is given out. */
    private static Stream<Located<String>> files(Thing thing, Optional<Located<String>> file) {
        return Stream.concat(Stream.of(new Located<>(thing.id(), thing.at())), file.stream());
    }

    private static Stream<Finding> device(Located<String> name) {
        return DEVICE.matcher(name.value().toLowerCase(Locale.ROOT)).matches()
                ? Stream.of(told(name, "is a device on Windows, and no file there can be called so"))
                : Stream.empty();
    }

    private static Finding told(Located<String> name, String why) {
        return Finding.error("reserved-name", name.at(), "`" + name.value() + "` " + why)
                .mend("Give it another name.");
    }
}
