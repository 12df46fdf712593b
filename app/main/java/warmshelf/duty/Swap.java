package warmshelf.duty;

import static warmshelf.duty.DutySentences.SAY;

import java.time.LocalDate;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.words.DayWords;

/**
 * Somebody on duty asks others to take a day.
 *
 * @param askedOf the one who is asked; null: anyone
 * @param inReturn the day of the one who is asked that the asker takes for it; null: none
 * @param inReturnSite the name of its site, or empty
 * @param state what it has come to; an open one of a day that is past is asked no more
 * @param takenBy who took the day; null: nobody
 * @param refusedBy who has said no
 */
public record Swap(
        UUID id,
        Turn turn,
        String site,
        Named askedBy,
        @Nullable Named askedOf,
        @Nullable Turn inReturn,
        String inReturnSite,
        SwapState state,
        @Nullable Named takenBy,
        Set<UUID> refusedBy) {

    /** Whether somebody can still say yes. */
    boolean isOpen(LocalDate today) {
        return state == SwapState.OPEN
                && !turn.day().isBefore(today)
                && (inReturn == null || !inReturn.day().isBefore(today));
    }

    /** Whether it waits for this member's answer. */
    boolean asks(UUID member, LocalDate today) {
        return isOpen(today)
                && !askedBy.id().equals(member)
                && (askedOf == null || askedOf.id().equals(member))
                && !refusedBy.contains(member);
    }

    /** For example 'Thu 4 Mar at the Hall cellar'. */
    public String words() {
        return at(turn, site);
    }

    /** The day in return in the same words, or empty. */
    public String returnWords() {
        return inReturn == null ? "" : at(inReturn, inReturnSite);
    }

    public int refusals() {
        return refusedBy.size();
    }

    /** What it has come to, for example 'taken by Tom Okafor'. */
    public String stateWords(LocalDate today) {
        return switch (state) {
            case OPEN -> isOpen(today) ? SAY.waitsForAnswer() : SAY.nobodyTookIt();
            case TAKEN -> SAY.isTakenBy(takenBy == null ? SAY.somebody() : takenBy.name());
            case DECLINED -> SAY.isDeclined();
            case WITHDRAWN -> SAY.isWithdrawn();
            case OVERTAKEN -> SAY.rotaChangedMeanwhile();
        };
    }

    static String at(Turn turn, String site) {
        return SAY.turnAt(DayWords.day(turn.day()), site);
    }
}
