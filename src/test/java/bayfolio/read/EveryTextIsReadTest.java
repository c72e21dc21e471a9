package bayfolio.read;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.check.Text;
import bayfolio.check.TextRule;
import bayfolio.check.text.DoorCodeInText;
import bayfolio.check.text.DoubledWord;
import bayfolio.check.text.PhoneInText;
import bayfolio.fact.Described;
import bayfolio.fact.FactVisitor;
import bayfolio.fact.Type;
import bayfolio.model.Fleet;
import bayfolio.model.Word;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A code, a phone and a doubled word are told in whatever text of the fleet or of a coach a renter reads. */
class EveryTextIsReadTest {
    private static final Fleet FLEET = DemoCoaches.read().fleet();

    /** Told on no page: words that texts do not use. */
    private static final Set<String> NOT_SHOWN = Set.of("avoid");

    /** Found by key, type and place, apart from how texts are found for rules. */
    private record Words(String key, Place at) {}

    @Test
    void codesPhonesAndDoubledWordsAreToldInEveryTextKey() {
        Map<Place, Text> looked =
                Text.ofFacts(FLEET).collect(Collectors.toMap(Text::at, it -> it, (first, second) -> first));
        List<Words> all = new ArrayList<>();
        collect(FLEET.facts(), all);
        FLEET.units().forEach(unit -> collect(unit, all));
        for (Word word : FLEET.words()) {
            collect(word, all);
        }
        Map<String, Integer> keys = new HashMap<>();
        Set<String> silent = new HashSet<>();
        for (Words words : all) {
            Text text = looked.get(words.at());
            if (text == null) {
                silent.add(words.key() + " is looked at by no rule");
                continue;
            }
            keys.merge(words.key(), 1, Integer::sum);
            Text planted = new Text(
                    "It it opens with code 4711, or call 555-0110.",
                    text.at(),
                    text.forRenters(),
                    text.american(),
                    text.phrase(),
                    text.passage());
            if (!told(new PhoneInText(), planted)) {
                silent.add(words.key() + " may hold a phone");
            }
            if (text.forRenters() && !told(new DoorCodeInText(), planted)) {
                silent.add(words.key() + " may hold a code");
            }
            if (!text.plate() && !told(new DoubledWord(), planted)) {
                silent.add(words.key() + " may hold a doubled word");
            }
        }
        assertThat(silent).isEmpty();
        assertThat(keys).containsKeys("when", "call-back-time", "meaning", "british", "also", "reach", "work");
    }

    private static boolean told(TextRule rule, Text text) {
        return rule.check(text).findAny().isPresent();
    }

    private static void collect(Described described, List<Words> all) {
        FactVisitor.of(described, (record, key, type, value) -> {
            if (Type.ofWords(type) && !NOT_SHOWN.contains(key.name())) {
                all.add(new Words(key.name(), value.at()));
            }
        });
    }
}
