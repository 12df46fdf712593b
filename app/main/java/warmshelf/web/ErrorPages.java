package warmshelf.web;

import static warmshelf.web.WebSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.util.Map;
import org.eclipse.jetty.io.EofException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import warmshelf.db.DatabaseAway;
import warmshelf.db.NoRoomOnDisk;

/** What people see when something cannot be done: a sentence, a way on, and never the program's insides. */
final class ErrorPages {
    private static final Logger LOG = LoggerFactory.getLogger(ErrorPages.class);

    /** In seconds; somebody has to delete something. */
    private static final String UNTIL_THERE_IS_ROOM = "60";

    private static final Map<Integer, String> SENTENCES = Map.of(
            400, SAY.unreadableRequest(),
            404, SAY.nothingHere(),
            405, SAY.otherKindOfRequest(),
            413, SAY.tooMuchAtOnce(),
            415, SAY.otherKindOfContent());

    private final Access access;

    ErrorPages(Access access) {
        this.access = access;
    }

    void register(RoutesConfig routes) {
        routes.exception(Refusal.class, this::refused);
        routes.exception(HttpResponseException.class, this::answered);
        routes.exception(Exception.class, this::fault);
    }

    private void refused(Refusal refusal, Context ctx) {
        refusal.headers().forEach(ctx::header);
        if (ProblemDetails.wants(ctx)) {
            ProblemDetails.send(ctx, refusal.status(), refusal.sentence(), refusal.problems());
            return;
        }
        show(ctx, refusal.status(), refusal.sentence());
    }

    private void answered(HttpResponseException exception, Context ctx) {
        HttpStatus status = HttpStatus.forStatus(exception.getStatus());
        if (status.isServerError()) {
            fault(exception, ctx);
        } else {
            show(ctx, status, SENTENCES.getOrDefault(status.getCode(), status.getMessage()));
        }
    }

    /** In one line: while the database is away every request fails. */
    private static String deepest(Throwable trouble) {
        Throwable deepest = trouble;
        for (Throwable cause = trouble.getCause(); cause != null; cause = cause.getCause()) {
            deepest = cause;
        }
        return deepest.toString();
    }

    private void fault(Exception exception, Context ctx) {
        if (hungUp(exception)) {
            LOG.info("whoever asked for {} {} did not wait for the answer", ctx.method(), ctx.path());
            return;
        }
        if (DatabaseAway.tellsOf(exception)) {
            LOG.warn("the database is out of reach: {} {}: {}", ctx.method(), ctx.path(), deepest(exception));
            ctx.header("Retry-After", PlainAnswer.LATER);
            showWithoutRecords(ctx, HttpStatus.SERVICE_UNAVAILABLE, SAY.recordsOutOfReach());
            return;
        }
        if (tellsOfNoRoom(exception)) {
            LOG.warn("the disk has no room: {} {}", ctx.method(), ctx.path());
            ctx.header("Retry-After", UNTIL_THERE_IS_ROOM);
            show(ctx, HttpStatus.SERVICE_UNAVAILABLE, SAY.noRoomOnDisk());
            return;
        }
        String reference = RequestName.of(ctx);
        LOG.error("fault {} at {} {}", reference, ctx.method(), ctx.path(), exception);
        show(ctx, HttpStatus.INTERNAL_SERVER_ERROR, SAY.fault(reference));
    }

    private static boolean tellsOfNoRoom(Throwable trouble) {
        for (Throwable cause = trouble; cause != null; cause = cause.getCause()) {
            if (cause instanceof NoRoomOnDisk) {
                return true;
            }
        }
        return false;
    }

    private static boolean hungUp(Throwable trouble) {
        for (Throwable cause = trouble; cause != null; cause = cause.getCause()) {
            if (cause instanceof EofException) {
                return true;
            }
        }
        return false;
    }

    private void show(Context ctx, HttpStatus status, String sentence) {
        if (answersAScript(ctx, status, sentence)) {
            return;
        }
        ProblemPage page = new ProblemPage(heading(status), sentence);
        try {
            access.identify(ctx);
            Respond.page(ctx, "web/problem.peb", page);
        } catch (RuntimeException recordsAreOutOfReach) {
            LOG.error("the page for status {} is shown without the group's records", status, recordsAreOutOfReach);
            showWithoutRecords(ctx, status, sentence);
        }
    }

    private void showWithoutRecords(Context ctx, HttpStatus status, String sentence) {
        if (answersAScript(ctx, status, sentence)) {
            return;
        }
        Renderer.withoutRecords(ctx);
        Respond.page(ctx, "web/problem.peb", new ProblemPage(heading(status), sentence));
    }

    /** @return whether it was a script that asked, and so has its answer */
    private static boolean answersAScript(Context ctx, HttpStatus status, String sentence) {
        ctx.status(status);
        if (ProblemDetails.wants(ctx)) {
            ProblemDetails.send(ctx, status, sentence, Map.of());
            return true;
        }
        if (Respond.wantsJson(ctx)) {
            ctx.json(Map.of("error", sentence));
            return true;
        }
        return false;
    }

    private record ProblemPage(String heading, String sentence) {}

    private static String heading(HttpStatus status) {
        return switch (status.getCode()) {
            case 401 -> SAY.pleaseSignIn();
            case 403 -> SAY.notAllowed();
            case 404 -> SAY.notFound();
            case 405 -> SAY.notPossibleHere();
            case 409 -> SAY.changedMeanwhile();
            case 410 -> SAY.noLongerOpen();
            case 413 -> SAY.tooLarge();
            case 429 -> SAY.tooManyTries();
            case 500 -> SAY.somethingBroke();
            case 503 -> SAY.notJustNow();
            default -> SAY.didNotWork();
        };
    }
}
