package bayfolio.prose;

/** What a link leads to, by its name; the address book knows where that is. */
public sealed interface Target {
    /** A thing of this coach or of the site. */
    record OfThing(String kind, String id) implements Target {}

    record OfProcedure(String id) implements Target {}

    record OfWord(String id) implements Target {}

    record OfPage(String id) implements Target {}

    record OfStage(String id) implements Target {}

    /** What is worked out in answer to a question, where all answers stand. */
    record OfReckoning(String question) implements Target {}

    /** A number to call, by its name in the fleet file. */
    record OfPhone(String id, String number) implements Target {}
}
