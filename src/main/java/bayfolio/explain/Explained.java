package bayfolio.explain;

import bayfolio.reckon.Question;
import java.util.List;
import java.util.Optional;

/** A question in words: with its answer, or with what is missing for one. */
public sealed interface Explained {
    Question question();

    /** In a renter's words. */
    String asked();

    /**
     * An answer with its working. Figures in it are rounded to the safe side.
     *
     * @param answer a short sentence or two
     * @param grids the results in full
     * @param inputs what it began with
     * @param formula in words and symbols
     * @param steps the working, with this coach's figures
     * @param assumed what was taken for granted
     * @param source where formula and limits come from
     * @param howWrong how far it may be off, and to which side
     * @param bars the results that count first, to be drawn
     * @param course how they come about, to be drawn
     */
    record Explanation(
            Question question,
            String asked,
            String answer,
            List<Grid> grids,
            List<Input> inputs,
            String formula,
            List<String> steps,
            List<String> assumed,
            String source,
            String howWrong,
            List<Bar> bars,
            Optional<Course> course)
            implements Explained {
        /** Of what does not go on in time. */
        public Explanation(
                Question question,
                String asked,
                String answer,
                List<Grid> grids,
                List<Input> inputs,
                String formula,
                List<String> steps,
                List<String> assumed,
                String source,
                String howWrong,
                List<Bar> bars) {
            this(
                    question,
                    asked,
                    answer,
                    grids,
                    inputs,
                    formula,
                    steps,
                    assumed,
                    source,
                    howWrong,
                    bars,
                    Optional.empty());
        }

        public Explanation {
            grids = List.copyOf(grids);
            inputs = List.copyOf(inputs);
            steps = List.copyOf(steps);
            assumed = List.copyOf(assumed);
            bars = List.copyOf(bars);
        }
    }

    /**
     * No answer.
     *
     * @param facts which facts of the description would make one possible: {@code amp-hours of the house bank}; empty where
     *     the coach has nothing that the question is about
     */
    record Lacking(Question question, String asked, List<String> facts) implements Explained {
        public Lacking {
            facts = List.copyOf(facts);
        }
    }
}
