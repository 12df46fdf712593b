package warmshelf.web;

import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/** A sentence without a page around it, for whoever is turned away before a page could be made. */
final class PlainAnswer {
    /** When to come again, in seconds. */
    static final String LATER = "5";

    private final Response response;
    private final Callback callback;

    private PlainAnswer(Response response, Callback callback) {
        this.response = response;
        this.callback = callback;
    }

    static PlainAnswer to(Response response, Callback callback) {
        return new PlainAnswer(response, callback);
    }

    /** Says when to come again. */
    void later(String sentence) {
        response.getHeaders().put(HttpHeader.RETRY_AFTER, LATER);
        hangUp(HttpStatus.SERVICE_UNAVAILABLE_503, sentence);
    }

    /** Answers and ends the connection, because not all that was sent has been read. */
    void hangUp(int status, String sentence) {
        response.setStatus(status);
        response.getHeaders().put(HttpHeader.CONNECTION, "close");
        response.getHeaders().put(HttpHeader.CACHE_CONTROL, "no-store");
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, "text/plain; charset=utf-8");
        response.getHeaders().put("X-Content-Type-Options", "nosniff");
        Content.Sink.write(response, true, sentence + "\n", callback);
    }
}
