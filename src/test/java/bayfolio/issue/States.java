package bayfolio.issue;

import bayfolio.Folders;
import bayfolio.catalog.Catalogs;
import bayfolio.check.Check;
import bayfolio.check.CheckedCoach;
import bayfolio.model.Fleet;
import bayfolio.read.FleetReader;
import bayfolio.read.Folder;
import bayfolio.render.theme.Theme;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;

/** States of coaches as tests compare them. */
final class States {
    private static final Catalogs WORDS = words();

    /** Of each root one, which keeps what did not change. */
    private static final Map<Path, Folder> FOLDERS = new ConcurrentHashMap<>();

    private States() {}

    private static Catalogs words() {
        try {
            return Theme.load(Path.of(""), Theme.BUILT_IN).catalogs();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    /** A coach of a fleet folder; only that one is looked at. */
    static Now now(Path root, String coach) {
        return ifRead(root, coach).orElseThrow();
    }

    /** The same; empty where its file says nothing that can be read. */
    static Optional<Now> ifRead(Path root, String coach) {
        FleetReader.Reading reading = FleetReader.read(FOLDERS.computeIfAbsent(root, Folders::at));
        return reading.fleet().units().stream()
                .filter(it -> it.id().equals(coach))
                .findFirst()
                .map(unit -> {
                    // What is found between coaches is no part of a state.
                    Fleet alone = new Fleet(
                            reading.fleet().facts(),
                            List.of(unit),
                            reading.fleet().shared());
                    List<CheckedCoach> filled = new CopyOnWriteArrayList<>();
                    Check check =
                            Check.of(alone, reading.library(), WORDS, reading.findings(), List.of(unit), filled::add);
                    return Now.of(check, filled.get(0));
                });
    }
}
