package bayfolio.edition;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.check.Check;
import bayfolio.check.CheckedCoach;
import bayfolio.compose.Composer;
import bayfolio.document.Audience;
import bayfolio.document.DocumentJson;
import bayfolio.document.Handbook;
import bayfolio.model.Unit;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What renters see of a state, taken out of its file, is what the document itself leaves them. */
final class ForRentersTest {
    @Test
    void aStateLeavesRentersWhatTheDocumentLeavesThem() throws Exception {
        Check check = DemoFleet.of(Path.of("")).check();
        for (Unit unit : check.fleet().units()) {
            CheckedCoach coach = check.of(unit);
            Handbook handbook = Composer.compose(coach);
            JsonObject seen = JsonParser.parseString(DocumentJson.of(handbook.seenBy(Audience.RENTERS)))
                    .getAsJsonObject();

            Map<String, String> theirs =
                    texts(Snapshot.told(coach, handbook).forRenters().parts());
            assertThat(theirs).as(unit.id()).isEqualTo(texts(Parts.of(seen))).hasSizeGreaterThan(1000);
        }
    }

    private static Map<String, String> texts(Map<String, Part> parts) {
        Map<String, String> texts = new HashMap<>();
        parts.values().forEach(part -> texts.put(part.id(), part.page() + " " + part.text() + " " + part.links()));
        return texts;
    }
}
