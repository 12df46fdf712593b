package warmshelf.news;

import static warmshelf.news.NewsSentences.SAY;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.UUID;
import warmshelf.words.DayWords;

/**
 * One line of news: all that is new of one kind about one thing.
 *
 * @param thing the sowing, or the swap
 * @param times how often it happened
 * @param title of the sowing; of a swap its site
 * @param by who did it last, or empty
 * @param detail the reason of a refusal, the problem, or the day of a swap; empty where there is none
 * @param at when it happened last
 */
public record NewsLine(
        NewsKind kind, UUID thing, int times, String title, String by, String detail, OffsetDateTime at) {

    /** The page that it leads to. */
    public String address() {
        return kind.address(thing);
    }

    public LocalDate on(ZoneId zone) {
        return at.atZoneSameInstant(zone).toLocalDate();
    }

    public boolean isProblem() {
        return kind == NewsKind.PROBLEM;
    }

    public boolean isAsksForSeed() {
        return kind == NewsKind.SEED_ASKED;
    }

    public String words() {
        String who = by.isEmpty() ? SAY.somebody() : by;
        return switch (kind) {
            case PLACED -> SAY.placed(title);
            case REFUSED -> detail.isEmpty() ? SAY.refused(title) : SAY.refusedBecause(title, detail);
            case WAITING -> detail.isEmpty() ? SAY.waits(title) : SAY.waitsBecause(title, detail);
            case NO_PLACE -> SAY.noPlace(title);
            case MOVED -> SAY.moved(title);
            case PROBLEM -> SAY.problem(title, detail);
            case MESSAGE -> SAY.message(title, who);
            case PHOTO -> SAY.photos(title, times);
            case SEED_ASKED -> SAY.seedAsked(title, who);
            case SEED_GIVEN -> SAY.seedGiven(title, who);
            case SEED_REFUSED -> SAY.seedRefused(title, who);
            case SEEDLINGS -> times == 1 ? SAY.seedlings(title, who) : SAY.moreSeedlings(title, times - 1);
            case SEEDLINGS_TAKEN -> SAY.seedlingsTaken(title, who);
            case DUTY_ASKED -> SAY.dutyAsked(title, who, day());
            case DUTY_TAKEN -> SAY.dutyTaken(title, who, day());
        };
    }

    /** Whether the words do not say yet who did it. */
    public boolean leavesOutWho() {
        return !by.isEmpty()
                && switch (kind) {
                    case PLACED, REFUSED, WAITING, NO_PLACE, MOVED, PROBLEM, PHOTO -> true;
                    default -> false;
                };
    }

    private String day() {
        return DayWords.day(LocalDate.parse(detail));
    }
}
