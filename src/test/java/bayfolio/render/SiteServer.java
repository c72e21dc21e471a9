package bayfolio.render;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** A published site on the loopback interface, as a plain web server would serve it. */
final class SiteServer implements AutoCloseable {
    private final Path root;
    private final HttpServer server;
    private final ExecutorService threads = Executors.newFixedThreadPool(4);

    SiteServer(Path root) throws IOException {
        this.root = root;
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
            Path file = root.resolve(path.isEmpty() || path.endsWith("/") ? path + "index.html" : path);
            if (!file.normalize().startsWith(root) || !Files.isRegularFile(file)) {
                exchange.sendResponseHeaders(404, -1);
                return;
            }
            byte[] bytes = Files.readAllBytes(file);
            exchange.getResponseHeaders().set("Content-Type", type(path));
            exchange.sendResponseHeaders(200, bytes.length == 0 ? -1 : bytes.length);
            exchange.getResponseBody().write(bytes);
        }
    }

    private static String type(String path) {
        return path.endsWith(".css")
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
