package bayfolio.ask;

import java.util.List;

/** One word of a question: what may be asked for. */
interface Term {
    /**
     * What a coach has of it; nothing where it has none.
     *
     * @throws bayfolio.fact.UnreadException when what that hangs on could not be read
     */
    List<Answer> on(AskedCoach coach);
}
