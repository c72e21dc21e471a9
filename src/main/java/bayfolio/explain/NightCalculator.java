package bayfolio.explain;

import bayfolio.catalog.Catalog;
import bayfolio.measure.Amount;
import bayfolio.measure.Celsius;
import bayfolio.measure.Rounding;
import bayfolio.measure.Seconds;
import bayfolio.measure.Symbol;
import bayfolio.model.Coach;
import bayfolio.reckon.Question;
import bayfolio.reckon.battery.ANight;
import bayfolio.reckon.battery.Discharge;
import bayfolio.reckon.battery.HouseBank;
import bayfolio.reckon.battery.HouseLoad;
import bayfolio.reckon.battery.Night;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A night on the house batteries, with the hours that the reader gives each load. */
final class NightCalculator implements Calculator {
    private static final double HOUR = 3600;
    private static final String TEMPERATURE = "temperature";

    private static final List<String> MESSAGES = List.of(
            "result.lasts",
            "result.ends",
            "result.nothing",
            "result.row.taken",
            "result.row.left",
            "result.row.limit",
            "result.never");

    private final Night night;
    private final List<HouseLoad> offered;
    private final Voice voice;

    private NightCalculator(Night night, List<HouseLoad> offered, Voice voice) {
        this.night = night;
        this.offered = offered;
        this.voice = voice;
    }

    /** Nothing where a night cannot be worked out. */
    static Optional<Calculator> of(Coach coach, Catalog words) {
        Voice voice = new Voice(words, Question.A_NIGHT, coach.unit().region());
        return Night.of(coach).map(night -> new NightCalculator(night, offered(coach, night), voice));
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
        return fields(Begin.USUAL);
    }

    @Override
    public List<Field> fields(Begin begin) {
        boolean frost = begin == Begin.FROST;
        List<Field> fields = new ArrayList<>();
        fields.add(new Field(
                TEMPERATURE,
                voice.say("field.temperature"),
                new Kind.Choice(
                        ANight.TEMPERATURES.stream().map(this::named).toList(),
                        frost ? ANight.TEMPERATURES.indexOf(ANight.FREEZING) : 0)));
        for (HouseLoad load : offered) {
            fields.add(new Field(
                    load.load().id(),
                    load.heats()
                            ? voice.say(
                                    "field.hours-frost",
                                    "name",
                                    load.name(),
                                    "hours",
                                    voice.words().digits(hours(load.frosty())))
                            : voice.say("field.hours", "name", load.name()),
                    new Kind.Number(Double.parseDouble(hours(frost ? load.frosty() : load.hours())), 0, 24, 0.5)));
        }
        return List.copyOf(fields);
    }

    private String named(Celsius temperature) {
        return voice.amount(temperature.both(voice.first()));
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
        figures.put("over", bank.ratedOver().value().value() / HOUR);
        figures.put("exponent", bank.exponent().value());
        figures.put("usable", bank.usable().value().value());
        figures.put("night", Night.LENGTH.value() / HOUR);
        figures.put("idle", night.inverter().idles().value());
        figures.put(
                "holds",
                ANight.TEMPERATURES.stream()
                        .map(temperature -> bank.kind().holds(temperature).value())
                        .toList());
        figures.put("loads", offered.stream().map(NightCalculator::load).toList());
        figures.put("words", voice.scripted(MESSAGES, Symbol.PERCENT, Symbol.AMPERE_HOUR, Symbol.HOUR));
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

    @Override
    public Result result(Chosen choice) {
        List<HouseLoad> running = offered.stream()
                .map(load -> load.running(new Seconds(choice.number(load.load().id()) * HOUR)))
                .toList();
        Discharge discharge = new Night(night.bank(), night.inverter(), running)
                .at(ANight.TEMPERATURES.get(choice.place(TEMPERATURE)));
        if (discharge.runs().isEmpty()) {
            return new Result(voice.say("result.nothing"), List.of());
        }
        Amount left = Rounding.DOWN.print(discharge.left());
        Optional<Amount> until = discharge.until(night.bank().usable().value()).map(Rounding.DOWN::hours);
        return new Result(
                voice.say(
                        until.isPresent() ? "result.ends" : "result.lasts",
                        "left",
                        left,
                        "limit",
                        Rounding.UP.print(night.bank().limit())),
                List.of(
                        List.of(voice.say("result.row.taken"), voice.amount(Rounding.UP.print(discharge.drawn()))),
                        List.of(voice.say("result.row.left"), voice.amount(left)),
                        List.of(
                                voice.say("result.row.limit"),
                                until.map(voice::amount).orElseGet(() -> voice.say("result.never")))));
    }
}
