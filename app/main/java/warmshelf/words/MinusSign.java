package warmshelf.words;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads below-zero figures as phones give them: with a dash of any length, or with a tick beside a keypad that has none. */
public final class MinusSign {
    private MinusSign() {}

    /** The dashes that stand for a minus, as the plain one. */
    public static String plain(String figure) {
        String text = figure.strip();
        return text.startsWith("−") || text.startsWith("–") ? "-" + text.substring(1) : text;
    }

    /** What was typed, with plain minus signs in some fields. */
    public static Map<String, List<String>> plain(Map<String, List<String>> typed, String... fields) {
        Map<String, List<String>> plain = new LinkedHashMap<>(typed);
        for (String field : fields) {
            plain.computeIfPresent(field, (name, values) -> values.isEmpty() ? values : List.of(plain(values.get(0))));
        }
        return plain;
    }

    /** What was typed, with a minus before a figure whose tick says that it is below zero. */
    public static Map<String, List<String>> ticked(Map<String, List<String>> typed, String field, String tick) {
        Map<String, List<String>> signed = plain(typed, field);
        List<String> values = signed.getOrDefault(field, List.of());
        boolean below = typed.getOrDefault(tick, List.of()).stream().anyMatch(text -> !text.isBlank());
        if (below && !values.isEmpty() && values.get(0).matches("\\d.*")) {
            signed.put(field, List.of("-" + values.get(0)));
        }
        return signed;
    }
}
