package bayfolio.render.web;

import bayfolio.check.Check;
import bayfolio.check.CheckedCoach;
import bayfolio.cli.Bayfolio;
import bayfolio.compose.Composer;
import bayfolio.document.Audience;
import bayfolio.document.Handbook;
import bayfolio.document.OldAddresses;
import bayfolio.document.Page;
import bayfolio.model.Unit;
import bayfolio.procedure.Script;
import bayfolio.read.FleetReader;
import bayfolio.read.Folder;
import bayfolio.render.Media;
import bayfolio.render.html.Words;
import bayfolio.render.theme.Theme;
import bayfolio.template.Names;
import bayfolio.template.Value;
import com.github.mustachejava.DefaultMustacheFactory;
import com.github.mustachejava.Mustache;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * What the libraries alone need for a fleet, beside what publishing it takes, in one run: the same Markdown parsed and rendered
 * by commonmark-java, the same page templates with the same values by Mustache.java, the same bytes written, by as many
 * threads; and {@code cmark}, written in C, over the same texts where it is installed. Run on demand; see DEVELOPERS.md.
 */
public final class FloorBenchmark {
    private static final Path FLEET = Path.of(System.getProperty("fleet", ""));
    private static final int ROUNDS = Integer.getInteger("rounds", 6);

    private FloorBenchmark() {}

    /** Of one coach. */
    private record Job(List<String> markdown, List<Map<String, Object>> pages) {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("bayfolio-floor");
        double cold = publish(folder.resolve("cold"));
        Map<String, byte[]> site = files(folder.resolve("cold"));
        Theme theme = Theme.load(FLEET, Theme.BUILT_IN);
        List<Job> jobs = jobs(theme);
        Mustache page = page(theme);
        for (int round = 1; round <= ROUNDS; round++) {
            double floor = floor(jobs, page, site, folder.resolve("floor-" + round));
            double full = publish(folder.resolve("full-" + round));
            System.out.printf(
                    Locale.ROOT,
                    "round %d: floor %.2f s, publishing %.2f s, %.1f times as long%n",
                    round,
                    floor,
                    full,
                    full / floor);
        }
        System.out.printf(
                Locale.ROOT,
                "%d coaches, %d texts, %d pages, %d files of %.1f MB; published cold in %.2f s%n",
                jobs.size(),
                jobs.stream().mapToInt(job -> job.markdown.size()).sum(),
                jobs.stream().mapToInt(job -> job.pages.size()).sum(),
                site.size(),
                site.values().stream().mapToLong(bytes -> bytes.length).sum() / 1e6,
                cold);
        cmark(jobs, folder);
    }

    private static double publish(Path out) {
        PrintWriter told = new PrintWriter(new StringWriter());
        long begun = System.nanoTime();
        int code = Bayfolio.run(
                told,
                told,
                "publish",
                "--only",
                "web",
                "--fresh",
                "--fleet",
                FLEET.toString(),
                "--out",
                out.toString());
        if (code != 0) {
            throw new IllegalStateException("the fleet cannot be published");
        }
        return (System.nanoTime() - begun) / 1e9;
    }

    private static Map<String, byte[]> files(Path out) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        for (String root : List.of("web", "staff")) {
            Path inside = out.resolve(root).toRealPath();
            try (Stream<Path> all = Files.walk(inside)) {
                for (Path file : all.filter(Files::isRegularFile).toList()) {
                    files.put(root + "/" + inside.relativize(file), Files.readAllBytes(file));
                }
            }
        }
        return files;
    }

    private static List<Job> jobs(Theme theme) throws IOException {
        FleetReader.Reading reading = FleetReader.read(new Folder(FLEET));
        Check check = Check.of(reading.fleet(), reading.library(), theme.catalogs(), reading.findings());
        List<Job> jobs = new ArrayList<>();
        for (Unit unit : check.units()) {
            CheckedCoach coach = check.of(unit);
            Handbook whole = Composer.compose(coach);
            Media media = Media.of(unit, FLEET);
            List<Map<String, Object>> pages = new ArrayList<>();
            for (Audience reader : List.of(Audience.RENTERS, Audience.STAFF)) {
                Handbook seen = whole.seenBy(reader);
                PageView.Looks looks = new PageView.Looks(
                        new Words().of(coach.words()), theme.symbols(), Assets.of(theme.assets()), false);
                for (Page page : seen.pages()) {
                    pages.add(map(new PageView(
                                    seen,
                                    page,
                                    coach.words(),
                                    looks,
                                    media.seenBy(unit, reader),
                                    List.of(),
                                    OldAddresses.NONE)
                            .view()
                            .with("spoken", "")
                            .names()));
                }
            }
            jobs.add(new Job(check.library().of(unit).stream().map(Script::body).toList(), pages));
        }
        return jobs;
    }

    private static Map<String, Object> map(Names names) {
        Map<String, Object> map = new HashMap<>();
        for (String name : names.known()) {
            map.put(name, plain(names.find(name)));
        }
        return map;
    }

    private static Object plain(Value value) {
        if (value instanceof Value.Text text) {
            return text.text();
        }
        if (value instanceof Value.Inner inner) {
            return map(inner.names());
        }
        if (value instanceof Value.Many many) {
            return many.each().stream().map(FloorBenchmark::plain).toList();
        }
        return value instanceof Value.Flag flag && flag.yes();
    }

    private static Mustache page(Theme theme) {
        DefaultMustacheFactory factory = new DefaultMustacheFactory(name -> new StringReader(
                theme.template(name.replace(".mustache", "")).orElseThrow().text()));
        return factory.compile("page.mustache");
    }

    private static double floor(List<Job> jobs, Mustache page, Map<String, byte[]> site, Path out) {
        long begun = System.nanoTime();
        long made = jobs.parallelStream()
                .mapToLong(job -> {
                    Parser parser = Parser.builder().build();
                    HtmlRenderer renderer = HtmlRenderer.builder().build();
                    long length = 0;
                    for (String text : job.markdown) {
                        length += renderer.render(parser.parse(text)).length();
                    }
                    for (Map<String, Object> values : job.pages) {
                        StringWriter html = new StringWriter();
                        page.execute(html, values);
                        length += html.toString().getBytes(StandardCharsets.UTF_8).length;
                    }
                    return length;
                })
                .sum();
        site.entrySet().parallelStream().forEach(file -> {
            try {
                Path to = out.resolve(file.getKey());
                Files.createDirectories(to.getParent());
                Files.write(to, file.getValue());
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        });
        if (made == 0) {
            throw new IllegalStateException("nothing was made");
        }
        return (System.nanoTime() - begun) / 1e9;
    }

    private static void cmark(List<Job> jobs, Path folder) throws Exception {
        Path texts = folder.resolve("texts.md");
        Files.writeString(
                texts,
                String.join(
                        "\n\n",
                        jobs.stream().flatMap(job -> job.markdown.stream()).toList()));
        try {
            long begun = System.nanoTime();
            int code = new ProcessBuilder("cmark", texts.toString())
                    .redirectOutput(folder.resolve("texts.html").toFile())
                    .start()
                    .waitFor();
            System.out.printf(
                    Locale.ROOT,
                    "cmark over the same texts, %.1f MB: %.3f s, exit code %d%n",
                    Files.size(texts) / 1e6,
                    (System.nanoTime() - begun) / 1e9,
                    code);
        } catch (IOException missing) {
            System.out.println("cmark is not installed");
        }
    }
}
