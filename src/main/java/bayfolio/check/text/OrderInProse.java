package bayfolio.check.text;

import bayfolio.check.Text;
import bayfolio.check.TextRule;
import bayfolio.finding.Finding;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Flags a fact in words that tells what is set up before what: the lists would tell another order beside it. */
public final class OrderInProse implements TextRule {
    private static final Pattern SENTENCE = Pattern.compile("[^.!?;]+");
    private static final Pattern ORDER = pattern("first|last|before|after|then|until|once");

    /** What has its turn at a site, each as people say it. */
    private static final List<Pattern> TURNS = List.of(
            pattern("ramps?"),
            pattern("plug(?:ged)? in|unplug(?:ged)?|power cord|shore power|hook-up"),
            pattern("jacks?|level first"),
            pattern("slide-outs?"),
            pattern("step (?:in|out|pushed in)"),
            pattern("(?:water|sewer|drinking) hose"),
            pattern("gas (?:appliances )?(?:on|off)"),
            pattern("awning"));

    private static Pattern pattern(String words) {
        return Pattern.compile("\\b(?:" + words + ")\\b", Pattern.CASE_INSENSITIVE);
    }

    @Override
    public Stream<Finding> check(Text text) {
        return text.passage().isPresent()
                        || text.plate()
                        || !ORDER.matcher(text.own()).find()
                ? Stream.empty()
                : SENTENCE.matcher(text.own())
                        .results()
                        .filter(OrderInProse::tellsAnOrder)
                        .map(
                                sentence -> Finding.warning(
                                                "order-in-prose",
                                                text.at(sentence),
                                                "`" + sentence.group().strip()
                                                        + "` tells an order of setting up in words")
                                        .mend(
                                                "Name what changes places under `order` of the setup, and leave the sentence out."));
    }

    private static boolean tellsAnOrder(MatchResult sentence) {
        String words = sentence.group();
        return ORDER.matcher(words).find()
                && TURNS.stream().filter(turn -> turn.matcher(words).find()).count() > 1;
    }
}
