package bayfolio.preview;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.issue.TypedFleet;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Handbooks while they are written. */
final class PreviewTest {
    @TempDir
    private Path folder;

    private Path unit;
    private Preview preview;
    private Visitor visitor;

    @BeforeEach
    void start() throws Exception {
        Path root = DemoFleet.copy(DemoFleet.SMALL, folder.resolve("fleet"));
        unit = root.resolve("units/plover/unit.yaml");
        preview = Preview.start(root, 0, Visitor.reading(Folders.at(root)), line -> {});
        visitor = new Visitor(preview);
    }

    @AfterEach
    void stop() throws IOException {
        preview.close();
    }

    private HttpResponse<String> get(String path) throws Exception {
        return visitor.get(path);
    }

    private JsonObject state(int known, String page) throws Exception {
        return visitor.state(known, page);
    }

    /** The first state that is wanted; a file may be seen while it is half written. */
    private JsonObject until(int known, boolean stays) throws Exception {
        JsonObject state = state(known, "/web/plover/index.html");
        for (int more = 0; more < 20 && state.get("stays").getAsBoolean() != stays; more++) {
            state = state(state.get("draft").getAsInt(), "/web/plover/index.html");
        }
        return state;
    }

    @Test
    void aPageIsThatOfTheSiteAndTellsWhereItIsWritten() throws Exception {
        String page = get("web/plover/index.html").body();
        JsonObject state = state(0, "/web/plover/index.html");

        assertThat(page).contains("<title>Plover").contains("/.preview/preview.js");
        assertThat(get("web/index.html").body()).contains("plover/index.html");
        assertThat(state.get("findings").getAsJsonArray()).isEmpty();
        assertThat(state.get("written").toString()).contains("units/plover/unit.yaml:");
        assertThat(get("web/plover/none.html").statusCode()).isEqualTo(404);
        assertThat(get("../etc/passwd").statusCode()).isEqualTo(404);
    }

    @Test
    void whatIsWrittenIsSeenAndABrokenFileLeavesTheLastGoodPage() throws Exception {
        String text = Files.readString(unit);

        Files.writeString(unit, text.replaceFirst("(?m)^name: .*$", "name: Sanderling"));
        JsonObject changed = until(1, false);
        String page = get("web/plover/index.html").body();
        Files.writeString(unit, text.replaceFirst("(?m)^name: .*$", "name: [broken"));
        JsonObject broken = until(changed.get("draft").getAsInt(), true);
        String kept = get("web/plover/index.html").body();

        assertThat(changed.get("stays").getAsBoolean()).isFalse();
        assertThat(page).contains("Sanderling");
        assertThat(broken.get("stays").getAsBoolean()).isTrue();
        assertThat(broken.get("findings").toString()).contains("units/plover/unit.yaml:");
        assertThat(kept).contains("Sanderling");
    }

    /** The first draft whose page of the pump says something. */
    private Document pump(int known, String said) throws Exception {
        Document page = Jsoup.parse("");
        for (int more = 0; more < 20 && !page.text().contains(said); more++) {
            known = state(known, "/web/plover/switch/pump.html").get("draft").getAsInt();
            page = Jsoup.parse(get("web/plover/switch/pump.html").body());
        }
        return page;
    }

    @Test
    void whatIsOtherwiseThanInTheLastEditionIsShownAsItIsPublished() throws Exception {
        Path root = folder.resolve("fleet");
        TypedFleet fleet = new TypedFleet(root);
        assertThat(get("web/plover/what-changed.html").statusCode()).isEqualTo(404);

        fleet.said("issue", "plover", "--note", "As bought.", "--date", "2026-05-02");
        Document issued = pump(1, "Edition 1, May 2, 2026");
        assertThat(issued.select(".edition")).hasSize(1);
        assertThat(issued.select(".changed")).isEmpty();

        fleet.edit("units/plover/unit.yaml", "where: beside the tap", "where: below the tap");
        Document changed = pump(2, "below the tap");
        assertThat(fleet.said(
                        "publish",
                        "--only",
                        "web",
                        "--out",
                        folder.resolve("out").toString()))
                .endsWith("exit 0\n");
        Path web = folder.resolve("out/web/plover");
        Document published = Jsoup.parse(Files.readString(web.resolve("switch/pump.html")));
        assertThat(published.select(".changed")).isNotEmpty();
        assertThat(changed.select("main, footer").outerHtml())
                .isEqualTo(published.select("main, footer").outerHtml());
        assertThat(Jsoup.parse(get("web/plover/what-changed.html").body())
                        .select("main")
                        .outerHtml())
                .isEqualTo(Jsoup.parse(Files.readString(web.resolve("what-changed.html")))
                        .select("main")
                        .outerHtml());
    }

    @Test
    void anEditionThatIsNotAsItWasIssuedIsToldAndLeavesTheLastGoodPage() throws Exception {
        TypedFleet fleet = new TypedFleet(folder.resolve("fleet"));
        fleet.said("issue", "plover", "--note", "As bought.", "--date", "2026-05-02");
        pump(1, "Edition 1, May 2, 2026");

        fleet.edit("units/plover/editions/1.json", "As bought.", "As sold.");

        assertThat(until(2, true).get("findings").toString()).contains("edition 1 of `plover` is not as it was issued");
        assertThat(get("web/plover/switch/pump.html").body()).contains("Edition 1, May 2, 2026");
    }

    /** A page of another site that found a name for this address must not read the drafts. */
    @Test
    void onlyThisComputerIsAnswered() throws Exception {
        String[] origin = preview.origin().split("[:/]+", -1);
        try (Socket socket = new Socket("127.0.0.1", Integer.parseInt(origin[2]))) {
            OutputStream out = socket.getOutputStream();
            out.write("GET /web/index.html HTTP/1.1\r\nHost: example.org\r\nConnection: close\r\n\r\n"
                    .getBytes(StandardCharsets.US_ASCII));
            out.flush();
            InputStream in = socket.getInputStream();
            assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8)).startsWith("HTTP/1.1 403");
        }
    }
}
