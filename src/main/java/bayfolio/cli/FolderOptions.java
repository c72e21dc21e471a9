package bayfolio.cli;

import bayfolio.model.Fleet;
import bayfolio.read.FleetReader;
import bayfolio.render.theme.Theme;
import bayfolio.render.theme.UnknownThemeException;
import java.io.IOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** What every command takes that reads a fleet folder. */
class FolderOptions extends FleetRoot {
    @Option(
            names = "--theme",
            paramLabel = "NAME",
            defaultValue = Theme.BUILT_IN,
            description = "The theme, a folder in `themes`; ${DEFAULT-VALUE} where left out.")
    String theme = Theme.BUILT_IN;

    @Option(
            names = "--as-of",
            paramLabel = "DATE",
            description = "The day as of which dates are judged, such as 2026-04-18; "
                    + "the newest day in the fleet's own files where left out.")
    Optional<String> asOf = Optional.empty();

    Theme theme() throws IOException, UnknownThemeException {
        return Theme.load(root, theme);
    }

    /**
     * Reads the whole fleet, as of the day that was asked for.
     *
     * @param units ids of coaches that the call names; each must be one of the fleet
     */
    FleetReader.Reading read(List<String> units) throws IOException {
        FleetReader.Reading reading = FleetReader.read(folder());
        // A coach is known by its folder, even while its description is broken.
        Set<String> known = new TreeSet<>(reading.folders());
        known.addAll(reading.fleet().units().ids());
        for (String unit : units) {
            if (!known.contains(unit)) {
                throw new ParameterException(
                        spec.commandLine(),
                        "There is no coach `"
                                + unit
                                + "`; the fleet has "
                                + (known.isEmpty() ? "none" : String.join(", ", known))
                                + ".");
            }
        }
        Fleet fleet = asOf.map(day -> asOf(reading.fleet(), day(day))).orElse(reading.fleet());
        return new FleetReader.Reading(fleet, reading.library(), reading.folders(), reading.findings());
    }

    /** The day that was asked for. */
    Optional<LocalDate> given() {
        return asOf.map(this::day);
    }

    private LocalDate day(String written) {
        try {
            return LocalDate.parse(written);
        } catch (DateTimeParseException e) {
            throw new ParameterException(
                    spec.commandLine(), "`--as-of " + written + "` is no day; write it as 2026-04-18.");
        }
    }

    private Fleet asOf(Fleet fleet, LocalDate day) {
        fleet.asOf().filter(day::isBefore).ifPresent(newest -> {
            throw new ParameterException(
                    spec.commandLine(),
                    "`--as-of " + day + "` is before " + newest + ", a day that the fleet's own files speak of.");
        });
        return fleet.asOf(day);
    }
}
