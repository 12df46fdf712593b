package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.testing.TestGroup;

class KnownHostsTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "localhost:7070",
                "127.0.0.1",
                "192.168.1.20:7070",
                "[fe80::1]:7070",
                "oldlaptop",
                "OldLaptop.local:7070",
                "seeds.lan",
                "seeds.home.arpa",
                "seeds.example.org",
                "seeds.example.org.:443"
            })
    void names_of_machines_nearby_and_ones_own_are_known(String host) {
        assertThat(new KnownHosts("https://seeds.example.org").know(host)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"evil.example.com", "seeds.example.org.evil.example.com", "127.0.0.1.evil.example.com", "", "a b"
            })
    void whatever_else_was_pointed_here_is_not(String host) {
        assertThat(new KnownHosts("https://seeds.example.org").know(host)).isFalse();
        assertThat(new KnownHosts(null).know(host)).isFalse();
    }

    @Test
    void a_request_for_another_host_is_refused_with_a_sentence() throws IOException {
        try (TestGroup group = TestGroup.open();
                Socket socket = new Socket(InetAddress.getLoopbackAddress(), group.port())) {
            // Java's own client sets the host itself
            socket.getOutputStream()
                    .write("GET /sign-in HTTP/1.0\r\nHost: evil.example.com\r\n\r\n"
                            .getBytes(StandardCharsets.US_ASCII));

            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

            assertThat(answer).startsWith("HTTP/1.1 421").contains("is not known by the name evil.example.com");
        }
    }
}
