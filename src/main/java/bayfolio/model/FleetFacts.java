package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.time.LocalDate;
import java.time.Month;
import java.util.List;

/** The fleet as {@code fleet.yaml} describes it. */
public record FleetFacts(Facts facts) implements Described {
    private static final Type<String> MAIL_ADDRESS = new Type.Text(
            "mail-address",
            "^[A-Za-z0-9._+-]+@[A-Za-z0-9-]+(\\.[A-Za-z0-9-]+)+$",
            "an address of mail, such as `desk@example.com`");

    private static final Shape.Draft<FleetFacts> DRAFT = Shape.draft("fleet", "The fleet and whom to call.");
    public static final Key<String> NAME = DRAFT.required("name", Type.NAME, "Name of the fleet.");
    public static final Key<String> BASE_ADDRESS =
            DRAFT.required("base-address", Type.WEB_ADDRESS, "Where the handbooks are published.");
    public static final Key<String> COUNTRY = DRAFT.required(
            "country",
            Type.ID,
            "Where its coaches are hired out: the name of a file in `units/shared/countries`, such as `us`. Emergency numbers and public rules are that country's.");
    public static final Key<List<Located<Phone>>> PHONES = DRAFT.required(
            "phones",
            Type.list(Type.nested(Phone.SHAPE)),
            "Numbers to call: `hours`, `after-hours`, `roadside`; `emergency` is the country's.");
    public static final Key<String> ADDRESS = DRAFT.optional("address", Type.TEXT, "The depot.");
    public static final Key<String> OPENING_HOURS =
            DRAFT.optional("opening-hours", Type.TEXT, "When somebody is there.");
    public static final Key<List<Located<Opening>>> OPEN = DRAFT.optional(
            "open",
            Type.list(Type.nested(Opening.SHAPE)),
            "The same for programs: a message that tells how to get in when nobody is there goes by it.");
    public static final Key<List<Located<LocalDate>>> CLOSED_ON =
            DRAFT.optional("closed-on", Type.list(Type.DAY), "Days on which nobody is there all the same: holidays.");
    public static final Key<List<Located<Month>>> FROST_MONTHS = DRAFT.optional(
            "frost-months",
            Type.list(Type.choice(Month.class)),
            "Months in which it may freeze where renters go: `[november, december]`; they are sent what to do then.");
    public static final Key<String> MAIL =
            DRAFT.optional("mail", MAIL_ADDRESS, "The address that messages to renters come from.");
    public static final Key<String> TIME_ZONE =
            DRAFT.optional("time-zone", Type.TEXT, "Time zone of the depot: `America/New_York`.");
    public static final Key<List<Located<String>>> LANGUAGES =
            DRAFT.required("languages", Type.list(Type.LANGUAGE), "Languages of the handbooks, the default first.");
    public static final Key<Boolean> FINDABLE = DRAFT.optional(
            "findable", Type.YES_NO, "Whether search engines may list the handbooks; no where it is left out.");
    public static final Key<String> FUEL_RULE =
            DRAFT.optional("fuel-rule", Type.TEXT, "How full the fuel tank comes back.");
    public static final Key<FuelPrices> FUEL_PRICES =
            DRAFT.optional("fuel-prices", Type.nested(FuelPrices.SHAPE), "What fuel costs near the depot.");
    public static final Key<List<Located<Pitch>>> PITCHES = DRAFT.optional(
            "pitches",
            Type.list(Type.nested(Pitch.SHAPE)),
            "Sites that renters are often sent to, and where their posts are.");
    public static final Key<String> CLEANING_RULE =
            DRAFT.optional("cleaning-rule", Type.TEXT, "How clean the coach comes back.");
    public static final Key<String> WASTE_RULE =
            DRAFT.optional("waste-rule", Type.TEXT, "How empty the waste tanks come back.");
    public static final Key<String> LAST_FUEL_STOP =
            DRAFT.optional("last-fuel-stop", Type.TEXT, "Where to fill up before the depot.");
    public static final Key<String> CALL_BACK_TIME =
            DRAFT.optional("call-back-time", Type.FIGURE, "How long to wait for a call back.");
    public static final Key<Integer> CHECK_EVERY = DRAFT.optional(
            "check-every",
            Type.whole(1, 120),
            "Months after which what is described is looked at again at the coach; 36 where it is left out.",
            Range.of("1", "120").usual("6", "60").because("older than 3 years: ask"));
    public static final Key<Integer> TIRE_YEARS = DRAFT.optional(
            "tire-years",
            Type.whole(1, 15),
            "Years after the week on its wall by which a tire is changed, by the rule of the fleet.",
            Range.of("1", "15").usual("5", "10").because("what stands much ages before it wears"));
    public static final Key<List<Located<Switch>>> SITE_SWITCHES = DRAFT.optional(
            "site-switches",
            Type.list(Type.nested(Switch.SHAPE)),
            "What is operated off the coach: the breaker at the site.");
    public static final Key<List<Located<Connection>>> SITE_CONNECTIONS = DRAFT.optional(
            "site-connections",
            Type.list(Type.nested(Connection.SHAPE)),
            "What is connected to off the coach: the outlet at the site.");
    public static final Key<List<Located<Notice>>> NOTICES = DRAFT.optional(
            "notices",
            Type.list(Type.nested(Notice.SHAPE)),
            "What is so meanwhile on all coaches, or on those of a recall; things go by their `roles`.");
    public static final Key<List<Located<Left>>> LEFT = DRAFT.optional(
            "left",
            Type.list(Type.nested(Left.SHAPE)),
            "Coaches that were in the fleet, so that the addresses of their pages stay.");
    public static final Key<List<Located<TakenOut>>> TAKEN_OUT = DRAFT.optional(
            "taken-out",
            Type.list(Type.nested(TakenOut.SHAPE)),
            "Procedures and guides that coaches shared and that are gone, said once for each coach that had one, so that the address of its page stays.");
    public static final Shape<FleetFacts> SHAPE = DRAFT.done(FleetFacts::new);
}
