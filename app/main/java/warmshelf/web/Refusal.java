package warmshelf.web;

import static warmshelf.web.WebSentences.SAY;

import io.javalin.http.HttpStatus;

/** A clear no to one request: a status and a sentence, shown as a page or as JSON. */
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final HttpStatus status;

    private Refusal(HttpStatus status, String sentence) {
        super(sentence, null, false, false);
        this.status = status;
    }

    public static Refusal of(HttpStatus status, String sentence) {
        return new Refusal(status, sentence);
    }

    /** There is nothing at this address, or nothing this visitor may know of. */
    public static Refusal notFound() {
        return new Refusal(HttpStatus.NOT_FOUND, SAY.nothingHere());
    }

    /** What was asked for is not there, with more to say about it. */
    public static Refusal notFound(String sentence) {
        return new Refusal(HttpStatus.NOT_FOUND, sentence);
    }

    /** It was there once and is not to be had any more. */
    public static Refusal gone(String sentence) {
        return new Refusal(HttpStatus.GONE, sentence);
    }

    /** It does not go with how things stand now. */
    public static Refusal conflict(String sentence) {
        return new Refusal(HttpStatus.CONFLICT, sentence);
    }

    public static Refusal forbidden(String sentence) {
        return new Refusal(HttpStatus.FORBIDDEN, sentence);
    }

    public HttpStatus status() {
        return status;
    }

    public String sentence() {
        String message = getMessage();
        return message == null ? "" : message;
    }
}
