package warmshelf.duty;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.words.DayWords;

/** When a swap cannot be asked for or taken, and the sentence that says why. */
final class SwapRules {
    private SwapRules() {}

    /** What somebody asks for; the meanings are those of {@link Swap}. */
    record Asked(
            Turn turn, @Nullable UUID askedOf, @Nullable Turn inReturn, UUID by) {}

    /**
     * Why it cannot be asked; empty when it can.
     *
     * @param duties who has which turn, from today on at least
     * @param already whether somebody is asked for this turn already
     */
    static Optional<String> againstAsking(Asked asked, Map<Turn, UUID> duties, boolean already, LocalDate today) {
        Turn turn = asked.turn();
        Turn inReturn = asked.inReturn();
        if (turn.day().isBefore(today)) {
            return Optional.of("%s is past; days from today on can be asked for.".formatted(DayWords.day(turn.day())));
        }
        if (!asked.by().equals(duties.get(turn))) {
            return Optional.of("You are not on duty there on %s; you can ask others to take your own days."
                    .formatted(DayWords.day(turn.day())));
        }
        if (already) {
            return Optional.of("You have asked for %s already; withdraw that first to ask in another way."
                    .formatted(DayWords.day(turn.day())));
        }
        if (asked.by().equals(asked.askedOf())) {
            return Optional.of("Whom you ask was yourself; anyone, or another member, is accepted.");
        }
        return inReturn == null ? Optional.empty() : againstReturn(asked, inReturn, duties.get(inReturn), today);
    }

    private static Optional<String> againstReturn(Asked asked, Turn inReturn, @Nullable UUID holder, LocalDate today) {
        String day = DayWords.day(inReturn.day());
        if (inReturn.day().isBefore(today)) {
            return Optional.of(
                    "The day in exchange was %s, which is past; days from today on are accepted.".formatted(day));
        }
        if (holder == null || holder.equals(asked.by())) {
            return Optional.of(
                    "The day in exchange was %s; a day on which another member is on duty is accepted.".formatted(day));
        }
        if (asked.askedOf() != null && !asked.askedOf().equals(holder)) {
            return Optional.of("The day in exchange, %s, is not a day of the person you ask; choose one of theirs."
                    .formatted(day));
        }
        return Optional.empty();
    }

    /** Why a member cannot take it; empty when they can. */
    static Optional<String> againstTaking(
            Swap swap, UUID taker, Map<Turn, UUID> duties, Set<UUID> together, LocalDate today) {
        if (!swap.isOpen(today)) {
            return Optional.of(endedWords(swap));
        }
        if (swap.askedBy().id().equals(taker)) {
            return Optional.of("%s is your own day.".formatted(swap.words()));
        }
        Named askedOf = swap.askedOf();
        if (askedOf != null && !askedOf.id().equals(taker)) {
            return Optional.of("Only %s is asked for %s.".formatted(askedOf.name(), swap.words()));
        }
        Turn inReturn = swap.inReturn();
        if (!Objects.equals(duties.get(swap.turn()), swap.askedBy().id())
                || (inReturn != null && !taker.equals(duties.get(inReturn)))) {
            return Optional.of(
                    "The rota has changed since: %s cannot be swapped like this any more.".formatted(swap.words()));
        }
        return againstTwoSites(swap, taker, duties, together);
    }

    private static Optional<String> againstTwoSites(Swap swap, UUID taker, Map<Turn, UUID> duties, Set<UUID> together) {
        Map<Turn, UUID> others = new HashMap<>(duties);
        others.remove(swap.turn());
        Turn inReturn = swap.inReturn();
        if (inReturn != null) {
            others.remove(inReturn);
        }
        RotaBook book = new RotaBook(List.of(), others, together);
        if (!book.isFree(taker, swap.turn())) {
            return Optional.of("You look at another site on %s already; one person looks at one site a day."
                    .formatted(DayWords.day(swap.turn().day())));
        }
        if (inReturn != null && !book.isFree(swap.askedBy().id(), inReturn)) {
            return Optional.of("%s looks at another site on %s by now; one person looks at one site a day."
                    .formatted(swap.askedBy().name(), DayWords.day(inReturn.day())));
        }
        return Optional.empty();
    }

    /** Who has it, or what else has come of it. */
    static String endedWords(Swap swap) {
        Named taker = swap.takenBy();
        if (taker != null) {
            return "%s has %s by now.".formatted(taker.name(), swap.words());
        }
        return switch (swap.state()) {
            case WITHDRAWN ->
                "%s has withdrawn the question for %s.".formatted(swap.askedBy().name(), swap.words());
            case DECLINED -> "%s was declined already.".formatted(swap.words());
            case OVERTAKEN -> "The rota for %s was changed meanwhile.".formatted(swap.words());
            case OPEN, TAKEN -> "%s is past.".formatted(swap.words());
        };
    }
}
