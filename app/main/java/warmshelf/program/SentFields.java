package warmshelf.program;

import static warmshelf.program.ProgramSentences.SAY;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads a JSON object strictly: a field that is not known and a value of another type are told, each by the field's name. What a
 * value may be is for those to judge who judge it on a page.
 */
final class SentFields {
    private static final int SHOWN = 40;
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            // as it was written: 1e400 is no infinity
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private final JsonNode object;
    private final String within;
    private final Map<String, String> problems;

    private SentFields(JsonNode object, String within, Map<String, String> problems) {
        this.object = object;
        this.within = within;
        this.problems = problems;
    }

    /** What was sent as a whole; empty where it is no JSON object. */
    static Optional<SentFields> of(String text) {
        try {
            JsonNode whole = JSON.readTree(text);
            return whole.isObject() ? Optional.of(new SentFields(whole, "", new LinkedHashMap<>())) : Optional.empty();
        } catch (JacksonException malformed) {
            return Optional.empty();
        }
    }

    /** A sentence for each field that cannot be used, of the whole. */
    Map<String, String> problems() {
        return problems;
    }

    boolean ok() {
        return problems.isEmpty();
    }

    JsonNode node() {
        return object;
    }

    /** Refuses every field but these. */
    SentFields only(Set<String> known) {
        for (Iterator<String> names = object.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (!known.contains(name)) {
                refuse(
                        shown(name),
                        SAY.fieldUnknown(
                                shown(name),
                                String.join(", ", known.stream().sorted().toList())));
            }
        }
        return this;
    }

    void refuse(String field, String sentence) {
        problems.putIfAbsent(within + field, sentence);
    }

    /** The number as it was written; empty where none was. */
    String number(String field) {
        return value(field, object.path(field).isNumber(), SAY.aNumber());
    }

    /** The text; empty where none was. */
    String text(String field) {
        return value(field, object.path(field).isTextual(), SAY.aText());
    }

    /** Whether it is true; false where nothing was said. */
    boolean truth(String field) {
        return value(field, object.path(field).isBoolean(), SAY.trueOrFalse()).equals("true");
    }

    private String value(String field, boolean fits, String accepted) {
        JsonNode value = object.path(field);
        if (value.isMissingNode() || value.isNull()) {
            return "";
        }
        if (!fits) {
            refuse(field, SAY.otherType(field, shown(value.toString()), accepted));
            return "";
        }
        return value.asText();
    }

    /** A list of objects; empty, with a problem, where it is none or has too many. */
    List<SentFields> objects(String field, int most) {
        JsonNode list = object.path(field);
        if (!list.isArray() || list.isEmpty()) {
            refuse(field, SAY.noList(field, most));
            return List.of();
        }
        if (list.size() > most) {
            refuse(field, SAY.listTooLong(field, list.size(), most));
            return List.of();
        }
        List<SentFields> objects = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            SentFields one = new SentFields(list.get(i), field + "/" + i + "/", problems);
            if (!list.get(i).isObject()) {
                problems.put(
                        field + "/" + i, SAY.otherType(field, shown(list.get(i).toString()), SAY.anObject()));
            }
            objects.add(one);
        }
        return objects;
    }

    private static String shown(String text) {
        return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
    }
}
