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
     * @param plot what of it is drawn
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
            Optional<Plot> plot)
            implements Explained {
        public Explanation {
            grids = List.copyOf(grids);
            inputs = List.copyOf(inputs);
            steps = List.copyOf(steps);
            assumed = List.copyOf(assumed);
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
