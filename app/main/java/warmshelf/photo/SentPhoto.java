package warmshelf.photo;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Base64;
import java.util.Optional;
import java.util.UUID;

/**
 * A picture as a phone sends it: {id, entry, member, jpeg}, the file in base64 (RFC 4648).
 *
 * @param member whose it is, as the phone believes; empty: whoever is signed in
 */
// The bytes of a file, which nobody compares.
@SuppressWarnings("ArrayRecordComponent")
record SentPhoto(UUID id, UUID entry, String member, byte[] file) {
    private static final JsonMapper JSON = new JsonMapper();

    /** Empty where something lacks or is malformed. */
    static Optional<SentPhoto> read(String body) {
        try {
            JsonNode whole = JSON.readTree(body);
            return Optional.of(new SentPhoto(
                    UUID.fromString(whole.path("id").asText("")),
                    UUID.fromString(whole.path("entry").asText("")),
                    whole.path("member").asText(""),
                    Base64.getDecoder().decode(whole.path("jpeg").asText(""))));
        } catch (JacksonException | IllegalArgumentException malformed) {
            return Optional.empty();
        }
    }
}
