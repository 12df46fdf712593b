package warmshelf.web;

import static warmshelf.web.WebSentences.SAY;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import io.javalin.router.Endpoint;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReentrantLock;
import java.util.stream.Stream;
import warmshelf.db.NoRoomOnDisk;

/**
 * Has each form counted once: pressed twice, or sent again because the first answer got lost, it gets the first answer again.
 *
 * <p>A page gives each of its forms a random name. The same name with other content is another form: the page came back by the
 * browser's Back and was filled in anew.
 */
final class SubmissionGuard {
    /** The hidden field that carries a form's name. */
    static final String FIELD = "submission";

    private static final int ANSWERS_KEPT = 500;
    private static final int LOCKS = 256;

    private final Submissions submissions;
    // The second of two at the same moment waits here for the first one's answer.
    private final List<Lock> locks =
            Stream.generate(() -> (Lock) new ReentrantLock()).limit(LOCKS).toList();
    private final Map<String, Answered> answers = new LinkedHashMap<>();

    SubmissionGuard(Submissions submissions) {
        this.submissions = submissions;
    }

    /** A fresh name for a form. */
    static String freshName() {
        return UUID.randomUUID().toString();
    }

    /** Puts the guard before the handler of a route that takes forms. */
    Handler before(Endpoint endpoint) {
        return HandlerType.POST.equals(endpoint.method) ? ctx -> answer(ctx, endpoint.handler) : endpoint.handler;
    }

    private void answer(Context ctx, Handler handler) throws Exception {
        Optional<Visitor> visitor = Visitor.maybe(ctx);
        // Strangers go on: whoever signs in can read. Whoever signs out may have to.
        if (visitor.isPresent() && !submissions.haveRoom() && !ctx.path().equals("/sign-out")) {
            throw new NoRoomOnDisk();
        }
        String name = visitor.isEmpty() ? null : ctx.formParam(FIELD);
        if (visitor.isEmpty() || name == null || name.isEmpty()) {
            handler.handle(ctx);
            return;
        }
        String fingerprint = fingerprint(ctx, visitor.get().memberId());
        Lock lock = locks.get(Math.floorMod(fingerprint.hashCode(), LOCKS));
        lock.lock();
        try {
            if (submissions.answer(fingerprint, visitor.get().memberId(), () -> handler.handle(ctx))) {
                remember(fingerprint, ctx);
            } else {
                repeat(fingerprint, ctx);
            }
        } finally {
            lock.unlock();
        }
    }

    private void remember(String fingerprint, Context ctx) {
        String location = ctx.res().getHeader("Location");
        if (location != null) {
            synchronized (answers) {
                answers.put(fingerprint, new Answered(location, Notice.left(ctx)));
                if (answers.size() > ANSWERS_KEPT) {
                    answers.remove(answers.keySet().iterator().next());
                }
            }
        }
    }

    private void repeat(String fingerprint, Context ctx) {
        Answered first;
        synchronized (answers) {
            first = answers.get(fingerprint);
        }
        if (first == null) {
            // Another node answered it, or this one before its last start.
            Respond.seeOther(ctx, "/", SAY.savedBefore());
            return;
        }
        first.notices().forEach((kind, text) -> Notice.leave(ctx, kind, text));
        ctx.redirect(first.location(), HttpStatus.SEE_OTHER);
    }

    private static String fingerprint(Context ctx, UUID memberId) {
        MessageDigest digest = sha256();
        add(digest, memberId.toString());
        add(digest, ctx.path());
        // Of files, which may be large, the length tells enough beside the form's own name.
        add(digest, ctx.isMultipart() ? String.valueOf(ctx.req().getContentLengthLong()) : "");
        new TreeMap<>(ctx.formParamMap()).forEach((field, values) -> {
            add(digest, field);
            values.forEach(value -> add(digest, value));
        });
        return HexFormat.of().formatHex(digest.digest());
    }

    private static void add(MessageDigest digest, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        digest.update((byte) (bytes.length >> 8));
        digest.update((byte) bytes.length);
        digest.update(bytes);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException neverHappens) {
            throw new IllegalStateException("every Java has SHA-256", neverHappens);
        }
    }

    /** Where a form led, and what the next page was given to say. */
    private record Answered(String location, Map<String, String> notices) {}
}
