package warmshelf.label;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Labels made at once.
 *
 * @param printer they were scaled for; null: none was measured
 * @param startAt the first label used on the first sheet, from 1
 * @param labels how many in all; 0 where they were written by hand
 * @param undone whether somebody said that they did not come out
 */
record LabelRun(
        UUID id,
        String stock,
        @Nullable UUID printer,
        int startAt,
        boolean cuttingLines,
        int labels,
        UUID madeBy,
        String byName,
        OffsetDateTime madeAt,
        boolean undone,
        List<Line> lines) {

    /** The stock of what was written by hand. */
    static final String BY_HAND = "by-hand";

    /** What one label, or several alike, are for. */
    record Line(CodeStore.Kind kind, UUID subject, LabelPurpose purpose, int copies) {
        static Line of(LabelItem item) {
            return new Line(item.subject().kind(), item.subject().id(), item.purpose(), item.copies());
        }
    }

    Set<UUID> subjects() {
        return lines.stream().map(Line::subject).collect(Collectors.toSet());
    }

    boolean mayBeUndoneBy(UUID member, boolean coordinator) {
        return coordinator || madeBy.equals(member);
    }
}
