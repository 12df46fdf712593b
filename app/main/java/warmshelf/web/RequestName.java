package warmshelf.web;

import io.javalin.http.Context;
import io.javalin.router.Endpoint;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.slf4j.MDC;

/**
 * A short name for each request, which stands beside every line that the log has of it, in the answer's header, and on the page that
 * tells of a fault. It is our own: one that came with the request could be anything.
 */
final class RequestName {
    static final String HEADER = "X-Request-Id";
    /** Under which the pattern of the log finds it. */
    static final String IN_LOG = "request";

    private static final int LENGTH = 8;
    private static final double NANOS_OF_MILLI = 1e6;

    private RequestName() {}

    static void give(Context ctx) {
        String name = UUID.randomUUID().toString().substring(0, LENGTH);
        MDC.put(IN_LOG, name);
        ctx.header(HEADER, name);
    }

    static String of(Context ctx) {
        return Objects.requireNonNullElse(ctx.res().getHeader(HEADER), "-");
    }

    /** The last that is done for a request; its thread goes on to others. */
    static void answered(Context ctx, float millis, List<Pages> pages) {
        Endpoint endpoint = ctx.endpoints().matchedHttpEndpoint();
        String route = endpoint == null ? "-" : endpoint.path;
        Duration took = Duration.ofNanos(Math.round(millis * NANOS_OF_MILLI));
        pages.forEach(each -> each.answered(ctx.method().name(), route, ctx.statusCode(), took));
        MDC.remove(IN_LOG);
    }
}
