package warmshelf.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.util.Map;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What people see when something cannot be done: a sentence, a way on, and never the program's insides. */
final class ErrorPages {
    private static final Logger LOG = LoggerFactory.getLogger(ErrorPages.class);

    private static final Map<Integer, String> SENTENCES = Map.of(
            400, "The request could not be read.",
            404, "There is nothing at this address.",
            405, "This address does not take that kind of request.",
            413, "That was too much at once: at most 1 MB is accepted. Nothing was saved; go back and shorten it.",
            415, "This address does not take that kind of content.");

    private final Access access;

    ErrorPages(Access access) {
        this.access = access;
    }

    void register(RoutesConfig routes) {
        routes.exception(Refusal.class, (refusal, ctx) -> show(ctx, refusal.status(), refusal.sentence()));
        routes.exception(HttpResponseException.class, this::answered);
        routes.exception(Exception.class, this::fault);
    }

    private void answered(HttpResponseException exception, Context ctx) {
        HttpStatus status = HttpStatus.forStatus(exception.getStatus());
        if (status.isServerError()) {
            fault(exception, ctx);
        } else {
            show(ctx, status, SENTENCES.getOrDefault(status.getCode(), status.getMessage()));
        }
    }

    private void fault(Exception exception, Context ctx) {
        String reference = UUID.randomUUID().toString().substring(0, 8);
        LOG.error("fault {} at {} {}", reference, ctx.method(), ctx.path(), exception);
        show(
                ctx,
                HttpStatus.INTERNAL_SERVER_ERROR,
                "Something went wrong on our side, and it may not have been saved. The reference %s helps whoever looks after the program to find out what."
                        .formatted(reference));
    }

    private void show(Context ctx, HttpStatus status, String sentence) {
        ctx.status(status);
        if (Respond.wantsJson(ctx)) {
            ctx.json(Map.of("error", sentence));
            return;
        }
        ProblemPage page = new ProblemPage(heading(status), sentence);
        try {
            access.identify(ctx);
            Respond.page(ctx, "web/problem.peb", page);
        } catch (RuntimeException recordsAreOutOfReach) {
            LOG.error("the page for status {} is shown without the group's records", status, recordsAreOutOfReach);
            Renderer.withoutRecords(ctx);
            Respond.page(ctx, "web/problem.peb", page);
        }
    }

    private record ProblemPage(String heading, String sentence) {}

    private static String heading(HttpStatus status) {
        return switch (status.getCode()) {
            case 401 -> "Please sign in";
            case 403 -> "Not allowed";
            case 404 -> "Not found";
            case 405 -> "Not possible here";
            case 409 -> "Changed meanwhile";
            case 410 -> "No longer open";
            case 413 -> "Too large";
            case 429 -> "Too many tries";
            case 500, 503 -> "Something broke";
            default -> "That did not work";
        };
    }
}
