package warmshelf.backup;

import java.util.Map;
import java.util.Set;

/** Whether a copy that was made while others may have written holds what it should. */
final class RowCheck {
    /** Tables that are only ever added to. */
    private static final Set<String> ONLY_GROW = Set.of("audit_line", "entry");

    private RowCheck() {}

    /**
     * Holds the rows of a copy against those of the original.
     *
     * @param before rows by table, counted before the copy was made
     * @param after counted afterwards
     * @param written whether anything was written in between: then a copy of what only grows lies between the two, and of the rest it
     *     is enough that it could be read to its end
     */
    static boolean agrees(Map<String, Long> before, Map<String, Long> copy, Map<String, Long> after, boolean written) {
        if (!copy.keySet().equals(before.keySet())) {
            return false;
        }
        if (!written) {
            return copy.equals(before);
        }
        return ONLY_GROW.stream()
                .allMatch(table -> isBetween(rows(before, table), rows(copy, table), rows(after, table)));
    }

    private static long rows(Map<String, Long> counted, String table) {
        return counted.getOrDefault(table, 0L);
    }

    private static boolean isBetween(long least, long found, long most) {
        return least <= found && found <= most;
    }
}
