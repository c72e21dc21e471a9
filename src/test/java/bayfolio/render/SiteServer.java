package bayfolio.render;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A published site on the loopback interface, as a plain web server would serve it. */
final class SiteServer implements AutoCloseable {
    private static final Pattern PART = Pattern.compile("bytes=([0-9]+)-");

    private final List<Path> roots;
    private final HttpServer server;
    private final ExecutorService threads = Executors.newFixedThreadPool(4);

    SiteServer(Path root) throws IOException {
        this(List.of(root));
    }

    /** Of several sites as one; where two have a file, it is that of the first. */
    SiteServer(List<Path> roots) throws IOException {
        this.roots = roots;
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", this::answer);
        server.setExecutor(threads);
        server.start();
    }

    /** Where it is, with a slash at the end. */
    String origin() {
        return "http://127.0.0.1:" + server.getAddress().getPort() + "/";
    }

    private void answer(HttpExchange exchange) throws IOException {
        try (exchange) {
            String path = exchange.getRequestURI().getPath().substring(1);
            Optional<Path> file = file(path.isEmpty() || path.endsWith("/") ? path + "index.html" : path);
            if (file.isEmpty()) {
                missing(exchange);
                return;
            }
            byte[] bytes = Files.readAllBytes(file.get());
            exchange.getResponseHeaders().set("Content-Type", type(path));
            // A film is asked for in parts, or a browser goes to no moment of it.
            exchange.getResponseHeaders().set("Accept-Ranges", "bytes");
            Matcher part =
                    PART.matcher(String.valueOf(exchange.getRequestHeaders().getFirst("Range")));
            int from = part.matches() ? Integer.parseInt(part.group(1)) : 0;
            if (part.matches()) {
                exchange.getResponseHeaders()
                        .set("Content-Range", "bytes " + from + "-" + (bytes.length - 1) + "/" + bytes.length);
            }
            exchange.sendResponseHeaders(part.matches() ? 206 : 200, bytes.length == 0 ? -1 : bytes.length - from);
            exchange.getResponseBody().write(bytes, from, bytes.length - from);
        }
    }

    /** As hosts do it that know the page for what is not there, to who asks for a page. */
    private void missing(HttpExchange exchange) throws IOException {
        Optional<Path> told =
                String.valueOf(exchange.getRequestHeaders().getFirst("Accept")).startsWith("text/html")
                        ? file("404.html")
                        : Optional.empty();
        if (told.isEmpty()) {
            exchange.sendResponseHeaders(404, -1);
            return;
        }
        byte[] page = Files.readAllBytes(told.get());
        exchange.getResponseHeaders().set("Content-Type", "text/html; charset=utf-8");
        exchange.sendResponseHeaders(404, page.length);
        exchange.getResponseBody().write(page);
    }

    private Optional<Path> file(String path) {
        return roots.stream()
                .map(root -> root.resolve(path))
                .filter(file -> roots.stream().anyMatch(file.normalize()::startsWith) && Files.isRegularFile(file))
                .findFirst();
    }

    private static String type(String path) {
        return path.endsWith(".mp4")
                ? "video/mp4"
                : path.endsWith(".vtt")
                        ? "text/vtt"
                        : path.endsWith(".css")
                                ? "text/css"
                                : path.endsWith(".js")
                                        ? "text/javascript"
                                        : path.endsWith(".svg") ? "image/svg+xml" : "text/html; charset=utf-8";
    }

    @Override
    public void close() {
        server.stop(0);
        threads.shutdownNow();
    }
}
