package bayfolio.reckon;

import java.util.List;

/** What came of a question: a result, or what is missing for one. */
public sealed interface Reckoned {
    Question question();

    /**
     * A computed result that carries its own working. Its texts are for renters; figures in them are rounded to the safe
     * side.
     *
     * @param asked the question in a renter's words
     * @param answer a short sentence or two
     * @param grids the results in full
     * @param inputs what it began with
     * @param formula in words and symbols
     * @param steps the working, with this coach's figures
     * @param assumed what was taken for granted
     * @param source where formula and limits come from
     * @param howWrong how far it may be off, and to which side
     */
    record Reckoning(
            Question question,
            String asked,
            String answer,
            List<Grid> grids,
            List<Input> inputs,
            String formula,
            List<String> steps,
            List<String> assumed,
            String source,
            String howWrong)
            implements Reckoned {
        public Reckoning {
            grids = List.copyOf(grids);
            inputs = List.copyOf(inputs);
            steps = List.copyOf(steps);
            assumed = List.copyOf(assumed);
        }
    }

    /**
     * No result.
     *
     * @param asked the question in a renter's words
     * @param facts which facts of the description would make one possible: {@code amp-hours of the house bank}; empty where
     *     the coach has nothing that the question is about
     */
    record Lacking(Question question, String asked, List<String> facts) implements Reckoned {
        public Lacking {
            facts = List.copyOf(facts);
        }
    }
}
