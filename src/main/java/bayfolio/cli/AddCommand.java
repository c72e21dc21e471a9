package bayfolio.cli;

import bayfolio.read.Folder;
import bayfolio.source.Hidden;
import bayfolio.start.NewCoach;
import bayfolio.start.NewFleet;
import bayfolio.start.StartException;
import java.io.Console;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Begins a fleet, or a coach. */
@Command(
        name = "add",
        description = {
            "Begins a fleet, with --fleet-name, or a coach: one of a model, one like another, or, with neither, the least that there can"
                    + " be.",
            "What has to be looked up on the coach is marked; nothing of the coach gets out until that is done."
        },
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:written", "1:it could not be written", "2:the words of the call are wrong"},
        footer = {
            "",
            "Example: bayfolio add --fleet-name \"Reed Coaches\"",
            "Example: bayfolio add heron --like whimbrel --name Heron"
        })
final class AddCommand implements Callable<Integer> {
    @Parameters(paramLabel = "COACH", arity = "0..1", description = "The id of the new coach, the name of its folder.")
    private Optional<String> coach = Optional.empty();

    @Mixin
    private FleetRoot fleet = new FleetRoot();

    /** A coach is begun in one way. */
    static final class Beginning {
        @Option(names = "--model", paramLabel = "MODEL", description = "The model that it has.")
        private Optional<String> model = Optional.empty();

        @Option(names = "--like", paramLabel = "OTHER", description = "The coach that it is taken over from.")
        private Optional<String> like = Optional.empty();
    }

    @ArgGroup
    private Beginning beginning = new Beginning();

    @Option(names = "--name", description = "What the coach is called; made of its id where left out.")
    private Optional<String> name = Optional.empty();

    @Option(names = "--number", description = "The number painted on the coach.")
    private Optional<String> number = Optional.empty();

    @Option(names = "--fleet-name", description = "Begin a fleet of this name. On a terminal the rest is asked for.")
    private Optional<String> fleetName = Optional.empty();

    @Option(names = "--base-address", description = "Of a fleet: where its handbooks will be published.")
    private Optional<String> baseAddress = Optional.empty();

    @Option(names = "--country", description = "Of a fleet: where its coaches are hired out, such as us.")
    private Optional<String> country = Optional.empty();

    @Option(names = "--language", description = "Of a fleet: of its handbooks, such as en-US.")
    private Optional<String> language = Optional.empty();

    @Option(names = "--phone", description = "Of a fleet: while somebody is there.")
    private Optional<String> phone = Optional.empty();

    @Option(names = "--after-hours-phone", description = "Of a fleet: for evenings and nights.")
    private Optional<String> afterHours = Optional.empty();

    @Option(names = "--roadside-phone", description = "Of a fleet: for when the coach cannot go on.")
    private Optional<String> roadside = Optional.empty();

    @Option(names = "--address", description = "Of a fleet: the depot.")
    private Optional<String> address = Optional.empty();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        if (coach.isPresent() == fleetName.isPresent()) {
            throw new ParameterException(
                    spec.commandLine(), "Name the coach to be added, or the fleet with --fleet-name; one of them.");
        }
        Folder folder = fleet.folder();
        PrintWriter out = spec.commandLine().getOut();
        try {
            if (fleetName.isPresent()) {
                NewFleet.of(folder, fleet()).write(folder);
                out.println("Written: units/fleet.yaml. Next, a coach: bayfolio add heron");
                return 0;
            }
            NewCoach added = added(folder, coach.orElseThrow());
            added.write(folder);
            out.println("Written: units/" + added.id() + "/unit.yaml.");
            out.println(
                    added.toConfirm() + " facts have to be looked up on the coach, and stand there under `to-confirm`. "
                            + "A page and a sheet for that: bayfolio survey " + added.id());
            return 0;
        } catch (StartException e) {
            spec.commandLine().getErr().println(Hidden.visible(String.valueOf(e.getMessage())));
            return 1;
        }
    }

    private NewCoach added(Folder folder, String id) throws Exception {
        NewCoach.Named named = new NewCoach.Named(id, name.orElseGet(() -> capital(id)), number);
        if (beginning.model.isPresent()) {
            return NewCoach.ofModel(folder, named, beginning.model.get());
        }
        return beginning.like.isPresent()
                ? NewCoach.like(folder, named, beginning.like.get())
                : NewCoach.first(folder, named);
    }

    private static String capital(String id) {
        String words = id.replace('-', ' ');
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** What no option says is asked for on a terminal. */
    private Map<NewFleet.Fact, String> fleet() {
        Map<NewFleet.Fact, Optional<String>> given = new EnumMap<>(NewFleet.Fact.class);
        given.put(NewFleet.Fact.NAME, fleetName);
        given.put(NewFleet.Fact.BASE_ADDRESS, baseAddress);
        given.put(NewFleet.Fact.COUNTRY, country);
        given.put(NewFleet.Fact.LANGUAGE, language);
        given.put(NewFleet.Fact.PHONE, phone);
        given.put(NewFleet.Fact.AFTER_HOURS_PHONE, afterHours);
        given.put(NewFleet.Fact.ROADSIDE_PHONE, roadside);
        given.put(NewFleet.Fact.ADDRESS, address);
        Map<NewFleet.Fact, String> facts = new EnumMap<>(NewFleet.Fact.class);
        List<String> lacking = new ArrayList<>();
        Console console = System.console();
        given.forEach((fact, value) -> {
            Optional<String> said = value.or(() -> asked(console, fact.question()));
            said.ifPresentOrElse(it -> facts.put(fact, it), () -> lacking.add("--" + fact.option()));
        });
        if (!lacking.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), "A fleet needs " + String.join(", ", lacking) + " as well.");
        }
        return facts;
    }

    private static Optional<String> asked(@Nullable Console console, String question) {
        if (console == null) {
            return Optional.empty();
        }
        String said = console.readLine("%s: ", question);
        return said == null || said.isBlank() ? Optional.empty() : Optional.of(said.strip());
    }
}
