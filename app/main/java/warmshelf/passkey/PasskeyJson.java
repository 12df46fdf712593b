package warmshelf.passkey;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;

/** What a browser is asked, as text. */
final class PasskeyJson {
    private static final ObjectMapper JSON = new ObjectMapper();

    private PasskeyJson() {}

    static String text(Object value) {
        try {
            return JSON.writeValueAsString(value);
        } catch (JsonProcessingException neverHappens) {
            // of texts, numbers and lists of them
            throw new IllegalStateException(neverHappens);
        }
    }
}
