package warmshelf.passkey;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PasskeyPartyTest {
    @ParameterizedTest
    @CsvSource({
        "https://Seeds.example.org, seeds.example.org, https://seeds.example.org",
        "https://seeds.example.org:443, seeds.example.org, https://seeds.example.org",
        "https://seeds.example.org:8443, seeds.example.org, https://seeds.example.org:8443",
        "http://localhost:7070, localhost, http://localhost:7070",
        "http://localhost, localhost, http://localhost"
    })
    void an_address_by_https_or_of_this_machine_names_the_party_and_the_origin(String base, String id, String origin) {
        assertThat(PasskeyParty.at(base)).contains(new PasskeyParty(id, origin));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "http://seeds.example.org",
                "http://192.168.1.20:7070",
                "https://192.168.1.20",
                "https://[::1]:7070",
                "http://127.0.0.1:7070"
            })
    void no_browser_makes_one_for_plain_http_or_for_a_number(String base) {
        assertThat(PasskeyParty.at(base)).isEmpty();
    }

    @Test
    void no_address_is_guessed() {
        assertThat(PasskeyParty.at(null)).isEmpty();
    }
}
