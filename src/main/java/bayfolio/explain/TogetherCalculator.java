package bayfolio.explain;

import bayfolio.catalog.Catalog;
import bayfolio.measure.Rounding;
import bayfolio.measure.Symbol;
import bayfolio.model.Coach;
import bayfolio.model.Load;
import bayfolio.reckon.Question;
import bayfolio.reckon.power.Draw;
import bayfolio.reckon.power.LoadSharing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What runs together, for a supply and things that the reader chooses. */
final class TogetherCalculator implements Calculator {
    private static final String SUPPLY = "supply";

    private static final List<String> MESSAGES =
            List.of("result.dead", "result.fits", "result.off", "result.too-much", "result.row");

    private final List<LoadSharing> ways;
    private final List<Load> loads;
    private final Voice voice;
    private final SupplyNames names;

    private TogetherCalculator(List<LoadSharing> ways, Voice voice) {
        this.voice = voice;
        this.names = new SupplyNames(voice);
        this.ways = ways;
        Set<Load> all = new LinkedHashSet<>();
        ways.forEach(way -> way.switched().forEach(draw -> all.add(draw.load())));
        this.loads = List.copyOf(all);
    }

    /** Nothing where there is nothing to choose. */
    static Optional<Calculator> of(Coach coach, Catalog words) {
        Voice voice = new Voice(words, Question.RUNS_TOGETHER, coach.unit().region());
        List<LoadSharing> ways = LoadSharing.all(coach);
        return ways.isEmpty() ? Optional.empty() : Optional.of(new TogetherCalculator(ways, voice));
    }

    @Override
    public Question question() {
        return Question.RUNS_TOGETHER;
    }

    @Override
    public List<Field> fields() {
        return fields(Begin.USUAL);
    }

    /** The largest of the smaller outlets, on a page for one; of a coach without one, its own. */
    private int first(Begin begin) {
        return IntStream.range(0, ways.size())
                .filter(way ->
                        begin == Begin.SMALLER_OUTLET && ways.get(way).feed().small())
                .findFirst()
                .orElse(0);
    }

    @Override
    public List<Field> fields(Begin begin) {
        List<Field> fields = new ArrayList<>();
        fields.add(new Field(
                SUPPLY,
                voice.say("field.supply"),
                new Kind.Choice(ways.stream().map(way -> names.of(way.feed())).toList(), first(begin))));
        for (Load load : loads) {
            fields.add(new Field(
                    load.id(),
                    load.name(),
                    new Kind.Tick(load.facts().find(Load.USUAL).orElse(false))));
        }
        return List.copyOf(fields);
    }

    @Override
    public Map<String, Object> figures() {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("loads", loads.stream().map(this::load).toList());
        figures.put("ways", ways.stream().map(this::way).toList());
        figures.put("words", voice.scripted(MESSAGES, Symbol.AMPERE));
        return figures;
    }

    private Map<String, Object> load(Load load) {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("id", load.id());
        figures.put("name", load.name());
        figures.put("last", load.roles().contains(Draw.AIR_CONDITIONER));
        return figures;
    }

    /** Draws of a load are a list, one for each conductor; of a load without power there, the list is empty. */
    private Map<String, Object> way(LoadSharing way) {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put(
                "conductors",
                way.conductors().stream()
                        .map(conductor -> {
                            Map<String, Object> each = new LinkedHashMap<>();
                            each.put("name", names.of(conductor, way.feed()));
                            each.put("limit", conductor.limit().value());
                            each.put("always", conductor.always().value());
                            return each;
                        })
                        .toList());
        figures.put("draws", loads.stream().map(load -> draws(load, way)).toList());
        return figures;
    }

    private static List<Double> draws(Load load, LoadSharing way) {
        int at = IntStream.range(0, way.switched().size())
                .filter(index -> way.switched().get(index).load().equals(load))
                .findFirst()
                .orElse(-1);
        return at < 0
                ? List.of()
                : way.conductors().stream()
                        .map(conductor -> conductor.draws().get(at).value())
                        .toList();
    }

    @Override
    public Result result(Chosen choice) {
        LoadSharing way = ways.get(choice.place(SUPPLY));
        Set<String> on = loads.stream().map(Load::id).filter(choice::ticked).collect(Collectors.toSet());
        List<Load> chosen =
                loads.stream().filter(load -> on.contains(load.id())).toList();
        List<Load> dead =
                chosen.stream().filter(load -> draws(load, way).isEmpty()).toList();
        List<Draw> running = way.switched().stream()
                .filter(draw -> on.contains(draw.load().id()))
                .toList();
        List<List<String>> rows = way.conductors().stream()
                .map(conductor -> List.of(
                        names.of(conductor, way.feed()),
                        voice.say(
                                "result.row",
                                "carried",
                                Rounding.UP.print(way.carried(conductor, running)),
                                "limit",
                                Rounding.DOWN.print(conductor.limit()))))
                .toList();
        return new Result(answer(way, running, dead), rows);
    }

    private String answer(LoadSharing way, List<Draw> running, List<Load> dead) {
        if (!dead.isEmpty()) {
            return voice.say("result.dead", "name", dead.get(0).name());
        }
        if (way.fits(running)) {
            return voice.say("result.fits");
        }
        return off(way, running)
                .map(draw -> voice.say("result.off", "name", draw.load().name()))
                .orElseGet(() -> voice.say("result.too-much"));
    }

    /** The heaviest thing on what is loaded too far; air conditioners last. */
    private static Optional<Draw> off(LoadSharing way, List<Draw> running) {
        LoadSharing.Limit over = way.conductors().stream()
                .filter(conductor -> Draw.over(way.carried(conductor, running), conductor.limit()))
                .findFirst()
                .orElseThrow();
        return running.stream()
                .filter(draw -> drawn(over, draw, way) > 0)
                .min(Comparator.comparing((Draw draw) -> draw.load().roles().contains(Draw.AIR_CONDITIONER))
                        .thenComparing(draw -> -drawn(over, draw, way)));
    }

    private static double drawn(LoadSharing.Limit conductor, Draw draw, LoadSharing way) {
        return conductor.draws().get(way.switched().indexOf(draw)).value();
    }
}
