package bayfolio.preview;

import bayfolio.document.Audience;
import bayfolio.document.From;
import bayfolio.document.Page;
import bayfolio.finding.Finding;
import bayfolio.read.FleetReader;
import bayfolio.render.theme.Theme;
import bayfolio.render.theme.UnknownThemeException;
import bayfolio.render.web.WebSite;
import bayfolio.source.UnitsPath;
import com.google.gson.Gson;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Serves the handbooks on the loopback interface while they are written: a page is made when it is asked for, made anew when
 * a file changes, and tells what is wrong and where each thing is written. While a description is broken, its last good
 * pages stay.
 */
public final class Preview implements AutoCloseable {
    private static final Gson GSON = new Gson();
    private static final String OWN = "/.preview/";
    private static final Map<String, String> TYPES = Map.of(
            "css", "text/css",
            "js", "text/javascript",
            "svg", "image/svg+xml",
            "jpg", "image/jpeg",
            "png", "image/png",
            "json", "application/json",
            "mp4", "video/mp4",
            "webm", "video/webm",
            "vtt", "text/vtt; charset=utf-8");
    private static final String PAGE = "text/html; charset=utf-8";

    /** In place of a page; what shows findings tells why. */
    private static final String NOT_MADE =
            "<!doctype html><html lang=\"en\"><head><title>Preview</title></head><body><main><h1>It could not be made</h1></main></body></html>";

    private static final Pattern PART = Pattern.compile("bytes=([0-9]+)-");
    private static final long LONGEST_WAIT = 20_000;

    /** How many coaches are looked at before it is asked whether something has changed again. */
    private static final int AT_ONCE = 40;

    /** What it is made of, read anew each time. */
    public interface Reading {
        Theme theme() throws IOException, UnknownThemeException;

        FleetReader.Reading fleet() throws IOException;
    }

    private final Path root;
    private final Reading reading;
    private final Consumer<String> told;
    private final HttpServer server;
    private final Watch watch;
    private final ExecutorService threads = Executors.newCachedThreadPool(task -> {
        Thread thread = new Thread(task, "preview");
        thread.setDaemon(true);
        return thread;
    });
    private final Object changed = new Object();
    private Draft draft;

    /** Coaches that are still to be looked at as they are now. */
    private final Set<String> waiting = new LinkedHashSet<>();

    /** Those of which somebody waits for a page: they come first. */
    private final Set<String> wanted = new LinkedHashSet<>();

    /** Only the thread that follows the files changes these two. */
    private Theme theme;

    private FleetReader.Reading lastRead;

    /** What failed when the files were read last. */
    private @Nullable String failed;

    private Preview(Path root, int port, Reading reading, Consumer<String> told)
            throws IOException, UnknownThemeException {
        this.root = root;
        this.reading = reading;
        this.told = told;
        this.watch = new Watch(root);
        this.theme = reading.theme();
        this.lastRead = reading.fleet();
        Set<String> looked = first(lastRead, Set.of());
        this.draft = Draft.none(root, lastRead, theme).next(lastRead, theme, looked);
        draft.shared().get();
        waiting.addAll(lastRead.fleet().coaches());
        waiting.removeAll(looked);
        this.server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
        server.createContext("/", this::answer);
        server.setExecutor(threads);
    }

    /**
     * Begins to serve.
     *
     * @param port where to; 0 for any that is free
     * @param told what is said while it runs, a line each
     */
    public static Preview start(Path root, int port, Reading reading, Consumer<String> told)
            throws IOException, UnknownThemeException {
        Preview preview = new Preview(root, port, reading, told);
        preview.server.start();
        preview.threads.execute(preview::follow);
        return preview;
    }

    /** Where it is, with a slash at the end. */
    public String origin() {
        return "http://127.0.0.1:" + server.getAddress().getPort() + "/";
    }

