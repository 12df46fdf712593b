package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what a phone sends at once: {sentAt, member, entries:[...]}. Each entry is read by {@link SentForm}. */
final class BatchForm {
    static final int MOST = 200;
    private static final int SHOWN = 40;
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private String problem = "";

    /**
     * What was sent.
     *
     * @param sentAt by the phone's clock
     * @param member whose ticks they are, as the phone believes; empty: whoever is signed in
     */
    record Batch(Instant sentAt, String member, List<JsonNode> entries) {}

    /** Why there is no batch, in a sentence. */
    String problem() {
        return problem;
    }

    /** The batch; empty when it cannot be read as a whole. */
    Optional<Batch> batch(String body) {
        JsonNode whole;
        try {
            whole = JSON.readTree(body);
        } catch (JacksonException malformed) {
            return refuse(SAY.notJson());
        }
        JsonNode entries = whole.path("entries");
        if (!whole.isObject() || !entries.isArray()) {
            return refuse(SAY.noEntries());
        }
        if (entries.size() > MOST) {
            return refuse(SAY.tooManyEntries(entries.size(), MOST));
        }
        Optional<Instant> sentAt = moment(whole.path("sentAt"));
        if (sentAt.isEmpty()) {
            return refuse(SAY.sentAtUnfit(shown(whole.path("sentAt"))));
        }
        List<JsonNode> each = new ArrayList<>();
        entries.forEach(each::add);
        return Optional.of(new Batch(sentAt.get(), whole.path("member").asText(""), each));
    }

    /** A moment with its zone; empty where there is none within the years that people live in. */
    static Optional<Instant> moment(JsonNode node) {
        try {
            OffsetDateTime moment = OffsetDateTime.parse(node.asText(""));
            return moment.getYear() >= 1970 && moment.getYear() <= 2200
                    ? Optional.of(moment.toInstant())
                    : Optional.empty();
        } catch (DateTimeParseException notAMoment) {
            return Optional.empty();
        }
    }

    static String shown(JsonNode node) {
        String text = node.isValueNode() ? node.asText("") : node.isMissingNode() ? "" : "…";
        return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
    }

    private Optional<Batch> refuse(String sentence) {
        problem = sentence;
        return Optional.empty();
    }
}
