package warmshelf.plan.engine;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;
import warmshelf.Given;
import warmshelf.allocation.Band;
import warmshelf.allocation.Slot;

/**
 * One object of a file and where in the file it stands. Whatever cannot be used is a {@link BadInput} whose sentence names
 * the field, what was given and what is accepted.
 */
final class JsonFields {
    /** Set-points lie between these, so that the degrees of a band fit into one word of bits. */
    static final int COLDEST = 0;

    static final int HOTTEST = 60;

    private static final int MOST_ITEMS = 200_000;

    private final JsonNode node;
    private final String where;

    JsonFields(JsonNode node, String where) {
        if (!node.isObject()) {
            throw new BadInput("%s was %s; an object in braces is accepted.".formatted(where, shown(node)));
        }
        this.node = node;
        this.where = where;
    }

    /** Refuses fields that nobody would read, most of them mistyped. */
    JsonFields only(String... known) {
        Set<String> accepted = Set.of(known);
        for (String name : (Iterable<String>) node::fieldNames) {
            if (!accepted.contains(name)) {
                throw new BadInput("%s has a field '%s' that is not known; accepted are %s."
                        .formatted(where, Given.shown(name), String.join(", ", new TreeSet<>(accepted))));
            }
        }
        return this;
    }

    boolean has(String name) {
        return node.hasNonNull(name);
    }

    /** The same object, named by its own id from here on. */
    JsonFields namedByItsId() {
        return new JsonFields(node, "%s ('%s')".formatted(where, Given.shown(text("id"))));
    }

    String text(String name) {
        JsonNode value = needed(name);
        if (!value.isTextual() || value.textValue().isBlank()) {
            throw wrong(name, value, "a text in quotes");
        }
        return value.textValue();
    }

    @Nullable
    String textOrNull(String name) {
        return has(name) ? text(name) : null;
    }

    int whole(String name, int least, int most) {
        return whole(name, needed(name), least, most);
    }

    int whole(String name, int least, int most, int otherwise) {
        return has(name) ? whole(name, least, most) : otherwise;
    }

    @Nullable
    Integer wholeOrNull(String name, int least, int most) {
        return has(name) ? whole(name, least, most) : null;
    }

    double decimal(String name, double least, double most) {
        JsonNode value = needed(name);
        if (!value.isNumber() || value.doubleValue() < least || value.doubleValue() > most) {
            throw wrong(name, value, "a number from %s to %s".formatted(least, most));
        }
        return value.doubleValue();
    }

    LocalDate date(String name) {
        JsonNode value = needed(name);
        try {
            return LocalDate.parse(value.isTextual() ? value.textValue() : "");
        } catch (DateTimeParseException notADate) {
            throw wrong(name, value, "a date such as \"2027-03-01\"");
        }
    }

    /** Whether it is true; no where it is left out. */
    boolean yes(String name) {
        if (!has(name)) {
            return false;
        }
        JsonNode value = needed(name);
        if (!value.isBoolean()) {
            throw wrong(name, value, "true or false");
        }
        return value.booleanValue();
    }

    /** Two dates, {@code from} and the day after the last, {@code to}. */
    DayRange days() {
        LocalDate from = date("from");
        LocalDate to = date("to");
        if (!from.isBefore(to)) {
            throw new BadInput("%s: 'to' was %s, which is not after 'from', %s; 'to' is the day after the last day."
                    .formatted(where, to, from));
        }
        return new DayRange(from, to);
    }

    Band band(String name) {
        JsonNode value = needed(name);
        if (!value.isArray() || value.size() != 2) {
            throw wrong(name, value, "two whole degrees Celsius such as [24,30]");
        }
        int low = whole(name, value.get(0), COLDEST, HOTTEST);
        int high = whole(name, value.get(1), COLDEST, HOTTEST);
        if (low > high) {
            throw wrong(name, value, "two whole degrees Celsius, the lower one first");
        }
        return new Band(low, high);
    }

    /** Quarters of one place that can hold something together. */
    Slot slot(String name) {
        JsonNode value = needed(name);
        List<Integer> given = new ArrayList<>();
        for (JsonNode quarter : value) {
            given.add(whole(name, quarter, 1, 4));
        }
        for (Slot slot : Slot.of(given.size())) {
            if (numbers(slot).equals(given.stream().sorted().toList())) {
                return slot;
            }
        }
        throw wrong(name, value, "[1,2,3,4], [1,2], [3,4] or one quarter such as [3]");
    }

    static List<Integer> numbers(Slot slot) {
        List<Integer> numbers = new ArrayList<>();
        for (int quarter = slot.firstQuarter(); quarter < slot.firstQuarter() + slot.quarters(); quarter++) {
            numbers.add(quarter);
        }
        return numbers;
    }

    /** The objects in a list; none when the field is missing. */
    List<JsonFields> objects(String name) {
        JsonNode value = node.path(name);
        if (value.isMissingNode() || value.isNull()) {
            return List.of();
        }
        if (!value.isArray() || value.size() > MOST_ITEMS) {
            throw wrong(name, value, "a list in square brackets of at most %,d items".formatted(MOST_ITEMS));
        }
        List<JsonFields> objects = new ArrayList<>();
        for (int i = 0; i < value.size(); i++) {
            String owner = where.equals(PlanFile.THE_FILE) ? "" : where + " ";
            objects.add(new JsonFields(value.get(i), "%s%s[%d]".formatted(owner, name, i)));
        }
        return objects;
    }

    JsonFields object(String name) {
        return new JsonFields(
                needed(name), where.equals(PlanFile.THE_FILE) ? "'" + name + "'" : where + " '" + name + "'");
    }

    List<String> names() {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    BadInput refusal(String rest) {
        return new BadInput(where + rest);
    }

    private int whole(String name, JsonNode value, int least, int most) {
        boolean isWhole = value.isNumber() && value.doubleValue() == Math.rint(value.doubleValue());
        if (!isWhole || value.doubleValue() < least || value.doubleValue() > most) {
            throw wrong(name, value, "a whole number from %,d to %,d".formatted(least, most));
        }
        return value.intValue();
    }

    private JsonNode needed(String name) {
        JsonNode value = node.path(name);
        if (value.isMissingNode() || value.isNull()) {
            throw new BadInput("%s has no '%s', which is needed.".formatted(where, name));
        }
        return value;
    }

    private BadInput wrong(String name, JsonNode value, String accepted) {
        return new BadInput("%s: '%s' was %s; %s is accepted.".formatted(where, name, shown(value), accepted));
    }

    private static String shown(JsonNode value) {
        return Given.shown(value.toString());
    }
}
