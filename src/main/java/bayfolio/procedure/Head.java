package bayfolio.procedure;

import bayfolio.document.Message;
import bayfolio.document.SentWhen;
import bayfolio.explain.Begin;
import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.model.CoachSystem;
import bayfolio.reckon.Question;
import bayfolio.source.Located;
import java.util.List;

/** What stands at the top of a procedure file. */
public record Head(Facts facts) implements Described {
    /** For when a procedure leaves a coach ready, by the keys of a switch that tell its state then. */
    public enum Left {
        AT_PICKUP,
        STORED,
        RETURNED,
        DRIVING
    }

    /** Of texts that all fleets share, where they do not say otherwise. */
    public static final String LANGUAGE_OF_SHARED = "en-US";

    private static final Shape.Draft<Head> DRAFT =
            Shape.draft("procedure", "What to do, step by step; or what to look at, from a symptom to its remedy.");
    public static final Key<String> ID = DRAFT.required("id", Type.ID, "Its name in references and addresses.");
    public static final Key<String> TITLE = DRAFT.required("title", Type.TEXT, "What the reader wants to do.");
    public static final Key<Stage> STAGE =
            DRAFT.required("stage", Type.choice(Stage.class), "The part of the trip that it belongs to.");
    public static final Key<CoachSystem> SYSTEM = DRAFT.optional(
            "system",
            Type.choice(CoachSystem.class),
            "What it is mostly about, which its page shows by word, color and symbol.");
    public static final Key<Who> WHO = DRAFT.required("who", Type.choice(Who.class), "Who may do it.");
    public static final Key<String> WHEN =
            DRAFT.required("when", Type.TEXT, "`every coach`, or features with `and`, `or`, `not` and brackets.");
    public static final Key<Topic> ABOUT = DRAFT.optional(
            "about", Type.choice(Topic.class), "What a trouble guide is about; the list of symptoms is ordered by it.");
    public static final Key<Symptom> SYMPTOM = DRAFT.optional(
            "symptom",
            Type.choice(Symptom.class),
            "What a reader notices first of what a trouble guide is about; the first page leads there by it.");
    public static final Key<List<Located<String>>> ALSO = DRAFT.optional(
            "also", Type.list(Type.TEXT), "Other words by which renters look for it: `sewage`, `dumping`.");
    public static final Key<List<Located<String>>> FORMERLY =
            DRAFT.optional("formerly", Type.list(Type.ID), "Ids that it had before, so that old addresses lead on.");
    public static final Key<Boolean> HELPER = DRAFT.optional(
            "helper", Type.YES_NO, "Whether it takes a second person; the page then says so at its head.");
    public static final Key<Integer> MINUTES = DRAFT.optional(
            "minutes",
            Type.whole(1, 600),
            "How long it takes, where waiting is part of it; else it is reckoned from the number of steps.",
            Range.of("1", "600").usual("1", "120").because("common practice, no source"));
    public static final Key<Boolean> TICKED = DRAFT.optional(
            "ticked",
            Type.YES_NO,
            "Whether its steps are ticked off, as on a list that one walks with; such a page may be longer.");
    public static final Key<Boolean> ON_CARD = DRAFT.optional(
            "on-card",
            Type.YES_NO,
            "Whether its steps stand in short on the card for danger and the first hour, which has one side.");
    public static final Key<Left> LEAVES = DRAFT.optional(
            "leaves",
            Type.choice(Left.class),
            "For when this procedure leaves the coach ready; the switches that it sets must agree with what they are"
                    + " then by the description.");
    public static final Key<List<Located<Question>>> ANSWERS = DRAFT.optional(
            "answers",
            Type.list(Type.choice(Question.class)),
            "Questions that are worked out for the coach and answered on this page.");
    public static final Key<Begin> BEGINS_WITH = DRAFT.optional(
            "begins-with",
            Type.choice(Begin.class),
            "Of which case this page is: the forms of those answers begin with it.");
    public static final Key<List<Located<Message>>> SENT_WITH = DRAFT.optional(
            "sent-with",
            Type.list(Type.choice(Message.class)),
            "Messages to renters with which a link to it is sent; left out, staff send it when somebody asks.");
    public static final Key<SentWhen> SENT_WHEN = DRAFT.optional(
            "sent-when",
            Type.choice(SentWhen.class),
            "What must be so of the booking, that it is sent; always where it is left out.");
    public static final Key<String> LINE = DRAFT.optional(
            "line",
            Type.TEXT,
            "What a reader gets from it, for messages that lead there; the first sentence where it is left out.");
    public static final Key<String> SPOKEN = DRAFT.optional(
            "spoken",
            Type.ID,
            "How its short address ends, to be told over the phone: `dump`; its id where left out. It is never given to another page.");
    public static final Key<String> LANGUAGE =
            DRAFT.optional("language", Type.LANGUAGE, "Language that its text is written in; `en-US` where left out.");
    public static final Key<List<Located<String>>> SOURCES =
            DRAFT.forStaff("sources", Type.list(Type.ID), "What backs it, by the list of sources; shown to staff.");
    public static final Key<List<Located<OnThePhone>>> ON_THE_PHONE = DRAFT.forStaff(
            "on-the-phone",
            Type.list(Type.nested(OnThePhone.SHAPE)),
            "What staff read out while a renter does a step; it stands there in their copy alone.");
    public static final Shape<Head> SHAPE = DRAFT.formerly("works-out", ANSWERS).done(Head::new);

    public String id() {
        return facts.get(ID);
    }

    public String title() {
        return facts.get(TITLE);
    }

    /** The language that its text is written in. */
    public String language() {
        return facts.find(LANGUAGE).orElse(LANGUAGE_OF_SHARED);
    }

    /** How its short address ends. */
    public String spoken() {
        return facts.find(SPOKEN).orElse(id());
    }

    public Stage stage() {
        return facts.get(STAGE);
    }

    public Who who() {
        return facts.get(WHO);
    }
}
