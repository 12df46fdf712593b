package warmshelf.web;

import io.javalin.config.JettyConfig;
import java.util.Set;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.handler.EagerContentHandler;
import org.eclipse.jetty.server.handler.MinimumDataRateHandler;

/**
 * What one visitor may take of the server before a page begins to work: connections, time, memory, threads. Each bound is far
 * above what a phone in a cellar needs, and far below what would keep others waiting.
 */
final class Sockets {
    private static final long IDLE_AT_STOP_MS = 50;
    private static final long STOP_MS = 5_000;
    private static final int CONNECTIONS_OF_ADDRESS = 400;
    /** In how long a form must have come. */
    private static final long PATIENCE_MS = 60_000;
    /** Of the heap, what forms that are still coming may take together. */
    private static final int SHARE_OF_MEMORY = 8;
    /** Bytes a second, counted once some have come. */
    private static final long LEAST_RATE = 50;

    private Sockets() {}

    /**
     * @param largest bytes of a form
     * @param uploads addresses that take large files, which are received only after it is known who sends them
     */
    static void setUp(JettyConfig jetty, WebSettings settings, long largest, Set<String> uploads) {
        jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
        jetty.addConnector((server, http) -> connector(server, http, settings));
        jetty.modifyServer(server -> {
            server.setStopTimeout(STOP_MS);
            // the one put in last stands first
            server.insertHandler(new RequestsAtWork());
            server.insertHandler(inAdvance(largest, uploads));
            server.insertHandler(new MinimumDataRateHandler(LEAST_RATE, LEAST_RATE));
        });
    }

    private static ServerConnector connector(Server server, HttpConfiguration http, WebSettings settings) {
        ServerConnector connector = new ServerConnector(server, new HttpConnectionFactory(http));
        connector.setHost(settings.host());
        connector.setPort(settings.port());
        // At a stop, connections that browsers only keep open are not waited for.
        connector.setShutdownIdleTimeout(IDLE_AT_STOP_MS);
        TrustedProxies proxies = new TrustedProxies(settings.trustedProxies());
        connector.addBean(new ConnectionsOfAddress(CONNECTIONS_OF_ADDRESS, proxies::holds));
        return connector;
    }

    private static EagerContentHandler inAdvance(long largest, Set<String> uploads) {
        EagerContentHandler handler = new EagerContentHandler(
                new BodyLoader(largest, Runtime.getRuntime().maxMemory() / SHARE_OF_MEMORY, PATIENCE_MS));
        uploads.forEach(handler::excludePath);
        return handler;
    }
}
