package warmshelf.check;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import warmshelf.words.Units;

/**
 * One thing to look at or do at a sowing today.
 *
 * @param since the day from which it has been due
 * @param subject what it is about
 * @param caution the usual caution where the work can hurt someone; empty where none is due
 * @param careful what of it can hurt skin, eyes or worse, in a line that is never folded away; empty where nothing does
 * @param remark what else to know: not looked at since a day, slower than expected
 * @param done a look that was made that day already, and does not come back on it
 */
public record Check(
        CheckKind kind,
        LocalDate since,
        Subject subject,
        String caution,
        String careful,
        @Nullable CheckRemark remark,
        boolean done) {
    /** What to look for, in a reader's units. */
    public String look(Units units) {
        return LookFor.look(kind, subject, units);
    }

    /** What else to know, in a reader's units; empty where there is nothing. */
    public String remarkWords(Units units) {
        return remark == null ? "" : remark.words(units);
    }

    /** What to do when it is seen. */
    String ifSeen(Units units) {
        return LookFor.ifSeen(kind, subject, units);
    }

    /** What to do, as the page says it once for all checks like this. */
    public HowTo howTo(Units units) {
        return new HowTo(kind.title(), ifSeen(units), caution, kind.guide());
    }
}
