package bayfolio.source;

import java.util.Optional;
import java.util.Set;

/** Whose a file is, by its path below the fleet folder: {@code units/dunlin/unit.yaml}. */
public final class UnitsPath {
    /** What all coaches share. */
    private static final String SHARED = "shared";

    /** What sisters share, a folder for each model. */
    private static final String MODELS = "models";

    private static final Set<String> OF_SEVERAL = Set.of(SHARED, MODELS);

    private UnitsPath() {}

    /** Whether a folder in {@code units} is that of a coach. */
    public static boolean isCoach(String folder) {
        return !OF_SEVERAL.contains(folder);
    }

    /** The folder of the coach that a file is of; empty where it is of several or of none. */
    public static Optional<String> coach(String path) {
        String[] names = path.split("/");
        return names.length > 2 && names[0].equals("units") && isCoach(names[1])
                ? Optional.of(names[1])
                : Optional.empty();
    }

    /** The model that a file is of. */
    public static Optional<String> model(String path) {
        String[] names = path.split("/");
        return names.length > 3 && names[0].equals("units") && names[1].equals(MODELS)
                ? Optional.of(names[2])
                : Optional.empty();
    }
}
