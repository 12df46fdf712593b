package warmshelf.web;

import static warmshelf.web.WebSentences.SAY;

import java.time.Duration;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.QoSHandler;
import org.eclipse.jetty.util.Callback;

/**
 * Works on so many requests at once as the memory bears. More wait for a moment without holding a thread, the watching
 * script's first of all; what would wait longer is told at once to come again.
 */
final class RequestsAtWork extends QoSHandler {
    /** What the largest pages take while they are made: the whole round, all racks. */
    private static final long BYTES_OF_ONE = 12_000_000;

    private static final int LEAST = 8;
    private static final int MOST = 64;
    private static final int WAITING = 512;
    private static final Duration WAIT = Duration.ofSeconds(10);

    RequestsAtWork() {
        this(bearable(Runtime.getRuntime().maxMemory()), WAITING, WAIT);
    }

    RequestsAtWork(int atOnce, int waiting, Duration wait) {
        setMaxRequestCount(atOnce);
        setMaxSuspendedRequestCount(waiting);
        setMaxSuspend(wait);
    }

    /** How many requests at once a heap of so many bytes bears. */
    static int bearable(long heap) {
        return (int) Math.max(LEAST, Math.min(MOST, heap / BYTES_OF_ONE));
    }

    @Override
    protected int getPriority(Request request) {
        return Request.getPathInContext(request).startsWith(HealthPages.ADDRESS) ? 1 : 0;
    }

    @Override
    protected void reject(Request request, Response response, Callback callback, int status) {
        PlainAnswer.to(response, callback).later(SAY.busy());
    }
}
