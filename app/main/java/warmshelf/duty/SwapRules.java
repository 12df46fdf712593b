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

/** When a swap cannot be asked for or taken, and why. */
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
    static Optional<SwapRefusal> againstAsking(Asked asked, Map<Turn, UUID> duties, boolean already, LocalDate today) {
        Turn turn = asked.turn();
        Turn inReturn = asked.inReturn();
        if (turn.day().isBefore(today)) {
            return Optional.of(new SwapRefusal.DayPast(turn.day()));
        }
        if (!asked.by().equals(duties.get(turn))) {
            return Optional.of(new SwapRefusal.NotYourDay(turn.day()));
        }
        if (already) {
            return Optional.of(new SwapRefusal.AskedAlready(turn.day()));
        }
        if (asked.by().equals(asked.askedOf())) {
            return Optional.of(new SwapRefusal.AskedOneself());
        }
        return inReturn == null ? Optional.empty() : againstReturn(asked, inReturn, duties.get(inReturn), today);
    }

    private static Optional<SwapRefusal> againstReturn(
            Asked asked, Turn inReturn, @Nullable UUID holder, LocalDate today) {
        LocalDate day = inReturn.day();
        if (day.isBefore(today)) {
            return Optional.of(new SwapRefusal.ReturnPast(day));
        }
        if (holder == null || holder.equals(asked.by())) {
            return Optional.of(new SwapRefusal.ReturnOfNobodyElse(day));
        }
        if (asked.askedOf() != null && !asked.askedOf().equals(holder)) {
            return Optional.of(new SwapRefusal.ReturnNotTheirs(day));
        }
        return Optional.empty();
    }

    /** Why a member cannot take it; empty when they can. */
    static Optional<SwapRefusal> againstTaking(
            Swap swap, UUID taker, Map<Turn, UUID> duties, Set<UUID> together, LocalDate today) {
        if (!swap.isOpen(today)) {
            return Optional.of(ended(swap));
        }
        if (swap.askedBy().id().equals(taker)) {
            return Optional.of(new SwapRefusal.YourOwnDay(swap.words()));
        }
        Named askedOf = swap.askedOf();
        if (askedOf != null && !askedOf.id().equals(taker)) {
            return Optional.of(new SwapRefusal.OnlyOneAsked(askedOf.name(), swap.words()));
        }
        Turn inReturn = swap.inReturn();
        if (!Objects.equals(duties.get(swap.turn()), swap.askedBy().id())
                || (inReturn != null && !taker.equals(duties.get(inReturn)))) {
            return Optional.of(new SwapRefusal.CannotBeSwapped(swap.words()));
        }
        return againstTwoSites(swap, taker, duties, together);
    }

    private static Optional<SwapRefusal> againstTwoSites(
            Swap swap, UUID taker, Map<Turn, UUID> duties, Set<UUID> together) {
        Map<Turn, UUID> others = new HashMap<>(duties);
        others.remove(swap.turn());
        Turn inReturn = swap.inReturn();
        if (inReturn != null) {
            others.remove(inReturn);
        }
        RotaBook book = new RotaBook(List.of(), others, together);
        if (!book.isFree(taker, swap.turn())) {
            return Optional.of(new SwapRefusal.YouLookElsewhere(swap.turn().day()));
        }
        if (inReturn != null && !book.isFree(swap.askedBy().id(), inReturn)) {
            return Optional.of(
                    new SwapRefusal.AskerLooksElsewhere(swap.askedBy().name(), inReturn.day()));
        }
        return Optional.empty();
    }

    /** Who has it, or what else has come of it. */
    static SwapRefusal ended(Swap swap) {
        Named taker = swap.takenBy();
        if (taker != null) {
            return new SwapRefusal.TakenBy(taker.name(), swap.words());
        }
        return switch (swap.state()) {
            case WITHDRAWN -> new SwapRefusal.Withdrawn(swap.askedBy().name(), swap.words());
            case DECLINED -> new SwapRefusal.DeclinedAlready(swap.words());
            case OVERTAKEN -> new SwapRefusal.RotaChanged(swap.words());
            case OPEN, TAKEN -> new SwapRefusal.Past(swap.words());
        };
    }
}
