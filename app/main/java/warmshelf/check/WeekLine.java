package warmshelf.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.sowing.Entry;
import warmshelf.sowing.History;
import warmshelf.sowing.Sowing;

/**
 * One sowing on the sheet of a week.
 *
 * @param address where it lay first that week
 * @param next where it goes later that week; null: it stays
 * @param soFar roots in the bag, or seedlings up, by the last look
 * @param lastLook null: nobody has looked yet
 */
record WeekLine(
        History history,
        PlaceAddress address,
        @Nullable PlaceAddress next,
        String where,
        int soFar,
        @Nullable LocalDate lastLook,
        List<Box> boxes) {
    private static final Set<CheckKind> COUNTED = EnumSet.of(CheckKind.BAG_LOOK, CheckKind.CELLS_LOOK);
    private static final Set<CheckKind> ASKS_FOR_PLACE = EnumSet.of(CheckKind.OFF_HEAT, CheckKind.MOVE_TO_CELLS);

    /**
     * One day of it.
     *
     * @param checks what is due that day; what was, by what was known that morning
     * @param soFar what had come before that day
     * @param entered what was entered for that day
     */
    public record Box(LocalDate day, List<Check> checks, int soFar, List<Entry> entered) {
        public boolean isDue() {
            return !checks.isEmpty();
        }

        /** Whether a look that day counts roots or seedlings. */
        boolean isCounted() {
            return checks.stream().anyMatch(check -> COUNTED.contains(check.kind()));
        }

        /** The step that is due that day and asks for nothing else, so that a word on paper tells all of it. */
        Optional<CheckKind> step() {
            return steps().filter(kind -> !ASKS_FOR_PLACE.contains(kind)).findFirst();
        }

        /** A step that is due that day and asks where the tray goes. */
        Optional<CheckKind> stepWithPlace() {
            return steps().filter(ASKS_FOR_PLACE::contains).findFirst();
        }

        private java.util.stream.Stream<CheckKind> steps() {
            return checks.stream().map(Check::kind).filter(kind -> !kind.isLook());
        }
    }

    /**
     * Something that is due that week.
     *
     * @param from its first day; null: from Monday on
     */
    public record Todo(CheckKind kind, @Nullable LocalDate from) {}

    public Sowing sowing() {
        return history.sowing();
    }

    UUID id() {
        return sowing().id();
    }

    /** What is due that week, each kind once. */
    public List<Todo> todos() {
        Map<CheckKind, LocalDate> first = new LinkedHashMap<>();
        boxes.forEach(box -> box.checks().forEach(check -> first.putIfAbsent(check.kind(), box.day())));
        List<Todo> todos = new ArrayList<>();
        LocalDate monday = boxes.get(0).day();
        first.forEach((kind, day) -> todos.add(new Todo(kind, day.equals(monday) ? null : day)));
        return todos;
    }

    /** What of the work can hurt skin, eyes or worse, in lines that are printed with it. */
    List<String> careful() {
        return boxes.stream()
                .flatMap(box -> box.checks().stream())
                .map(Check::careful)
                .filter(line -> !line.isEmpty())
                .distinct()
                .toList();
    }
}
