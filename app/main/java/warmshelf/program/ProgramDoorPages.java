package warmshelf.program;

import static warmshelf.program.ProgramSentences.SAY;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HttpStatus;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import warmshelf.db.ScriptAtWork;
import warmshelf.decision.Decision;
import warmshelf.group.Token;
import warmshelf.web.BrowserSession;
import warmshelf.web.RateLimits;
import warmshelf.web.Refusal;
import warmshelf.words.Units;

/**
 * The door for scripts: a token in the Authorization header (RFC 6750), its scope, how often; and of what is sent that it counts
 * once by the Idempotency-Key that comes along.
 */
final class ProgramDoorPages {
    private static final String REALM = "Bearer realm=\"warmshelf\"";
    private static final String CHALLENGE = "WWW-Authenticate";
    private static final Pattern JSON = Pattern.compile("(?i)application/json *(;.*)?");
    private static final Pattern BEARER = Pattern.compile("(?i)bearer +([A-Za-z0-9._~+/-]{1,200}=*)");
    /** A string of characters that can be seen, in quotation marks or without. */
    private static final Pattern KEY = Pattern.compile("\"?([!#-~]{1,100})\"?");

    private static final List<String> TOKENS_IN_ADDRESSES =
            List.of("access_token", "token", "bearer", "authorization", "api_key");

    private final ProgramTokenStore tokens;
    private final ProgramAnswerStore answers;
    private final RateLimits limits;
    private final BrowserSession browsers;

    ProgramDoorPages(ProgramTokenStore tokens, ProgramAnswerStore answers, RateLimits limits, BrowserSession browsers) {
        this.tokens = tokens;
        this.answers = answers;
        this.limits = limits;
        this.browsers = browsers;
    }

    /** What a route answers, as a record or map that becomes JSON. */
    interface Answering {
        Object answer(Context ctx, ProgramCaller caller);
    }

    /**
     * A route that is read.
     *
     * @param scope what the token has to have; null: any token will do
     */
    Handler reading(@Nullable TokenScope scope, Answering answering) {
        return ctx -> {
            ProgramCaller caller = admit(ctx, scope);
            send(ctx, ProgramJson.text(answering.answer(ctx, caller)));
        };
    }

    /** A route that gives figures of the server itself, as text, to scripts of coordinators. */
    Handler figures(WatchedFigures figures) {
        return ctx -> {
            ProgramCaller caller = admit(ctx, TokenScope.METRICS);
            if (!caller.coordinator()) {
                throw Refusal.forbidden(SAY.forCoordinators());
            }
            ctx.contentType(figures.type()).result(figures.text().get());
        };
    }

    /** A route to which something is sent, which counts once. */
    Handler writing(TokenScope scope, Answering answering) {
        return ctx -> {
            ProgramCaller caller = admit(ctx, scope);
            limits.take("sending by token " + caller.tokenId(), 60, Duration.ofSeconds(5));
            refuseOtherThanJson(ctx);
            refuseUnfit(new ProgramQuery(ctx.queryParamMap(), Set.of(), false).problems());
            ProgramAnswerStore.Sending sending = new ProgramAnswerStore.Sending(
                    caller.tokenId(), Token.hash(key(ctx)), Token.hash(ctx.path() + "\n" + ctx.body()));
            ProgramAnswerStore.Known known = answers.claim(sending);
            if (known instanceof ProgramAnswerStore.Known.Answered before) {
                send(ctx, before.answer());
            } else if (known instanceof ProgramAnswerStore.Known.OtherContent) {
                throw Refusal.of(HttpStatus.UNPROCESSABLE_CONTENT, SAY.keyUsed());
            } else if (known instanceof ProgramAnswerStore.Known.UnderWay) {
                throw Refusal.conflict(SAY.keyUnderWay()).with("Retry-After", "2");
            } else {
                send(ctx, answerOnce(ctx, caller, sending, answering));
            }
        };
    }

    private String answerOnce(
            Context ctx, ProgramCaller caller, ProgramAnswerStore.Sending sending, Answering answering) {
        boolean kept = false;
        try {
            String answer =
                    ProgramJson.text(ScriptAtWork.answering(caller.tokenName(), () -> answering.answer(ctx, caller)));
            answers.keep(sending, answer);
            kept = true;
            return answer;
        } finally {
            if (!kept) {
                answers.release(sending);
            }
        }
    }

    /** @throws Refusal when there is a problem */
    static void refuseUnfit(Map<String, String> problems) {
        if (!problems.isEmpty()) {
            throw Refusal.unfit(problems);
        }
    }

    /** The key by which what is sent counts once. */
    static String key(Context ctx) {
        String header = ctx.header("Idempotency-Key");
        Matcher key = KEY.matcher(header == null ? "" : header);
        if (!key.matches()) {
            throw Refusal.of(HttpStatus.BAD_REQUEST, SAY.keyMissing());
        }
        return key.group(1);
    }

    private ProgramCaller admit(Context ctx, @Nullable TokenScope scope) {
        refuseTokenInAddress(ctx);
        String header = ctx.header("Authorization");
        if (header == null) {
            throw Refusal.of(HttpStatus.UNAUTHORIZED, SAY.tokenMissing()).with(CHALLENGE, REALM);
        }
        Matcher bearer = BEARER.matcher(header);
        if (!bearer.matches()) {
            throw failed(ctx, SAY.tokenMalformed());
        }
        Decision<ProgramCaller> decision = tokens.caller(bearer.group(1));
        if (!(decision instanceof Decision.Done<ProgramCaller> done)) {
            throw failed(
                    ctx, decision.refusal().map(why -> why.words(Units.METRIC)).orElseGet(SAY::tokenUnknown));
        }
        ProgramCaller caller = done.value();
        limits.take("request by token " + caller.tokenId(), 120, Duration.ofSeconds(1));
        if (scope != null && !caller.scopes().contains(scope)) {
            throw Refusal.forbidden(SAY.scopeMissing(scope.word()))
                    .with(CHALLENGE, REALM + ", error=\"insufficient_scope\", scope=\"" + scope.word() + "\"");
        }
        tokens.noteUse(caller.tokenId(), caller.today());
        return caller;
    }

    /** An address is written into logs and histories, so that a token in one is no secret any more. */
    private static void refuseTokenInAddress(Context ctx) {
        boolean carries = ctx.queryParamMap().keySet().stream()
                .anyMatch(name -> TOKENS_IN_ADDRESSES.contains(name.toLowerCase(Locale.ROOT)));
        if (carries) {
            throw Refusal.of(HttpStatus.BAD_REQUEST, SAY.tokenInAddress())
                    .with(CHALLENGE, REALM + ", error=\"invalid_request\"");
        }
    }

    private Refusal failed(Context ctx, String sentence) {
        limits.take("failed token from " + browsers.address(ctx), 20, Duration.ofSeconds(15));
        return Refusal.of(HttpStatus.UNAUTHORIZED, sentence).with(CHALLENGE, REALM + ", error=\"invalid_token\"");
    }

    private static void refuseOtherThanJson(Context ctx) {
        String type = ctx.contentType();
        if (type == null || !JSON.matcher(type).matches()) {
            throw Refusal.of(HttpStatus.UNSUPPORTED_MEDIA_TYPE, SAY.jsonOnly());
        }
    }

    private static void send(Context ctx, String json) {
        ctx.contentType("application/json").result(json);
    }
}
