package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class ErrorPagesTest {
    private TestGroup group;

    @BeforeEach
    void open() {
        group = TestGroup.with(routes -> {
            routes.get(
                    "/broken",
                    ctx -> {
                        throw new IllegalStateException("the secret inside");
                    },
                    Role.ANYONE);
            routes.get("/endless", ctx -> endless(0), Role.ANYONE);
        });
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void a_fault_shows_a_reference_and_none_of_the_programs_insides() {
        Answer answer = group.signedIn(group.member()).get("/broken");

        assertThat(answer.status()).isEqualTo(500);
        assertThat(answer.text()).containsPattern("The reference [0-9a-f]{8} helps");
        assertThat(answer.body()).doesNotContain("secret", "IllegalState", "warmshelf.web", "\tat ");
    }

    @Test
    void a_script_gets_the_same_as_json() {
        Answer answer = group.stranger().getJson("/broken");

        assertThat(answer.status()).isEqualTo(500);
        assertThat(answer.body())
                .startsWith("{\"error\":\"Something went wrong")
                .doesNotContain("secret");
    }

    @Test
    void even_an_error_of_the_machine_shows_nothing_of_the_inside() {
        Answer answer = group.stranger().get("/endless");

        assertThat(answer.status()).isEqualTo(500);
        assertThat(answer.body()).doesNotContain("StackOverflow", "\tat ");
    }

    @Test
    void an_unknown_address_is_not_found_signed_in_or_not() {
        Answer signedIn = group.signedIn(group.member()).get("/nowhere");
        Answer stranger = group.stranger().get("/nowhere");

        assertThat(signedIn.status()).isEqualTo(404);
        assertThat(signedIn.text()).contains("There is nothing at this address.", "Tom Okafor");
        assertThat(stranger.status()).isEqualTo(404);
        assertThat(stranger.text()).contains("You can sign in");
    }

    @Test
    void a_wrong_kind_of_request_is_told_so() {
        Answer answer = group.stranger().postAsIs("/help", Map.of());

        assertThat(answer.status()).isEqualTo(405);
        assertThat(answer.text()).contains("does not take that kind of request");
    }

    @ParameterizedTest
    @ValueSource(strings = {"GET /%zz HTTP/1.1", "GET /help?x=%ff%zz HTTP/1.1", "NONSENSE /help HTTP/1.1"})
    void garbage_is_answered_without_the_programs_insides(String line) throws IOException {
        String answer = raw(line + "\r\nHost: localhost\r\nConnection: close\r\n\r\n");

        assertThat(answer).matches("(?s)HTTP/1.1 (200|4..) .*");
        assertThat(answer).doesNotContain("Exception", "\tat ", "Jetty");
    }

    @Test
    void an_address_full_of_marks_is_not_repeated_as_markup() {
        Answer answer = group.stranger().get("/%3Cscript%3Ealert(1)%3C/script%3E");

        assertThat(answer.status()).isEqualTo(404);
        assertThat(answer.body()).doesNotContain("<script>alert");
    }

    @Test
    void a_script_asking_for_nothing_gets_json_too() {
        Browser stranger = group.stranger();

        Answer answer = stranger.send(
                stranger.request("/nowhere").header("X-Requested-With", "fetch").GET());

        assertThat(answer.body()).isEqualTo("{\"error\":\"There is nothing at this address.\"}");
    }

    private String raw(String request) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", group.server().port())) {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @SuppressWarnings("InfiniteRecursion") // it is there to overflow the stack
    private static int endless(int depth) {
        return endless(depth + 1) + 1;
    }
}