    private void follow() {
        try {
            for (Optional<Set<Path>> change = watch.change(nothingWaits());
                    change.isPresent();
                    change = watch.change(nothingWaits())) {
                if (change.get().isEmpty()) {
                    lookOn(nextOnes());
                } else {
                    again(coaches(change.get()));
                }
            }
        } catch (IOException | InterruptedException stopped) {
            told.accept("Files are no longer watched: " + stopped.getMessage());
        }
    }

    /** The coaches in whose folders all of it is; none where more than that may be another. */
    private static Set<String> coaches(Set<Path> folders) {
        Set<String> coaches = new HashSet<>();
        for (Path folder : folders) {
            boolean within = folder.startsWith("units")
                    && folder.getNameCount() > 1
                    && UnitsPath.isCoach(folder.getName(1).toString());
            if (!within) {
                return Set.of();
            }
            coaches.add(folder.getName(1).toString());
        }
        return coaches;
    }

    private boolean nothingWaits() {
        synchronized (changed) {
            return waiting.isEmpty();
        }
    }

    /** Those of which somebody has looked at a page, and as many others as are looked at at once. */
    private static Set<String> first(FleetReader.Reading read, Set<String> asked) {
        List<String> all = read.fleet().coaches();
        return Stream.concat(
                        all.stream().filter(asked::contains),
                        all.stream().filter(coach -> !asked.contains(coach)).limit(AT_ONCE))
                .collect(Collectors.toSet());
    }

    /** Those of which somebody waits for a page alone, or some of the others. */
    private Set<String> nextOnes() {
        synchronized (changed) {
            Set<String> first = new HashSet<>(wanted);
            first.retainAll(waiting);
            return first.isEmpty() ? waiting.stream().limit(AT_ONCE).collect(Collectors.toSet()) : first;
        }
    }

    /** Where something goes wrong, at each by itself, so that the others are seen. */
    private void lookOn(Set<String> coaches) {
        try {
            see(draft().next(lastRead, theme, coaches), without(coaches), false);
        } catch (IOException | RuntimeException e) {
            if (coaches.size() > 1) {
                coaches.forEach(coach -> lookOn(Set.of(coach)));
            } else {
                see(draft(), without(coaches), false);
                fail(e);
            }
        }
    }

    private List<String> without(Set<String> looked) {
        synchronized (changed) {
            return waiting.stream().filter(coach -> !looked.contains(coach)).toList();
        }
    }

    private void again(Set<String> only) {
        long begun = System.nanoTime();
        try {
            // A theme and its words are read anew where more than some coaches may be other ones.
            boolean all = only.isEmpty();
            Theme look = all ? reading.theme() : theme;
            FleetReader.Reading now = reading.fleet();
            Draft last = all ? draft().with(now, look) : draft();
            Set<String> looked = all ? first(now, last.asked()) : only;
            Draft next = last.next(now, look, looked);
            // What belongs to no coach cannot be made where the file of the fleet is broken: the last stays then.
            next.shared().get();
            theme = look;
            lastRead = now;
            see(
                    next,
                    all
                            ? now.fleet().coaches().stream()
                                    .filter(coach -> !looked.contains(coach))
                                    .toList()
                            : without(looked),
                    true);
            told.accept("Read again in " + (System.nanoTime() - begun) / 1_000_000 + " ms.");
        } catch (IOException | UnknownThemeException | RuntimeException e) {
            // A file that is being written, or a theme that is: the last good pages stay.
            fail(e);
        }
    }

    /**
     * @param left that are still to be looked at
     * @param news whether who waits for the next one is told before all were looked at; afterwards he is in any case
     */
    private void see(Draft next, List<String> left, boolean news) {
        synchronized (changed) {
            waiting.clear();
            waiting.addAll(left);
            draft = news || left.isEmpty() ? next : next.numbered(draft.number());
            if (news) {
                failed = null;
            }
            changed.notifyAll();
        }
    }

    private void fail(Exception e) {
        String message = String.valueOf(e.getMessage());
        synchronized (changed) {
            failed = message;
            changed.notifyAll();
        }
        told.accept(message);
    }

