package bayfolio.publish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** What of a fleet folder is no place to publish into. */
final class FleetFolder {
    private FleetFolder() {}

    /**
     * Whatever links lead there.
     *
     * @param fleet the fleet folder
     * @throws PublishException when descriptions or themes would hold the site, or the site would hold them
     */
    static void refuse(Path fleet, Path out) throws IOException, PublishException {
        Path site = real(out);
        for (String name : List.of("units", "themes")) {
            Path own = real(fleet.resolve(name));
            if (site.startsWith(own) || own.startsWith(site)) {
                throw new PublishException("`" + out + "` is no place for the site: `" + fleet.resolve(name)
                        + "` is what it is made of; choose another folder with --out.");
            }
        }
    }

    /** Of a path that is not there, as far as it is. */
    private static Path real(Path path) throws IOException {
        Path absolute = path.toAbsolutePath();
        Path above = absolute.getParent();
        if (above == null || Files.exists(absolute)) {
            return absolute.toRealPath();
        }
        return real(above).resolve(absolute.getFileName()).normalize();
    }
}
