package warmshelf.web;

import static warmshelf.web.WebSentences.SAY;

import io.javalin.http.HttpStatus;
import warmshelf.decision.Decision;
import warmshelf.words.Units;

/** The one place in which a decision becomes a status, and the words of a page. */
public final class Decisions {
    private static final String NOTHING_HERE = SAY.nothingHere();

    private Decisions() {}

    public static HttpStatus status(Decision<?> decision) {
        if (decision instanceof Decision.Done) {
            return HttpStatus.OK;
        }
        if (decision instanceof Decision.Gone) {
            return HttpStatus.GONE;
        }
        return decision instanceof Decision.Missing ? HttpStatus.NOT_FOUND : HttpStatus.CONFLICT;
    }

    /** Why it was not done, in a reader's units. */
    public static String words(Decision<?> decision, Units units) {
        return decision.refusal().map(reason -> reason.words(units)).orElse(NOTHING_HERE);
    }

    /** What was done; otherwise the page that says why not. */
    public static <T> T doneOr(Decision<T> decision, Units units) {
        if (decision instanceof Decision.Done<T> done) {
            return done.value();
        }
        throw Refusal.of(status(decision), words(decision, units));
    }
}
