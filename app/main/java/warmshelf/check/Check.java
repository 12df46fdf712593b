package warmshelf.check;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One thing to look at or do at a sowing today.
 *
 * @param since the day from which it has been due
 * @param look what to look for
 * @param ifSeen what to do when it is seen
 * @param caution the usual caution where the work can hurt someone; empty where none is due
 * @param careful what of it can hurt skin, eyes or worse, in a line that is never folded away; empty where nothing does
 * @param remark what else to know: not looked at since a day, slower than expected
 */
public record Check(
        CheckKind kind,
        LocalDate since,
        String look,
        String ifSeen,
        String caution,
        String careful,
        @Nullable String remark) {
    /** What to do, as the page says it once for all checks like this. */
    public HowTo howTo() {
        return new HowTo(kind.title(), ifSeen, caution, kind.guide());
    }
}
