package bayfolio.publish;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;

/**
 * The small fleet, whose handbooks are in German from now on.
 *
 * @param folder in which it is, and what is published of it
 */
record GermanFleet(Path folder) {
    static GermanFleet in(Path folder) throws Exception {
        GermanFleet fleet = new GermanFleet(folder);
        DemoFleet.copy(DemoFleet.SMALL, fleet.root());
        Path facts = fleet.file("units/fleet.yaml");
        Files.writeString(facts, Files.readString(facts).replaceAll("(?m)^languages: .*", "languages: [de-DE]"));
        DemoFleet.write(fleet.file("themes/harbor/words-de.properties"), "steps=Schritte\n");
        return fleet;
    }

    Path root() {
        return folder.resolve("fleet");
    }

    Path file(String path) {
        return root().resolve(path);
    }

    /** What a command says of it. */
    String said(String... words) {
        StringWriter said = new StringWriter();
        Folders.run(new PrintWriter(said), new PrintWriter(said), words);
        return said.toString();
    }

    /** What the program says of it; it publishes as well as it can. */
    String published() {
        return said(
                "publish",
                "--only=web",
                "--fleet",
                root().toString(),
                "--out",
                folder.resolve("out").toString());
    }

    Document page(String path) throws Exception {
        return Jsoup.parse(Files.readString(folder.resolve("out/web/plover/" + path)));
    }
}
