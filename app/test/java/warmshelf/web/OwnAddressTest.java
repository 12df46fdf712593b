package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OwnAddressTest {
    // RFC 6761 (localhost), RFC 1122 (127.0.0.0/8), RFC 4291 (::1, ::)
    @ParameterizedTest
    @ValueSource(
            strings = {
                "http://localhost:7070",
                "http://LOCALHOST",
                "https://seeds.localhost",
                "http://127.0.0.1:7070",
                "http://127.8.9.10",
                "http://0.0.0.0:7070",
                "http://[::1]:7070",
                "http://[0:0:0:0:0:0:0:1]",
                "http://[::]:7070"
            })
    void no_other_device_opens_an_address_that_names_the_machine_it_is_typed_on(String address) {
        assertThat(OwnAddress.isOfThisMachineOnly(address)).isTrue();
    }

    // RFC 1918 (192.168.0.0/16, 10.0.0.0/8), RFC 6762 (.local), RFC 2606 (example.org)
    @ParameterizedTest
    @ValueSource(
            strings = {
                "https://seeds.example.org",
                "http://192.168.1.20:7070",
                "http://10.0.0.7",
                "http://cellar.local",
                "http://localhost.example.org",
                "http://127.example.org",
                "http://[fd00::1]:7070",
                "http://[2001:db8::1]"
            })
    void others_open_an_address_that_leads_to_one_machine(String address) {
        assertThat(OwnAddress.isOfThisMachineOnly(address)).isFalse();
    }

    @Test
    void an_address_without_a_host_is_not_judged() {
        assertThat(OwnAddress.isOfThisMachineOnly("http://a_b:7070")).isFalse();
    }
}
