package warmshelf.reminder.push;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CurvePointTest {
    /** The keys of RFC 8291, appendix A, and of RFC 8292, section 2.4. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "BCVxsr7N_eNgVRqvHtD0zTZsEc6-VV-JvLexhqUzORcxaOzi6-AYWXvTBHm4bjyPjs7Vd8pZGH6SRpkNtoIAiw4",
                "BP4z9KsN6nGRTbVYI_c7VJSPQTBtkgcy27mlmlMoZIIgDll6e3vCYLocInmYWAmS6TlzAC8wEqKK6PBru3jl7A8",
                "BDd3_hVL9fZi9Ybo2UUzA284WG5FZR30_95YeZJsiApwXKpNcF1rRPF3foIiBHXRdJI2Qhumhf6_LFTeZaNndIo"
            })
    void published_keys_lie_on_the_curve(String key) {
        assertThat(CurvePoint.isPublicKey(key)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "nonsense",
                "not base64 !",
                "BCVxsr7N_eNgVRqvHtD0zTZsEc6-VV-JvLexhqUzORcxaOzi6-AYWXvTBHm4bjyPjs7Vd8pZGH6SRpkNtoIAiw8",
                "BCVxsr7N_eNgVRqvHtD0zTZsEc6-VV-JvLexhqUzORcxaOzi6-AYWXvTBHm4bjyPjs7Vd8pZGH6SRpkNtoIAAAA",
                "BAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA",
                "AiVxsr7N_eNgVRqvHtD0zTZsEc6-VV-JvLexhqUzORcx"
            })
    void a_point_off_the_curve_or_no_point_is_no_key(String key) {
        assertThat(CurvePoint.isPublicKey(key)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA",
                "_____________________________________________w",
                "__________________________________________8",
                "q1dXpw3UpT5VOmu_cf_v6ih07Aems3njxI-JWgLc"
            })
    void nought_the_order_itself_or_a_wrong_length_is_no_private_key(String key) {
        assertThat(CurvePoint.isPrivateKey(key)).isFalse();
    }
}
