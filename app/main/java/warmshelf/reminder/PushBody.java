package warmshelf.reminder;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.LinkedHashMap;
import java.util.Map;

/** Reads the address of a device as a worker sends it. */
final class PushBody {
    private static final ObjectMapper JSON = new ObjectMapper();

    private PushBody() {}

    /** The texts of a JSON object by their names; nothing of what is no such object. */
    static Map<String, String> read(String body) {
        Map<String, String> texts = new LinkedHashMap<>();
        try {
            JsonNode whole = JSON.readTree(body);
            whole.properties().forEach(each -> {
                if (each.getValue().isTextual()) {
                    texts.put(each.getKey(), each.getValue().textValue());
                }
            });
        } catch (JsonProcessingException notJson) {
            // nothing is given then, and each field says what is accepted
        }
        return texts;
    }
}