    /** The one in which a coach was looked at as it is now, if there is such a coach. */
    private Draft draft(Optional<String> coach) {
        long until = System.currentTimeMillis() + LONGEST_WAIT;
        synchronized (changed) {
            coach.ifPresent(wanted::add);
            try {
                for (long wait = LONGEST_WAIT;
                        coach.isPresent() && waiting.contains(coach.get()) && wait > 0;
                        wait = until - System.currentTimeMillis()) {
                    changed.wait(wait);
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            coach.ifPresent(wanted::remove);
            return draft;
        }
    }

    private Draft draft() {
        synchronized (changed) {
            return draft;
        }
    }

    private void answer(HttpExchange exchange) throws IOException {
        try (exchange) {
            // A page of another site must not read what nobody has published yet.
            String host = String.valueOf(exchange.getRequestHeaders().getFirst("Host"));
            String path = exchange.getRequestURI().getPath();
            if (!host.matches("(127\\.0\\.0\\.1|localhost)(:[0-9]+)?")) {
                send(exchange, 403, "text/plain", new byte[0]);
            } else if (path.equals("/")) {
                exchange.getResponseHeaders().set("Location", "/web/index.html");
                send(exchange, 302, "text/plain", new byte[0]);
            } else if (path.equals(OWN + "state")) {
                send(exchange, 200, "application/json", state(exchange).getBytes(StandardCharsets.UTF_8));
            } else if (path.startsWith(OWN)) {
                send(exchange, resource(path.substring(OWN.length())), path);
            } else {
                Optional<byte[]> file;
                try {
                    file = file(path);
                } catch (IOException | RuntimeException e) {
                    fail(e);
                    send(exchange, 500, PAGE, with(NOT_MADE.getBytes(StandardCharsets.UTF_8)));
                    return;
                }
                // A film is asked for in parts, or a browser goes to no moment of it.
                Matcher part =
                        PART.matcher(String.valueOf(exchange.getRequestHeaders().getFirst("Range")));
                if (file.isPresent() && part.matches() && part(exchange, file.get(), part.group(1), type(path))) {
                    return;
                }
                send(exchange, file, path);
            }
        }
    }

    private Optional<byte[]> file(String path) throws IOException {
        boolean staff = path.startsWith("/staff/");
        if (!staff && !path.startsWith("/web/")) {
            return Optional.empty();
        }
        String file = path.substring(path.indexOf('/', 1) + 1);
        return draft(Draft.unit(file))
                .file(
                        staff ? Audience.STAFF : Audience.RENTERS,
                        file.isEmpty() || file.endsWith("/") ? file + "index.html" : file)
                .map(bytes -> path.endsWith(".html") || path.endsWith("/") ? with(bytes) : bytes);
    }

    /** The page, with what shows the findings on it. */
    private static byte[] with(byte[] page) {
        return new String(page, StandardCharsets.UTF_8)
                // Nothing of a draft is kept on a phone.
                .replaceFirst("<script src=\"[^\"]*offline\\.js\"[^>]*></script>", "")
                .replace(
                        "</head>",
                        "<link rel=\"stylesheet\" href=\"" + OWN + "preview.css\"><script src=\"" + OWN
                                + "preview.js\" defer></script></head>")
                .getBytes(StandardCharsets.UTF_8);
    }

    private static Optional<byte[]> resource(String name) throws IOException {
        if (!name.matches("preview\\.(css|js)")) {
            return Optional.empty();
        }
        try (InputStream in =
                Objects.requireNonNull(Preview.class.getResourceAsStream("/bayfolio/preview/" + name), name)) {
            return Optional.of(in.readAllBytes());
        }
    }

    /** The rest of a file, if there is one: RFC 9110, 14.2. */
    private static boolean part(HttpExchange exchange, byte[] bytes, String first, String type) throws IOException {
        if (first.length() > 9 || Integer.parseInt(first) >= bytes.length) {
            return false;
        }
        int from = Integer.parseInt(first);
        exchange.getResponseHeaders()
                .set("Content-Range", "bytes " + from + "-" + (bytes.length - 1) + "/" + bytes.length);
        send(exchange, 206, type, Arrays.copyOfRange(bytes, from, bytes.length));
        return true;
    }

    private static void send(HttpExchange exchange, Optional<byte[]> bytes, String path) throws IOException {
        send(exchange, bytes.isPresent() ? 200 : 404, type(path), bytes.orElse(new byte[0]));
    }

    private static void send(HttpExchange exchange, int status, String type, byte[] bytes) throws IOException {
        exchange.getResponseHeaders().set("Content-Type", type);
        exchange.getResponseHeaders().set("Cache-Control", "no-store");
        exchange.sendResponseHeaders(status, bytes.length == 0 ? -1 : bytes.length);
        exchange.getResponseBody().write(bytes);
    }

    private static String type(String path) {
        return TYPES.getOrDefault(path.substring(path.lastIndexOf('.') + 1), PAGE);
    }

    /** What a page asks for: it is answered as soon as there is another draft than the one that it knows. */
    private String state(HttpExchange exchange) {
        String query = String.valueOf(exchange.getRequestURI().getRawQuery());
        int known = Integer.parseInt(parameter(query, "known").orElse("0"));
        String page = parameter(query, "page").orElse("");
        long until = System.currentTimeMillis() + LONGEST_WAIT;
        String wrong;
        Draft now;
        synchronized (changed) {
            try {
                for (long left = LONGEST_WAIT;
                        draft.number() == known && failed == null && left > 0;
                        left = until - System.currentTimeMillis()) {
                    changed.wait(left);
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            now = draft;
            wrong = failed;
        }
        return GSON.toJson(state(now, wrong, page));
    }

    private static Optional<String> parameter(String query, String name) {
        for (String each : query.split("&", -1)) {
            if (each.startsWith(name + "=")) {
                return Optional.of(URLDecoder.decode(each.substring(name.length() + 1), StandardCharsets.UTF_8));
            }
        }
        return Optional.empty();
    }

    private static JsonObject state(Draft draft, @Nullable String wrong, String page) {
        String path = page.replaceFirst("^/(web|staff)/", "");
        Optional<String> unit = Draft.unit(path);
        JsonObject state = new JsonObject();
        state.addProperty("draft", draft.number());
        state.addProperty("failed", wrong == null ? "" : wrong);
        state.addProperty(
                "stays",
                unit.filter(it -> !draft.findings().stopping(it, false).isEmpty())
                        .isPresent());
        JsonArray findings = new JsonArray();
        draft.about(path).forEach(finding -> findings.add(json(finding)));
        state.add("findings", findings);
        JsonArray written = new JsonArray();
        unit.map(draft.coaches()::get)
                .map(Draft.Seen::now)
                .flatMap(handbook -> WebSite.page(
                        handbook, path.substring(path.indexOf('/') + 1).replaceFirst("^$", "index.html")))
                .ifPresent(it -> written(it, written));
        state.add("written", written);
        return state;
    }

    private static JsonObject json(Finding finding) {
        JsonObject json = new JsonObject();
        json.addProperty("severity", finding.severity().word());
        json.addProperty("at", finding.at().toString());
        json.addProperty("message", finding.message());
        json.addProperty("mend", finding.mend().orElse(""));
        return json;
    }

    /** Where the page, its sections and its steps are written. */
    private static void written(Page page, JsonArray all) {
        page.walk()
                .forEach(node -> node.stamp().from().sources().stream()
                        .map(From.Source::at)
                        .findFirst()
                        .ifPresent(at -> {
                            JsonObject json = new JsonObject();
                            json.addProperty("anchor", node.id().within());
                            json.addProperty("at", at.toString());
                            all.add(json);
                        }));
    }

    @Override
    public void close() throws IOException {
        watch.close();
        server.stop(0);
        threads.shutdownNow();
    }
}
