package warmshelf.words;

import static warmshelf.words.WordsSentences.SAY;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntFunction;

/**
 * Reads typed text into checked values, collecting one problem sentence per field. Each sentence names the field, what was
 * given and what is accepted. The text as typed is kept, so that a page can show it again.
 *
 * <p>After a problem the returned value is only a harmless stand-in: ask {@link #ok()} before using any of them.
 */
public final class FormReader {
    /** Letters of a field that come back with a form: more than anybody types, also of names that are pasted. */
    private static final int MOST_SHOWN = 20_000;

    private static final int SHOWN = 40;

    private final Map<String, List<String>> typed;
    private final Map<String, String> problems = new LinkedHashMap<>();

    public FormReader(Map<String, List<String>> typed) {
        this.typed = typed;
    }

    public boolean ok() {
        return problems.isEmpty();
    }

    /** Problem sentences by field name, in the order they were found. */
    public Map<String, String> problems() {
        return problems;
    }

    /** The text as typed, by field name; at most 20,000 characters of each. */
    public Map<String, String> typed() {
        Map<String, String> texts = new LinkedHashMap<>();
        typed.forEach((name, values) -> texts.put(name, values.isEmpty() ? "" : shortened(values.get(0), MOST_SHOWN)));
        return texts;
    }

    /** What was typed, without its problems, and with other text in one field. */
    public FormReader retyped(String field, String text) {
        Map<String, List<String>> texts = new LinkedHashMap<>(typed);
        texts.put(field, List.of(text));
        return new FormReader(texts);
    }

    public void refuse(String field, String sentence) {
        problems.putIfAbsent(field, sentence);
    }

    /** The trimmed text, or empty. */
    public String text(String field) {
        List<String> values = typed.getOrDefault(field, List.of());
        return values.isEmpty() ? "" : values.get(0).strip();
    }

    public String optionalText(String field, String label, int longest) {
        String text = text(field);
        if (text.length() > longest) {
            refuse(field, SAY.tooLong(label, text.length(), longest));
        } else if (text.chars().anyMatch(c -> Character.isISOControl(c) && c != '\n' && c != '\r' && c != '\t')) {
            refuse(field, SAY.controlCharacter(label));
        }
        return text;
    }

    public String requiredText(String field, String label, int longest) {
        String text = optionalText(field, label, longest);
        if (text.isEmpty()) {
            refuse(field, SAY.empty(label));
        }
        return text;
    }

    public int wholeNumber(String field, String label, int least, int most) {
        Optional<Integer> number = optionalWholeNumber(field, label, least, most);
        if (number.isEmpty() && !problems.containsKey(field)) {
            refuse(field, SAY.numberEmpty(label, Numbers.grouped(least), Numbers.grouped(most)));
        }
        return number.orElse(least);
    }

    /** A year, which is written without a mark between its digits. */
    public int year(String field, String label, int oldest, int newest) {
        Optional<Integer> year = optionalWithin(field, label, oldest, newest, Integer::toString);
        if (year.isEmpty() && !problems.containsKey(field)) {
            refuse(field, SAY.numberEmpty(label, Integer.toString(oldest), Integer.toString(newest)));
        }
        return year.orElse(oldest);
    }

    public Optional<Integer> optionalWholeNumber(String field, String label, int least, int most) {
        return optionalWithin(field, label, least, most, Numbers::grouped);
    }

    private Optional<Integer> optionalWithin(
            String field, String label, int least, int most, IntFunction<String> written) {
        String text = text(field);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            int number = Integer.parseInt(text);
            if (number >= least && number <= most) {
                return Optional.of(number);
            }
        } catch (NumberFormatException notANumber) {
            // falls through to the sentence below, which covers both cases
        }
        refuse(field, SAY.wholeNumberUnfit(label, shown(text), written.apply(least), written.apply(most)));
        return Optional.empty();
    }

    /** The number; empty where nothing was typed. */
    public OptionalDouble optionalDecimal(String field, String label, double least, double most) {
        return text(field).isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(decimal(field, label, least, most));
    }

    public double decimal(String field, String label, double least, double most) {
        String text = text(field);
        try {
            double number = new BigDecimal(shortened(text, SHOWN).replace(',', '.')).doubleValue();
            if (number >= least && number <= most) {
                return number;
            }
        } catch (NumberFormatException notANumber) {
            // falls through to the sentence below, which covers both cases
        }
        refuse(field, SAY.numberUnfit(label, shown(text), Numbers.plain(least), Numbers.plain(most)));
        return least;
    }

    public LocalDate date(String field, String label) {
        String text = text(field);
        try {
            LocalDate date = LocalDate.parse(text);
            if (date.getYear() >= 1900 && date.getYear() <= 2200) {
                return date;
            }
        } catch (DateTimeParseException notADate) {
            // falls through to the sentence below, which covers both cases
        }
        refuse(field, SAY.dateUnfit(label, shown(text)));
        return LocalDate.EPOCH;
    }

    public String choice(String field, String label, Collection<String> accepted) {
        String text = text(field);
        if (!accepted.contains(text)) {
            refuse(field, SAY.choiceUnfit(label, shown(text), String.join(", ", accepted)));
        }
        return text;
    }

    public boolean ticked(String field) {
        return !text(field).isEmpty();
    }

    private static String shown(String text) {
        return shortened(text, SHOWN);
    }

    private static String shortened(String text, int longest) {
        return text.length() <= longest ? text : text.substring(0, longest) + "…";
    }
}
