package warmshelf.reminder.push;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

/** A push service in this process, which answers as it is told. */
public final class PushService implements AutoCloseable {
    private final HttpServer server;
    private final List<Received> received = new CopyOnWriteArrayList<>();
    private volatile int status = 201;
    private volatile String retryAfter = "";
    private volatile String location = "";

    private PushService(HttpServer server) {
        this.server = server;
    }

    /** What came in at a path. */
    // The bytes of a message, which nobody compares.
    @SuppressWarnings("ArrayRecordComponent")
    public record Received(String path, Headers headers, byte[] body) {
        public String header(String name) {
            return headers.getFirst(name);
        }
    }

    public static PushService open() {
        try {
            HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
            PushService service = new PushService(server);
            server.createContext("/", service::take);
            server.start();
            return service;
        } catch (IOException noPort) {
            throw new UncheckedIOException(noPort);
        }
    }

    private void take(HttpExchange exchange) throws IOException {
        try (exchange) {
            received.add(new Received(
                    exchange.getRequestURI().getPath(),
                    exchange.getRequestHeaders(),
                    exchange.getRequestBody().readAllBytes()));
            if (!retryAfter.isEmpty()) {
                exchange.getResponseHeaders().set("Retry-After", retryAfter);
            }
            if (!location.isEmpty()) {
                exchange.getResponseHeaders().set("Location", location);
            }
            exchange.sendResponseHeaders(status, -1);
        }
    }

    /** How it answers from now on. */
    public void answer(int newStatus, String newRetryAfter) {
        this.status = newStatus;
        this.retryAfter = newRetryAfter;
    }

    void redirect(String to) {
        this.status = 307;
        this.location = to;
    }

    public String address(String path) {
        return origin() + path;
    }

    String origin() {
        return "http://127.0.0.1:" + server.getAddress().getPort();
    }

    public List<Received> received() {
        return received;
    }

    /** Takes this service's addresses, which no real rule would. */
    public EndpointRule rule() {
        return new EndpointRule() {
            @Override
            public Optional<EndpointRefusal> refusal(String endpoint) {
                return endpoint.startsWith(origin()) ? Optional.empty() : Optional.of(EndpointRefusal.Fault.NOT_PUBLIC);
            }

            @Override
            public boolean mayConnect(URI endpoint) {
                return true;
            }
        };
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
