package bayfolio.library;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.model.Access;
import bayfolio.model.Coach;
import bayfolio.model.Reach;
import bayfolio.model.Unit;
import bayfolio.procedure.Head;
import bayfolio.procedure.Who;
import bayfolio.prose.Target;
import bayfolio.read.FleetReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** No page tells a renter that he can do alone what takes a second person or a call. */
final class AloneTest {
    private static final Pattern SECOND = Pattern.compile(
            "\\b(?:helpers?|second person|two people|another person|(?:with|while) (?:us|we|staff) (?:are )?on the phone)\\b",
            Pattern.CASE_INSENSITIVE);

    private final FleetReader.Reading reading = FleetReader.read(Folders.at(Path.of("")));
    private final Map<String, byte[]> files = DemoFleet.files(DemoFleet.web());

    @Test
    void nobodyIsToldThatHeCanDoAloneWhatTakesTwoOrACall() {
        List<String> wrong = new ArrayList<>();
        int alone = 0;
        for (Unit unit : reading.fleet().units()) {
            Set<String> onCall = Reach.all(Access.ON_CALL, new Coach(reading.fleet(), unit)).stream()
                    .map(target -> (Target.OfThing) target)
                    .map(target -> "#" + target.kind() + "-" + target.id())
                    .collect(Collectors.toSet());
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                if (!file.getKey().startsWith(unit.id() + "/") || !file.getKey().endsWith(".html")) {
                    continue;
                }
                Element main = Jsoup.parse(new String(file.getValue(), StandardCharsets.UTF_8))
                        .selectFirst("main");
                if (main == null || main.selectFirst(".who-renter") == null) {
                    continue;
                }
                alone++;
                boolean second = SECOND.matcher(main.text()).find();
                boolean call = main.select("a[href]").stream()
                        .map(link -> link.attr("href"))
                        .anyMatch(href -> href.contains("#") && onCall.contains(href.substring(href.indexOf('#'))));
                boolean goesOn = main.select(".steps a[href], ol a[href]").stream()
                        .map(link -> link.attr("href").replaceFirst("^.*/", "").replaceFirst("#.*", ""))
                        .anyMatch(page -> needsTwo(unit, page));
                if (goesOn) {
                    wrong.add(file.getKey() + " goes on with what takes two or a call");
                }
                if (second || call) {
                    wrong.add(file.getKey() + (call ? " sends to what is on call" : " speaks of a second person"));
                }
            }
        }

        assertThat(wrong).isEmpty();
        assertThat(alone).isGreaterThan(100);
    }

    /** By what its own head says. */
    private boolean needsTwo(Unit unit, String page) {
        return reading.library()
                .named(unit, page.replaceFirst("\\.html$", ""))
                .map(script -> script.head().who() == Who.ON_CALL
                        || script.head().facts().find(Head.HELPER).orElse(false))
                .orElse(false);
    }
}
