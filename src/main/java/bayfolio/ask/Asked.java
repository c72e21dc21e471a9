package bayfolio.ask;

import bayfolio.catalog.Catalogs;
import bayfolio.fact.UnreadException;
import bayfolio.finding.Finding;
import bayfolio.model.Coach;
import bayfolio.model.Condition;
import bayfolio.model.ConditionReader;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import bayfolio.source.Lazy;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;

/**
 * A question to a fleet: {@code feature:generator and not feature:solar}. It has the words of conditions of procedures; what
 * may be asked for is a {@link Scheme}, or a dotted name.
 */
public final class Asked {
    /** As places in it call the question. */
    private static final String QUESTION = "question";

    private final String question;
    private final Condition<Term> condition;
    private final FleetReader.Reading reading;
    private final Catalogs catalogs;
    private final Handbooks handbooks;

    private Asked(
            String question,
            Condition<Term> condition,
            FleetReader.Reading reading,
            Catalogs catalogs,
            Handbooks handbooks) {
        this.question = question;
        this.condition = condition;
        this.reading = reading;
        this.catalogs = catalogs;
        this.handbooks = handbooks;
    }

    /** Nothing where one of its words is wrong, which is told at its place in the question; no word is while no coach is read. */
    public static Optional<Asked> read(
            String written, FleetReader.Reading reading, Catalogs catalogs, Consumer<Finding> findings) {
        // One line, as places in it are shown.
        String question = written.replaceAll("\\s+", " ").strip();
        Handbooks handbooks = new Handbooks(reading, catalogs);
        if (reading.fleet().units().isEmpty()) {
            // Of no coach is anything known, nor what its words could mean.
            return Optional.of(new Asked(question, new Condition.Unread<>(), reading, catalogs, handbooks));
        }
        List<Finding> told = new ArrayList<>();
        Condition<Term> condition = ConditionReader.read(
                new Located<>(
                        question,
                        Place.of(
                                new SourceFile(QUESTION, question),
                                1,
                                1,
                                question.codePointCount(0, question.length()))),
                new Terms(new Scheme.Of(reading.fleet(), reading.library(), handbooks)),
                told::add);
        told.forEach(findings);
        return told.isEmpty()
                ? Optional.of(new Asked(question, condition, reading, catalogs, handbooks))
                : Optional.empty();
    }

    /** @param coaches ids of those that are asked; all where there is none */
    public Answers of(Collection<String> coaches) {
        List<String> asked = new ArrayList<>();
        Set<Answer> rows = new LinkedHashSet<>();
        Map<String, String> unread = new TreeMap<>(unread(reading, coaches));
        for (Unit unit : reading.fleet().units()) {
            if (coaches.isEmpty() || coaches.contains(unit.id())) {
                asked.add(unit.id());
                new One(unit).answer(rows, why -> unread.put(unit.id(), why));
            }
        }
        return new Answers(question, asked, List.copyOf(rows), unread);
    }

    /** Coaches of which nothing could be read. */
    private static Map<String, String> unread(FleetReader.Reading reading, Collection<String> coaches) {
        Map<String, String> unread = new TreeMap<>();
        for (String folder : reading.folders()) {
            String path = "units/" + folder;
            if ((coaches.isEmpty() || coaches.contains(folder))
                    && reading.fleet().units().stream()
                            .noneMatch(unit -> unit.facts().at().file().folder().equals(path))) {
                unread.put(
                        folder,
                        (reading.fleet().roles().isEmpty() ? "what all coaches share" : path + "/unit.yaml")
                                + " could not be read");
            }
        }
        return unread;
    }

    /** One coach while it is asked. */
    private final class One {
        private final AskedCoach coach;
        private final Map<Term, List<Answer>> known = new HashMap<>();

        One(Unit unit) {
            Coach asked = new Coach(reading.fleet(), unit);
            this.coach = new AskedCoach(
                    asked, reading.library(), catalogs.of(asked.languages()), new Lazy<>(() -> handbooks.of(unit)));
        }

        private List<Answer> of(Term term) {
            List<Answer> answers = known.get(term);
            if (answers == null) {
                answers = term.on(coach);
                known.put(term, answers);
            }
            return answers;
        }

        void answer(Set<Answer> rows, Consumer<String> unread) {
            try {
                if (!condition.holds(term -> !of(term).isEmpty())) {
                    return;
                }
            } catch (UnreadException nobodyKnows) {
                unread.accept(String.valueOf(nobodyKnows.getMessage()));
                return;
            }
            List<Answer> own = new ArrayList<>();
            for (Term term : condition.wanted()) {
                try {
                    own.addAll(of(term));
                } catch (UnreadException nobodyKnows) {
                    unread.accept(String.valueOf(nobodyKnows.getMessage()));
                }
            }
            rows.addAll(own.isEmpty() ? List.of(itself()) : own);
        }

        /** Where only what it must not have was asked for. */
        private Answer itself() {
            Unit unit = coach.coach().unit();
            return Answer.of(
                    coach.id(),
                    "",
                    unit.facts().find(Unit.NAME).orElse(""),
                    unit.facts().at());
        }
    }
}
