package warmshelf.reminder.push;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.security.Signature;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.MutableClock;
import warmshelf.testing.TestGroup;

class PushSenderTest {
    private static final PushKeys.Texts TEXTS = PushKeys.fresh();
    private static final PushKeys KEYS = PushKeys.of(TEXTS.publicKey(), TEXTS.privateKey(), "mailto:seeds@example.org")
            .orElseThrow();

    private final MutableClock clock = new MutableClock(TestGroup.MORNING);
    private final PushService service = PushService.open();
    private final PushReader device = PushReader.fresh();
    private final PushSender sender = new PushSender(KEYS, service.rule(), clock);

    @AfterEach
    void close() {
        service.close();
    }

    /** RFC 8291, section 5 and appendix A: its message, its keys, its words. */
    @Test
    void the_tests_own_reader_reads_the_example_of_rfc_8291() {
        PushReader example = PushReader.of(
                "q1dXpw3UpT5VOmu_cf_v6ih07Aems3njxI-JWgLcM94",
                "BCVxsr7N_eNgVRqvHtD0zTZsEc6-VV-JvLexhqUzORcxaOzi6-AYWXvTBHm4bjyPjs7Vd8pZGH6SRpkNtoIAiw4",
                "BTBZMqHH6r4Tts7J_aSIgg");

        assertThat(example.read(PushReader.bytes("DGv6ra1nlYgDCS1FRnbzlwAAEABBBP4z9KsN6nGRTbVYI_c7VJSPQTBtkgcy27ml"
                        + "mlMoZIIgDll6e3vCYLocInmYWAmS6TlzAC8wEqKK6PBru3jl7A_yl95bQpu6cVPT"
                        + "pK4Mqgkf1CXztLVBSt2Ks3oZwbuwXPXLWyouBWLVWGNWQexSgSxsj_Qulcy4a-fN")))
                .isEqualTo("When I grow up, I want to be a watermelon");
    }

    @Test
    void a_device_reads_with_its_own_key_what_it_was_sent() throws IOException {
        assertThat(sender.send(target(), notice("Mat M1 is too hot")).kind()).isEqualTo(PushAnswer.Kind.TAKEN);

        PushService.Received received = service.received().get(0);
        String words = device.read(received.body());
        JsonNode shown = new ObjectMapper().readTree(words);
        assertThat(shown.get("title").textValue()).isEqualTo("Mat M1 is too hot");
        assertThat(shown.get("body").textValue()).isEqualTo("Hall cellar · North · shelf 2");
        assertThat(shown.get("path").textValue()).isEqualTo("/mats/1");
        assertThat(words.getBytes(StandardCharsets.UTF_8)).hasSize(512);
        assertThat(received.header("Content-Encoding")).isEqualTo("aes128gcm");
    }

    @Test
    void two_notices_with_the_same_words_share_no_bytes_after_the_header() {
        sender.send(target(), notice("Mat M1 is too hot"));
        sender.send(target(), notice("Mat M1 is too hot"));

        List<byte[]> bodies =
                service.received().stream().map(PushService.Received::body).toList();
        assertThat(bodies.get(0)).hasSameSizeAs(bodies.get(1));
        assertThat(Arrays.copyOf(bodies.get(0), 16)).as("salt").isNotEqualTo(Arrays.copyOf(bodies.get(1), 16));
        assertThat(new String(bodies.get(0), StandardCharsets.ISO_8859_1)).doesNotContain("Mat", "title");
    }

    @Test
    void the_push_service_is_told_how_long_and_how_urgently_but_not_of_what() {
        sender.send(target(), notice("Mat M1 is too hot"));

        PushService.Received received = service.received().get(0);
        assertThat(received.header("TTL")).isEqualTo("21600");
        assertThat(received.header("Urgency")).isEqualTo("high");
        assertThat(received.header("Topic")).matches("[A-Za-z0-9_-]{32}").doesNotContain("mat");
    }

    /** RFC 8292, section 2: ES256 (RFC 7518, section 3.4) over header and claims; the key in section 3.2's header. */
    @Test
    void the_signature_is_ours_for_that_service_and_lasts_a_day_at_most() throws Exception {
        sender.send(target(), notice("Mat M1 is too hot"));

        Matcher header = Pattern.compile("vapid t=([^.]+)\\.([^.]+)\\.([^,]+), ?k=(.+)")
                .matcher(service.received().get(0).header("Authorization"));
        assertThat(header.matches()).isTrue();
        assertThat(header.group(4)).isEqualTo(TEXTS.publicKey());
        Signature signature = Signature.getInstance("SHA256withECDSAinP1363Format");
        signature.initVerify(PushReader.publicKey(PushReader.bytes(TEXTS.publicKey())));
        signature.update((header.group(1) + "." + header.group(2)).getBytes(StandardCharsets.US_ASCII));
        assertThat(signature.verify(PushReader.bytes(header.group(3)))).isTrue();
        JsonNode claims = new ObjectMapper().readTree(PushReader.bytes(header.group(2)));
        assertThat(claims.get("aud").textValue()).isEqualTo(service.origin());
        assertThat(claims.get("sub").textValue()).isEqualTo("mailto:seeds@example.org");
        // the library signs by the machine's own clock, as push services check by theirs
        Instant ends = Instant.ofEpochSecond(claims.get("exp").longValue());
        assertThat(ends).isBetween(Instant.now(), Instant.now().plus(Duration.ofHours(24)));
    }

    @Test
    void a_redirect_is_not_followed() {
        service.redirect(service.address("/elsewhere"));

        assertThat(sender.send(target(), notice("Mat M1 is too hot")).kind()).isEqualTo(PushAnswer.Kind.REFUSED);
        assertThat(service.received()).hasSize(1);
    }

    @Test
    void a_name_that_leads_into_a_local_network_by_now_is_not_asked() {
        EndpointRule rule = new PublicEndpoints(name -> List.of(InetAddress.getLoopbackAddress()));
        PushTarget target = new PushTarget("https://push.example.org/1", device.p256dh(), device.auth());

        PushAnswer answer = new PushSender(KEYS, rule, clock).send(target, notice("Mat M1 is too hot"));

        assertThat(answer).isEqualTo(PushAnswer.refused("its server is not in the public network"));
    }

    @Test
    void a_service_that_cannot_be_reached_is_tried_later() {
        service.close();

        assertThat(sender.send(target(), notice("Mat M1 is too hot")).kind()).isEqualTo(PushAnswer.Kind.LATER);
    }

    @Test
    void no_text_of_the_keys_holds_the_private_one() {
        assertThat(KEYS.toString() + TEXTS).doesNotContain(TEXTS.privateKey());
    }

    private PushTarget target() {
        return new PushTarget(service.address("/to/1"), device.p256dh(), device.auth());
    }

    private PushMessage notice(String title) {
        return new PushMessage(
                "alarm 1",
                title,
                "Hall cellar · North · shelf 2",
                "/mats/1",
                true,
                "mat 1",
                clock.instant().plus(Duration.ofHours(6)));
    }
}
