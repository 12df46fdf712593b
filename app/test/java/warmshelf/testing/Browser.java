package warmshelf.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.HttpCookie;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A small browser: keeps cookies, does not follow redirects, and puts the form's token into what it posts. */
public final class Browser {
    static {
        // A connection that the server closed after its last answer, as it does where it did not read all that was
        // sent, is
        // opened anew for the next form, as real browsers do.
        System.setProperty("jdk.httpclient.enableAllMethodRetry", "true");
    }

    private static final HttpClient CLIENT = HttpClient.newBuilder()
            .version(HttpClient.Version.HTTP_1_1)
            .followRedirects(HttpClient.Redirect.NEVER)
            .connectTimeout(Duration.ofSeconds(10))
            .build();

    private final String address;
    private final Map<String, String> cookies = new LinkedHashMap<>();
    private @Nullable String csrf;

    private Browser(String address) {
        this.address = address;
    }

    /** A browser with no cookies yet, for a server at an address without a slash at its end. */
    public static Browser at(String address) {
        return new Browser(address);
    }

    public Answer get(String path) {
        return send(request(path).GET());
    }

    /** Asks as a script does, for JSON. */
    public Answer getJson(String path) {
        return send(request(path).header("Accept", "application/json").GET());
    }

    /** Posts a form with the token that the pages give to this session. */
    public Answer post(String path, Map<String, String> fields) {
        Map<String, String> all = new LinkedHashMap<>(fields);
        String token = token();
        if (token != null) {
            all.putIfAbsent("csrf", token);
        }
        return postAsIs(path, all);
    }

    public Answer post(String path) {
        return post(path, Map.of());
    }

    /** Posts just these fields, as a page of another site or an outdated form might. */
    public Answer postAsIs(String path, Map<String, String> fields) {
        return send(form(path, fields));
    }

    /** The request of a form, to add headers to and to {@link #send}. */
    public HttpRequest.Builder form(String path, Map<String, String> fields) {
        String body = fields.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
        return request(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body));
    }

    /** A request with this browser's cookies. */
    public HttpRequest.Builder request(String path) {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create(address + path)).timeout(Duration.ofSeconds(30));
        if (!cookies.isEmpty()) {
            request.header(
                    "Cookie",
                    cookies.entrySet().stream()
                            .map(cookie -> cookie.getKey() + "=" + cookie.getValue())
                            .collect(Collectors.joining("; ")));
        }
        return request;
    }

    public Answer send(HttpRequest.Builder request) {
        try {
            Answer answer = new Answer(CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofString()));
            keep(answer);
            return answer;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }

    /** The value of a cookie, or null. */
    public @Nullable String cookie(String name) {
        return cookies.get(name);
    }

    public void setCookie(String name, String value) {
        cookies.put(name, value);
        csrf = null;
    }

    /** The token that this session's forms carry; null when nobody is signed in. */
    public @Nullable String token() {
        if (csrf == null && !cookies.isEmpty()) {
            get("/help");
        }
        return csrf;
    }

    private void keep(Answer answer) {
        for (String line : answer.cookiesSet()) {
            for (HttpCookie cookie : HttpCookie.parse("Set-Cookie: " + line)) {
                if (cookie.getMaxAge() == 0) {
                    cookies.remove(cookie.getName());
                } else {
                    cookies.put(cookie.getName(), cookie.getValue());
                }
                if (cookie.getName().endsWith("warmshelf")) {
                    csrf = null;
                }
            }
        }
        String seen = answer.csrf();
        if (seen != null) {
            csrf = seen;
        }
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
