package warmshelf.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A no as programs read it: RFC 9457, Problem Details for HTTP APIs. The type is 'about:blank', so that the status says what kind
 * it is; 'errors' has a sentence for each field that cannot be used.
 */
final class ProblemDetails {
    private static final String FOR_PROGRAMS = "/api/";

    private ProblemDetails() {}

    /** Whether a program asks, told by the address alone: it may say nothing of what it reads. */
    static boolean wants(Context ctx) {
        return ctx.path().startsWith(FOR_PROGRAMS);
    }

    static void send(Context ctx, HttpStatus status, String sentence, Map<String, String> problems) {
        Map<String, Object> details = new LinkedHashMap<>();
        details.put("type", "about:blank");
        details.put("title", status.getMessage());
        details.put("status", status.getCode());
        details.put("detail", sentence);
        if (!problems.isEmpty()) {
            List<Map<String, String>> errors = problems.entrySet().stream()
                    .map(problem -> Map.of("field", problem.getKey(), "detail", problem.getValue()))
                    .toList();
            details.put("errors", errors);
        }
        ctx.status(status).json(details).contentType("application/problem+json");
    }
}
