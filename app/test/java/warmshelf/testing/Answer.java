package warmshelf.testing;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What the server answered. */
public final class Answer {
    private static final Pattern CSRF = Pattern.compile("name=\"csrf\" value=\"([^\"]+)\"");

    private final HttpResponse<String> response;

    Answer(HttpResponse<String> response) {
        this.response = response;
    }

    public int status() {
        return response.statusCode();
    }

    public String body() {
        return response.body();
    }

    /** The page's words without its marks, every run of spaces as one. */
    public String text() {
        return body().replaceAll("(?s)<datalist.*?</datalist>|<select.*?</select>", " ")
                .replaceAll("<[^>]*>", " ")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&nbsp;", " ")
                .replace("&amp;", "&")
                .replaceAll("\\s+", " ");
    }

    /** The header's first value, or empty. */
    public String header(String name) {
        return response.headers().firstValue(name).orElse("");
    }

    public String location() {
        return header("Location");
    }

    /** The whole Set-Cookie lines. */
    public List<String> cookiesSet() {
        return response.headers().allValues("Set-Cookie");
    }

    /** What a field of a form holds, or null when the page has no such input. */
    public @Nullable String typed(String field) {
        Matcher input = Pattern.compile("<input[^>]*name=\"" + Pattern.quote(field) + "\"[^>]*>")
                .matcher(body());
        if (!input.find()) {
            return null;
        }
        Matcher value = Pattern.compile("value=\"([^\"]*)\"").matcher(input.group());
        return value.find() ? value.group(1) : "";
    }

    @Nullable
    String csrf() {
        Matcher field = CSRF.matcher(body());
        return field.find() ? field.group(1) : null;
    }
}
