package warmshelf.program;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpRequest;
import java.util.HashMap;
import java.util.Map;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

/** A script of a member's with a token of its own, and nothing else. */
final class Script {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Browser http;
    private final String token;

    private Script(Browser http, String token) {
        this.http = http;
        this.token = token;
    }

    static Script with(TestGroup group, String token) {
        return new Script(group.stranger(), token);
    }

    /** A script whose token a person makes on the page, with these scopes. */
    static Script of(TestGroup group, Browser person, TokenScope... scopes) {
        return with(group, token(person, Map.of("name", "cellar sensor"), scopes));
    }

    /** A token made on the page. */
    static String token(Browser person, Map<String, String> typed, TokenScope... scopes) {
        Map<String, String> fields = new HashMap<>(typed);
        for (TokenScope scope : scopes) {
            fields.put(scope.field(), "yes");
        }
        Answer answer = person.post("/tokens", fields);
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
        String body = answer.body();
        int value = body.indexOf("value=\"warmshelf_");
        return body.substring(value + 7, body.indexOf('"', value + 7));
    }

    String token() {
        return token;
    }

    Answer get(String path) {
        return http.send(authorized(path, "Bearer " + token).GET());
    }

    /** The answer as JSON, which it has to be. */
    JsonNode json(String path) {
        Answer answer = get(path);
        assertThat(answer.status()).as(answer.body()).isEqualTo(200);
        assertThat(answer.cookiesSet()).isEmpty();
        return json(answer);
    }

    static JsonNode json(Answer answer) {
        try {
            return JSON.readTree(answer.body());
        } catch (IOException malformed) {
            throw new UncheckedIOException(malformed);
        }
    }

    Answer post(String path, String key, String body) {
        return http.send(sending(path, key, body).header("Content-Type", "application/json"));
    }

    /** The request of a sending, to add headers to. */
    HttpRequest.Builder sending(String path, String key, String body) {
        return authorized(path, "Bearer " + token)
                .header("Idempotency-Key", key)
                .POST(HttpRequest.BodyPublishers.ofString(body));
    }

    HttpRequest.Builder authorized(String path, String authorization) {
        return http.request("/api/v1" + path).header("Authorization", authorization);
    }

    Answer send(HttpRequest.Builder request) {
        return http.send(request);
    }
}
