package warmshelf.web;

import static warmshelf.web.WebSentences.SAY;

import io.javalin.http.HttpStatus;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** A clear no to one request: a status and a sentence, shown as a page or as JSON. */
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final HttpStatus status;
    private final transient Map<String, String> headers;
    private final transient Map<String, String> problems;

    private Refusal(HttpStatus status, String sentence, Map<String, String> headers, Map<String, String> problems) {
        super(sentence, null, false, false);
        this.status = status;
        this.headers = headers;
        this.problems = problems;
    }

    public static Refusal of(HttpStatus status, String sentence) {
        return new Refusal(status, sentence, Map.of(), Map.of());
    }

    /** There is nothing at this address, or nothing this visitor may know of. */
    public static Refusal notFound() {
        return of(HttpStatus.NOT_FOUND, SAY.nothingHere());
    }

    /** What was asked for is not there, with more to say about it. */
    public static Refusal notFound(String sentence) {
        return of(HttpStatus.NOT_FOUND, sentence);
    }

    /** It was there once and is not to be had any more. */
    public static Refusal gone(String sentence) {
        return of(HttpStatus.GONE, sentence);
    }

    /** It does not go with how things stand now. */
    public static Refusal conflict(String sentence) {
        return of(HttpStatus.CONFLICT, sentence);
    }

    public static Refusal forbidden(String sentence) {
        return of(HttpStatus.FORBIDDEN, sentence);
    }

    /**
     * What a program sent cannot be used.
     *
     * @param problems a sentence by field, at least one
     */
    public static Refusal unfit(Map<String, String> problems) {
        return new Refusal(
                HttpStatus.UNPROCESSABLE_CONTENT,
                String.join(" ", problems.values()),
                Map.of(),
                // in the order in which they were found
                Collections.unmodifiableMap(new LinkedHashMap<>(problems)));
    }

    /** The same no with something that the answer says in its head. */
    public Refusal with(String header, String value) {
        Map<String, String> more = new LinkedHashMap<>(headers);
        more.put(header, value);
        return new Refusal(status, sentence(), more, problems);
    }

    public HttpStatus status() {
        return status;
    }

    public String sentence() {
        String message = getMessage();
        return message == null ? "" : message;
    }

    /** Headers that the answer carries. */
    Map<String, String> headers() {
        return headers;
    }

    /** A sentence for each field that cannot be used; none where it is about the whole. */
    Map<String, String> problems() {
        return problems;
    }
}
