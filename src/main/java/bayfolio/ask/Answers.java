package bayfolio.ask;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a fleet answers to a question.
 *
 * @param question as it was asked
 * @param asked ids of the coaches that it was asked about, and that could be read
 * @param rows one for each thing or fact, in the order of the coaches and then of the question
 * @param unread of each coach of which not all is known, by its id, why; what it has may not be among the rows
 */
public record Answers(String question, List<String> asked, List<Answer> rows, Map<String, String> unread) {
    public Answers {
        asked = List.copyOf(asked);
        rows = List.copyOf(rows);
        unread = new TreeMap<>(unread);
    }

    /** Ids of the coaches for which it holds. */
    public List<String> coaches() {
        return rows.stream().map(Answer::coach).distinct().toList();
    }
}
