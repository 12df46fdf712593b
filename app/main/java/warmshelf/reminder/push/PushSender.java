package warmshelf.reminder.push;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.interaso.webpush.WebPush;
import com.interaso.webpush.WebPush.Urgency;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Duration;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** Encrypts and signs notices and hands them to push services. The library makes the bytes; the way there is Java's own. */
final class PushSender {
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final ObjectMapper JSON = new ObjectMapper();
    /** Every notice is filled up to a multiple of it, so that its length tells less of what it says. */
    private static final int BLOCK = 512;
    /** RFC 8030, section 5.4: at most 32 characters of base64url. */
    private static final int TOPIC_CHARACTERS = 32;

    private final WebPush webPush;
    private final EndpointRule rule;
    private final Clock clock;
    private final HttpClient client = HttpClient.newBuilder()
            .connectTimeout(Duration.ofSeconds(10))
            .followRedirects(HttpClient.Redirect.NEVER)
            .build();

    PushSender(PushKeys keys, EndpointRule rule, Clock clock) {
        this.webPush = new WebPush(keys.contact(), keys.pair());
        this.rule = rule;
        this.clock = clock;
    }

    PushAnswer send(PushTarget target, PushMessage notice) {
        if (rule.refusal(target.endpoint()).isPresent()) {
            return PushAnswer.refused("its address is not accepted");
        }
        try {
            URI endpoint = URI.create(target.endpoint());
            if (!rule.mayConnect(endpoint)) {
                return PushAnswer.refused("its server is not in the public network");
            }
            HttpResponse<Void> answer =
                    client.send(request(endpoint, target, notice), HttpResponse.BodyHandlers.discarding());
            return PushAnswer.of(
                    answer.statusCode(),
                    answer.headers().firstValue("Retry-After").orElse(null),
                    clock.instant());
        } catch (IOException unreachable) {
            return PushAnswer.later(String.valueOf(unreachable));
        } catch (InterruptedException stopping) {
            Thread.currentThread().interrupt();
            return PushAnswer.later("the server is stopping");
        }
    }

    private HttpRequest request(URI endpoint, PushTarget target, PushMessage notice) {
        long seconds = Duration.between(clock.instant(), notice.until()).toSeconds();
        HttpRequest.Builder request = HttpRequest.newBuilder(endpoint)
                .timeout(PATIENCE)
                .POST(HttpRequest.BodyPublishers.ofByteArray(webPush.getBody(
                        filled(json(notice)), CurvePoint.bytes(target.p256dh()), CurvePoint.bytes(target.auth()))));
        webPush.getHeaders(
                        target.endpoint(),
                        (int) Math.max(0, seconds),
                        topic(target, notice),
                        notice.urgent() ? Urgency.High : Urgency.Normal)
                .forEach(request::header);
        return request.build();
    }

    private static byte[] json(PushMessage notice) {
        Map<String, String> shown = new LinkedHashMap<>();
        shown.put("title", notice.title());
        shown.put("body", notice.body());
        shown.put("path", notice.path());
        try {
            return JSON.writeValueAsString(shown).getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException unwritable) {
            throw new IllegalStateException("a notice could not be written as JSON", unwritable);
        }
    }

    private static byte[] filled(byte[] json) {
        byte[] filled = Arrays.copyOf(json, (json.length / BLOCK + 1) * BLOCK);
        Arrays.fill(filled, json.length, filled.length, (byte) ' ');
        return filled;
    }

    /** The push service can read it, so it is a hash with the device's secret: the same for the same topic, and says nothing. */
    private static String topic(PushTarget target, PushMessage notice) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(target.auth().getBytes(StandardCharsets.UTF_8));
            byte[] hash = digest.digest((" " + notice.topic()).getBytes(StandardCharsets.UTF_8));
            return CurvePoint.text(hash).substring(0, TOPIC_CHARACTERS);
        } catch (NoSuchAlgorithmException absent) {
            throw new IllegalStateException("every Java has SHA-256", absent);
        }
    }
}
