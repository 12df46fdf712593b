package warmshelf.reminder.push;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.words.Units;

class PublicEndpointsTest {
    private final PublicEndpoints rule = new PublicEndpoints();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "https://push.example.org/send/abc:DEF_123-x?y=z",
                "https://updates.push.example.net:443/wpush/v2/abc",
                "https://a-b.xn--bcher-kva.example/1"
            })
    void an_address_as_browsers_give_it_is_taken(String endpoint) {
        assertThat(rule.refusal(endpoint)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | is empty",
                "http://push.example.org/1 | does not begin with https://",
                "file:///etc/passwd | does not begin with https://",
                "push.example.org/1 | does not begin with https://",
                "https:///1 | names a user or no server",
                "https:opaque | names a user or no server",
                "https://tom@push.example.org/1 | names a user or no server",
                "https://push.example.org@127.0.0.1/ | names a user or no server",
                "https://localhost/1 | does not name its server by a public name",
                "https://localhost./1 | does not name its server by a public name",
                "https://127.0.0.1/1 | does not name its server by a public name",
                "https://127.1/1 | does not name its server by a public name",
                "https://2130706433/1 | does not name its server by a public name",
                "https://0x7f.0x1/1 | does not name its server by a public name",
                "https://10.0.0.7/1 | does not name its server by a public name",
                "https://169.254.169.254/latest/meta-data | does not name its server by a public name",
                "https://[::1]/1 | does not name its server by a public name",
                "https://[fd00::1]/1 | does not name its server by a public name",
                "https://push_service.example.org/1 | does not name its server by a public name",
                "https://push.example.org:8443/1 | asks for port 8443, and only 443 is used",
                "https://push.example.org:22/1 | asks for port 22, and only 443 is used",
                "https://push.example.org/1#part | has a part after '#'",
                "https://push.example.org/a b | is no address",
            })
    void any_other_is_refused_with_its_reason(String endpoint, String reason) {
        assertThat(rule.refusal(endpoint))
                .hasValueSatisfying(no -> assertThat(no.words(Units.METRIC))
                        .isEqualTo(
                                "The device’s push address %s; an https address at a public name, as browsers give it, is accepted."
                                        .formatted(reason)));
    }

    @Test
    void a_long_one_is_refused_with_its_length() {
        assertThat(rule.refusal("https://push.example.org/" + "a".repeat(1000)))
                .hasValueSatisfying(no ->
                        assertThat(no.words(Units.METRIC)).contains("has 1,025 characters, and at most 1,000 fit"));
    }

    /** Ranges of the IANA registries of special-purpose addresses. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "127.0.0.1",
                "127.255.0.9",
                "0.0.0.0",
                "0.1.2.3",
                "10.1.2.3",
                "172.16.0.1",
                "172.31.255.255",
                "192.168.1.1",
                "169.254.169.254",
                "100.64.0.1",
                "100.127.255.255",
                "192.0.0.8",
                "192.0.2.1",
                "192.88.99.1",
                "198.18.0.1",
                "198.19.255.255",
                "198.51.100.7",
                "203.0.113.9",
                "224.0.0.1",
                "240.0.0.1",
                "255.255.255.255",
                "::",
                "::1",
                "::ffff:127.0.0.1",
                "::ffff:10.0.0.1",
                "::127.0.0.1",
                "fe80::1",
                "fec0::1",
                "fc00::1",
                "fd12::1",
                "ff02::1",
                "64:ff9b::7f00:1",
                "2002:7f00:1::",
                "2001::1",
                "2001:db8::1"
            })
    void a_name_that_leads_here_or_into_a_local_network_is_not_connected_to(String address) throws IOException {
        assertThat(leadsTo(address)).isFalse();
        assertThat(leadsTo("8.8.8.8", address)).as("beside a public one").isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "8.8.8.8",
                "1.1.1.1",
                "172.15.0.1",
                "172.32.0.1",
                "100.63.0.1",
                "100.128.0.1",
                "192.0.1.1",
                "198.17.0.1",
                "198.20.0.1",
                "223.255.255.1",
                "2606:4700::1111",
                "2a00:1450:4001::1"
            })
    void a_name_that_leads_into_the_public_network_is(String address) throws IOException {
        assertThat(leadsTo(address)).isTrue();
    }

    @Test
    void a_name_that_leads_nowhere_is_not() throws IOException {
        assertThat(leadsTo()).isFalse();
    }

    private static boolean leadsTo(String... addresses) throws IOException {
        List<InetAddress> found = new ArrayList<>();
        for (String address : addresses) {
            found.add(InetAddress.getByName(address));
        }
        return new PublicEndpoints(name -> found).mayConnect(URI.create("https://push.example.org/1"));
    }
}
