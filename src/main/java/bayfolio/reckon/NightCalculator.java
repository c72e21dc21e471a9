package bayfolio.reckon;

import bayfolio.measure.Celsius;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Rounding;
import bayfolio.measure.Seconds;
import bayfolio.model.Coach;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A night on the house batteries, with the hours that the reader gives each load. */
public final class NightCalculator implements Calculator {
    private static final double HOUR = 3600;
    private static final String TEMPERATURE = "temperature";

    // The script fills the same sentences; a # stands for a figure.
    private static final String LASTS = "The charge lasts. # is left; the limit is #.";
    private static final String ENDS = "Too much: # is left, and the limit is #.";
    private static final String NOTHING = "Nothing runs.";
    private static final String TAKEN = "Taken from the batteries";
    private static final String LEFT = "Left of a full charge";
    private static final String LIMIT = "Limit after, all on at once";
    private static final String NEVER = "not reached";

    private final Night night;
    private final List<HouseLoad> offered;
    private final MeasureSystem first;

    private NightCalculator(Night night, List<HouseLoad> offered, MeasureSystem first) {
        this.night = night;
        this.offered = offered;
        this.first = first;
    }

    /** Nothing where a night cannot be worked out. */
    public static Optional<Calculator> of(Coach coach) {
        return Night.of(coach)
                .map(night -> new NightCalculator(
                        night, offered(coach, night), coach.unit().region().first()));
    }

    /** What runs in a usual night, then what else the inverter could feed. */
    private static List<HouseLoad> offered(Coach coach, Night night) {
        return Stream.concat(
                        night.loads().stream(),
                        HouseLoad.all(coach.unit(), night.bank()).stream()
                                .filter(HouseLoad::inverted)
                                .filter(load -> load.hours().value() <= 0))
                .toList();
    }

    @Override
    public Question question() {
        return Question.A_NIGHT;
    }

    @Override
    public List<Field> fields() {
        List<Field> fields = new ArrayList<>();
        fields.add(new Field(
                TEMPERATURE,
                "Batteries at",
                new Kind.Choice(ANight.TEMPERATURES.stream().map(this::named).toList(), 0)));
        for (HouseLoad load : offered) {
            fields.add(new Field(
                    load.load().id(),
                    load.name() + ", hours" + (load.heats() ? " (in frost " + hours(load.frosty()) + ")" : ""),
                    new Kind.Number(Double.parseDouble(hours(load.hours())), 0, 24, 0.5)));
        }
        return List.copyOf(fields);
    }

    private String named(Celsius temperature) {
        return ANight.temperature(temperature, first);
    }

    /** To the hundredth, up, as somebody would type it: 0.17 for ten minutes. */
    private static String hours(Seconds time) {
        return Rounding.UP.print(time.value() / HOUR, 2);
    }

    @Override
    public Map<String, Object> figures() {
        HouseBank bank = night.bank();
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("capacity", bank.capacity().value());
        figures.put("over", bank.ratedOver().value() / HOUR);
        figures.put("exponent", bank.exponent());
        figures.put("usable", bank.usable().value());
        figures.put("night", Night.LENGTH.value() / HOUR);
        figures.put("idle", night.inverter().idles().value());
        figures.put(
                "holds",
                ANight.TEMPERATURES.stream()
                        .map(temperature -> bank.kind().holds(temperature).value())
                        .toList());
        figures.put("loads", offered.stream().map(NightCalculator::load).toList());
        figures.put("words", words());
        return figures;
    }

    private static Map<String, Object> load(HouseLoad load) {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("id", load.load().id());
        figures.put("amps", load.current().value());
        figures.put("inverted", load.inverted());
        figures.put("alwaysOn", load.alwaysOn());
        return figures;
    }

    private static Map<String, Object> words() {
        Map<String, Object> words = new LinkedHashMap<>();
        words.put("lasts", LASTS);
        words.put("ends", ENDS);
        words.put("nothing", NOTHING);
        words.put("taken", TAKEN);
        words.put("left", LEFT);
        words.put("limit", LIMIT);
        words.put("never", NEVER);
        return words;
    }

    @Override
    public Result result(Chosen choice) {
        List<HouseLoad> running = offered.stream()
                .map(load -> load.running(new Seconds(choice.number(load.load().id()) * HOUR)))
                .toList();
        Discharge discharge = new Night(night.bank(), night.inverter(), running)
                .at(ANight.TEMPERATURES.get(choice.place(TEMPERATURE)));
        if (discharge.runs().isEmpty()) {
            return new Result(NOTHING, List.of());
        }
        String left = Rounding.DOWN.print(discharge.left());
        String limit = Rounding.UP.print(night.bank().limit());
        Optional<String> until = discharge.until(night.bank().usable()).map(Rounding.DOWN::hours);
        return new Result(
                fill(until.isPresent() ? ENDS : LASTS, left, limit),
                List.of(
                        List.of(TAKEN, Rounding.UP.print(discharge.drawn())),
                        List.of(LEFT, left),
                        List.of(LIMIT, until.orElse(NEVER))));
    }

    private static String fill(String sentence, String first, String second) {
        int one = sentence.indexOf('#');
        int two = sentence.indexOf('#', one + 1);
        return sentence.substring(0, one)
                + first
                + sentence.substring(one + 1, two)
                + second
                + sentence.substring(two + 1);
    }
}
