package warmshelf.reminder;

import java.util.EnumSet;
import java.util.Set;

/** Which of a member's days a calendar tells. */
enum CalendarPart {
    /** Next steps of sowings, and days on duty. */
    ALL("all", EnumSet.allOf(FeedDay.Kind.class)),
    /** Days on duty alone, for a calendar that others read too. */
    DUTY("duty", EnumSet.of(FeedDay.Kind.DUTY));

    private final String word;
    private final Set<FeedDay.Kind> kinds;

    CalendarPart(String word, Set<FeedDay.Kind> kinds) {
        this.word = word;
        this.kinds = kinds;
    }

    String word() {
        return word;
    }

    Set<FeedDay.Kind> kinds() {
        return kinds;
    }

    /** The part of that word. */
    static CalendarPart named(String word) {
        return word.equals(DUTY.word) ? DUTY : ALL;
    }
}
