package warmshelf.web;

import static warmshelf.web.WebSentences.SAY;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.io.content.ByteBufferContentSource;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.EagerContentHandler.ContentLoader;
import org.eclipse.jetty.server.handler.EagerContentHandler.ContentLoaderFactory;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.thread.Scheduler;
import org.jspecify.annotations.Nullable;

/**
 * Takes in what is sent before a thread works on it. Whoever sends a form byte by byte so holds a socket and some memory, never
 * one of the threads that answer everybody, and both only for a while.
 */
final class BodyLoader implements ContentLoaderFactory {
    /** A browser shows the answer to an over-large form only if its sending was not cut off, so that much is read. */
    private static final long READ_AND_DROPPED = 32_000_000;

    private final long largest;
    private final long inAll;
    private final long patienceMs;
    private final AtomicLong held = new AtomicLong();

    /**
     * @param largest bytes of one request that are kept; what comes beyond is read and dropped, and one byte more is handed on, so
     *     that it is found to be too much
     * @param inAll bytes of all requests together
     * @param patienceMs how long a request may take to arrive
     */
    BodyLoader(long largest, long inAll, long patienceMs) {
        this.largest = largest;
        this.inAll = inAll;
        this.patienceMs = patienceMs;
    }

    /** @return null: every kind of content */
    @Override
    @SuppressWarnings("NullAway") // the server's own code means every kind by it, but is not annotated
    public String getApplicableMimeType() {
        return null;
    }

    @Override
    public ContentLoader newContentLoader(
            @Nullable String contentType,
            @Nullable String mimeType,
            Handler handler,
            Request request,
            Response response,
            Callback callback) {
        return new Loading(handler, request, response, callback);
    }

    private final class Loading extends ContentLoader implements Runnable {
        private final ByteArrayOutputStream arrived = new ByteArrayOutputStream();
        private final AtomicBoolean settled = new AtomicBoolean();
        private Scheduler.@Nullable Task deadline;
        private long seen;

        Loading(Handler handler, Request request, Response response, Callback callback) {
            super(handler, request, response, callback);
        }

        @Override
        protected void load() {
            Request.addCompletionListener(getRequest(), failure -> held.addAndGet(-arrived.size()));
            deadline = getRequest()
                    .getComponents()
                    .getScheduler()
                    .schedule(this::giveUp, patienceMs, TimeUnit.MILLISECONDS);
            read();
        }

        /** Called when more has come. */
        @Override
        public void run() {
            read();
        }

        private void read() {
            while (!settled.get()) {
                Content.Chunk chunk = getRequest().read();
                if (chunk == null) {
                    getRequest().demand(this);
                    return;
                }
                if (Content.Chunk.isFailure(chunk)) {
                    settle(() -> PlainAnswer.to(getResponse(), getCallback())
                            .hangUp(HttpStatus.BAD_REQUEST_400, SAY.formUnreadable()));
                    return;
                }
                seen += chunk.remaining();
                boolean last = chunk.isLast() || seen > READ_AND_DROPPED;
                boolean fits = keep(chunk);
                chunk.release();
                if (!fits) {
                    settle(() -> PlainAnswer.to(getResponse(), getCallback()).later(SAY.busy()));
                    return;
                }
                if (last) {
                    settle(() -> getRequest().getComponents().getExecutor().execute(this::handOn));
                    return;
                }
            }
        }

        /** @return whether there was room for it */
        private boolean keep(Content.Chunk chunk) {
            int more = (int) Math.min(chunk.remaining(), largest + 1 - arrived.size());
            byte[] bytes = new byte[more];
            chunk.get(bytes, 0, more);
            arrived.write(bytes, 0, more);
            return held.addAndGet(more) <= inAll;
        }

        private void giveUp() {
            settle(() -> PlainAnswer.to(getResponse(), getCallback())
                    .hangUp(HttpStatus.REQUEST_TIMEOUT_408, SAY.sentTooSlowly(patienceMs / 1000)));
        }

        private void settle(Runnable end) {
            if (settled.compareAndSet(false, true)) {
                Scheduler.Task waiting = deadline;
                if (waiting != null) {
                    waiting.cancel();
                }
                end.run();
            }
        }

        private void handOn() {
            Arrived whole = new Arrived(getRequest(), ByteBuffer.wrap(arrived.toByteArray()));
            handle(whole, getResponse(), getCallback());
        }
    }

    /** A request whose content is here. */
    private static final class Arrived extends Request.Wrapper {
        private final ByteBufferContentSource content;

        Arrived(Request request, ByteBuffer content) {
            super(request);
            this.content = new ByteBufferContentSource(content);
        }

        @Override
        public Content.@Nullable Chunk read() {
            return content.read();
        }

        @Override
        public void demand(Runnable whenThere) {
            content.demand(whenThere);
        }

        @Override
        public void fail(Throwable failure) {
            content.fail(failure);
            super.fail(failure);
        }
    }
}
