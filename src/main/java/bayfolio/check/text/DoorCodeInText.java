package bayfolio.check.text;

import bayfolio.check.Text;
import bayfolio.check.TextRule;
import bayfolio.finding.Finding;
import bayfolio.prose.WordIndex;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Flags what reads as the code of a door, key box, gate, alarm or network in a text for renters, whatever the words around
 * it and also spelled out: every former renter still has it.
 */
public final class DoorCodeInText implements TextRule {
    /** What may stand between two digits of one code. */
    private static final String BETWEEN = "(?:[ .,\u00B7\u2013-]|, |,? then )?";

    private static final Pattern ONE =
            Pattern.compile("[0-9](?:" + BETWEEN + "[0-9])*+", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    /** A figure with a unit, a day or a year is no code, and an emergency number is told elsewhere. */
    private static final String NO_CODE =
            "(?!(?:911|112|999|110|000)\\b)(?!\\d{1,4}[./-]\\d{1,2}[./-]\\d{1,4}\\b(?![./-]\\d))"
                    + "(?!(?:19|20)\\d\\d\\b(?<=\\b(?:of|in|since|from|until|by|before|after|year|model|made|dated?)\\s(?:19|20)\\d\\d))"
                    + "(?!(?<=\\b(?:of|in|since|from|until|by|before|after|year|model|made|dated?)\\s)(?:19|20)\\d\\d\\b)";

    private static final String NO_UNIT =
            "(?![./]?\\d)(?!,\\d)(?![ -]?(?:%|\u00B0|(?:mm|cm|m|km|in|ft|mi|mph|rpm|kg|lbs?|l|gal|qt|oz|V|A|Ah|W|Wh|kW|kWh|Hz|dB|BTU|psi"
                    + "|ppm|ppb|bar|h?Pa|kPa|mbar|s|min|h|inch(?:es)?|feet|foot|meters?|miles?|pounds?|gallons?|liters?|quarts?|volts?"
                    + "|amps?|watts?|days?|hours?|minutes?|seconds?|weeks?|months?|years?|times|people|persons|wide|high"
                    + "|deep|long|USD|EUR|dollars|euros)\\b))";

    private static final String THREE = "[#*]?" + NO_CODE + "[A-Z]?\\d(?:" + BETWEEN + "\\d){2,9}+\\b" + NO_UNIT;
    private static final String FOUR = "[#*]?" + NO_CODE + "\\d(?:" + BETWEEN + "\\d){3,9}+\\b" + NO_UNIT;

    private static final String DIGIT_WORD =
            "(?:(?:double|triple) )?(?:zero|oh|nought|one|two|three|four|five|six|seven|eight|nine"
                    + "|null|eins|zwei|zwo|drei|vier|f\u00FCnf|fuenf|sechs|sieben|acht|neun)";

    private static final String NUMBER_WORD = "(?:(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[ -]"
            + DIGIT_WORD + ")?|ten|eleven|twelve|[a-z]{3,5}teen|" + DIGIT_WORD + ")";

    private static final String SPOKEN = NUMBER_WORD + "(?:[,;]?[ -](?:then )?" + NUMBER_WORD + ")++";

    /** Words in one sentence. */
    private static String words(int most) {
        return "(?:[\\s:=,(]+[\\p{L}\u2019\u0027/-]++(?!\\d)){0," + most + "}[\\s:=,(\"\u201C\u0027]+";
    }

    /** The words for a code; those of faults, colors and towns open nothing. */
    private static final String CODE =
            "(?<!(?:fault|error|trouble|warning|diagnostic|flash|blink|color|zip|post|postal|area|date|DOT|country|bar|QR|paint"
                    + "|part|tire|tyre|model)[ -])\\b(?:(?:pass|key|door|gate|t\u00FCr|access|entry|zugangs)?codes?|PIN|combination|combo|Zahlenkombination)\\b";

    private static final String LOCK =
            "\\b(?:key ?(?:box|safe|cabinet|vault)|lock ?box|keypad|gate|barrier|padlock|combination lock|safe|alarm|disarm|Schl\u00FCssel\\p{L}+|Zahlenschloss|Tor)\\b";

    private static final String OPENED = "(?:" + LOCK
            + "|\\b(?:box|lock|door|pad|bay|hatch|garage|shed|hut|office|depot|yard|compound|locker|handset)\\b)";

    private static final String PASSWORD =
            "\\b(?:password|passphrase|pass phrase|passwort|kennwort|(?:network|security|WPA2?|Wi-?Fi|WLAN) ?-?(?:key|code|password|schl\u00FCssel))\\b";

    /** Letters and digits mixed, as no word is. */
    private static final String MIXED = "(?=[\\w!$%&*-]*\\d)(?=[\\w!$%&*-]*\\p{L}{2})[\\w!$%&*-]{6,}+";

    private static final List<Pattern> FIGURES = patterns(
            CODE + words(4) + THREE,
            CODE + words(8) + FOUR,
            // What is done with a code.
            "\\b(?:type|enter|punch|key|dial|tap|press|push|input|tippen|dr\u00FCcken)\\s+(?:in\\s+|sie\\s+)?(?:(?:the )?(?:code|digits|numbers?|keys|buttons)\\s+)?"
                    + THREE,
            "\\b(?:set|turn|line up|roll|put)\\s+(?:the |its |all )?(?:(?:four |three )?(?:dials?|wheels?|digits|numbers|lock|rings?)\\s+)?(?:to|at|on)\\s+"
                    + THREE,
            // What a code opens.
            LOCK + words(4) + FOUR,
            OPENED + "(?:\\s+(?!\\d)[\\p{L}\u2019\u0027-]+){0,5}?\\s+(?:with|using|is|takes|wants|needs|by|to)[ :]\\s*"
                    + FOUR,
            OPENED + "\\s*[:=]\\s*" + FOUR,
            // The figure before the word.
            THREE + "[#*]?,?\\s+(?:is|was|as|being)\\s+(?:(?:the|our|your|its|a)\\s+)?(?:[\\p{L}-]+\\s+){0,2}" + CODE,
            FOUR
                    + "[#*]?,?\\s+(?:(?:also|will|then)\\s+)?(?:opens?|unlocks?|disarms?|silences?|releases?|gets you|lets you|\u00F6ffnet)\\b",
            "\\b(?:use|with|mit)\\s+" + FOUR + "[#*]?" + words(5) + OPENED,
            FOUR + "[#*]?,?\\s+(?:for|on|at|into|in|to open)\\s+(?:(?:the|our|its)\\s+)?(?:[\\p{L}-]+\\s+){0,2}"
                    + OPENED,
            // As pads want it.
            "(?<!(?:part|no|nr|model|serial|size|fuse|number|order|booking|sign|version) ?)(?<![\\w#*])(?:[#*]\\d{3,8}[#*]|[#*]\\d{4,8}\\b|\\d{3,8}[#*](?!\\w))",
            "(?<![\\w.,/-])(?<!\\d )\\d(?: \\d){3,7}(?![\\w.,/]?\\d)(?! ?[\\w%\u00B0]+\\b(?<= (?:mm|V|A|W)))");

    private static final int FEWEST_DIGITS = 3;

    /** In small letters, what each of the last ones holds; they are found sooner one by one than by a pattern. */
    private static final List<String> NETWORK = List.of(
            "passw",
            "passphrase",
            "pass phrase",
            "kennw",
            "wifi",
            "wi-fi",
            "wlan",
            "network",
            "router",
            "hotspot",
            "hot spot",
            "log in",
            "log on",
            "wpa",
            "security");

    /** Words of numbers, of which a code in words has two at least, one behind the other. */
    private static final Set<String> NUMBER_WORDS =
            Set.of(("zero oh nought one two three four five six seven eight nine"
                            + " null eins zwei zwo drei vier f\u00FCnf fuenf sechs sieben acht neun ten eleven twelve"
                            + " twenty thirty forty fifty sixty seventy eighty ninety")
                    .split(" "));

    private static final int FEWEST_WORDS = 2;

    /** What may stand between them. */
    private static final Set<String> JOINING = Set.of("then", "double", "triple");

    private static final List<Pattern> SPELLED = patterns(
            "\\b" + DIGIT_WORD + "(?:[,;]?[ -](?:then )?" + DIGIT_WORD + "){3,}\\b",
            CODE + words(6) + SPOKEN + "\\b",
            "\\b" + SPOKEN
                    + ",?\\s+(?:is|was|opens|unlocks|disarms)\\s+(?:(?:the|our|your|its)\\s+)?(?:[\\p{L}-]+\\s+){0,2}(?:"
                    + CODE + "|" + OPENED + ")");

    private static final List<Pattern> NETWORKS = patterns(
            // Quoted, or a word that is none.
            PASSWORD + words(6) + "(?:" + MIXED + "|(?<=[\"\u201C])[^\"\u201D]{4,})",
            PASSWORD
                    + "(?:\\s+(?:of|for) [\\p{L} -]{2,30}?)?\\s*[:=]\\s*(?!(?:see|ask|on|in|at|none|below|above|your|the|it|please|we)\\b)[^\\s.,]{4,}",
            PASSWORD
                    + "(?:\\s+(?:of|for) [\\p{L} -]{2,30}?)?\\s+is\\s+(?!\\p{L}+(?:ed|en)\\b|(?:secret|below|above|inside|hidden|there|unknown|yours|long|private|case-sensitive|the|not|same)\\b)"
                    + "[\\p{L}\\d-]{4,}(?=\\s*(?:[.;!]|$))",
            "\\b(?:Wi-?Fi|WLAN|network|router|hot ?spot|log (?:in|on))\\b" + words(5) + MIXED,
            MIXED + "\\s+(?:is|for|as)\\s+(?:(?:the|our|its)\\s+)?(?:" + PASSWORD
                    + "|(?:Wi-?Fi|WLAN|network|router)\\b)");

    private static List<Pattern> patterns(String... codes) {
        return Stream.of(codes)
                .map(code -> Pattern.compile(code, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE))
                .toList();
    }

    @Override
    public Stream<Finding> check(Text text) {
        return text.forRenters()
                ? code(text.own(), text.words()).map(part -> finding(text, part)).stream()
                : Stream.empty();
    }

    /** The first code in a text. */
    static Optional<MatchResult> code(String text) {
        return code(text, WordIndex.of(text));
    }

    private static Optional<MatchResult> code(String text, WordIndex index) {
        List<Pattern> likely = new ArrayList<>();
        if (index.digits() >= FEWEST_DIGITS && digitsOfOne(text) >= FEWEST_DIGITS) {
            likely.addAll(FIGURES);
        }
        if (numbersInARow(index)) {
            likely.addAll(SPELLED);
        }
        String small = text.toLowerCase(Locale.ROOT);
        if (NETWORK.stream().anyMatch(small::contains)) {
            likely.addAll(NETWORKS);
        }
        // Most texts hold nothing that is like a code.
        return likely.isEmpty()
                ? Optional.empty()
                : likely.stream()
                        .flatMap(code -> code.matcher(text).results())
                        .min(Comparator.comparingInt(MatchResult::start));
    }

    /** The most digits with nothing else between any two of them than a code may have there. */
    private static int digitsOfOne(String text) {
        return ONE.matcher(text)
                .results()
                .mapToInt(run -> WordIndex.of(run.group()).digits())
                .max()
                .orElse(0);
    }

    private static boolean numbersInARow(WordIndex index) {
        int row = 0;
        for (WordIndex.Word word : index.all()) {
            if (isNumber(word.small())) {
                row++;
            } else if (!JOINING.contains(word.small())) {
                row = 0;
            }
            if (row == FEWEST_WORDS) {
                return true;
            }
        }
        return false;
    }

    private static boolean isNumber(String word) {
        return NUMBER_WORDS.contains(word) || word.endsWith("teen");
    }

    private static Finding finding(Text text, MatchResult part) {
        return Finding.error(
                        "door-code-in-text",
                        text.at(part),
                        "`" + text.typed(part) + "` gives a code to everyone who reads this")
                .mend("Send the code in the message for pickup, and change it.");
    }
}
