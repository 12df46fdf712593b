package warmshelf.timeline;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Method;

/**
 * When roots show and seedlings come up: as expected from the sowing, or from what was seen since.
 *
 * @param move when seeds move from the bag into cells; for a tray the same as {@code up}
 * @param up when seedlings stand above the compost
 * @param expectedUp the usual day for it, counted from the sowing alone
 * @param seenUp the day it was seen, if it was
 */
record Seedlings(
        DateWindow move,
        DateWindow up,
        LocalDate expectedUp,
        @Nullable LocalDate seenUp) {

    static Seedlings of(TimelineQuestion question, ExpectedEmergence emergence, DateWindow sowing) {
        DateWindow move = question.method() == Method.BAG ? move(question, emergence, sowing) : sowing;
        LocalDate seenUp = seenUp(question);
        DateWindow up = seenUp != null ? DateWindow.on(seenUp) : expectedUp(question, emergence, sowing, move);
        LocalDate counted = sowing.ideal().plusDays(emergence.seedlings().usual());
        return new Seedlings(question.method() == Method.BAG ? move : up, up, counted, seenUp);
    }

    private static DateWindow move(TimelineQuestion question, ExpectedEmergence emergence, DateWindow sowing) {
        LocalDate moved = question.seen().movedToCells();
        LocalDate firstRoot = question.seen().firstSprout();
        if (moved != null) {
            return DateWindow.on(moved);
        }
        // The first root opens the moving: each seed goes as its own root shows.
        LikelyDays roots = emergence.roots();
        DateWindow move = firstRoot != null
                ? DateWindow.on(firstRoot).plusDays(0, 0, roots.last() - roots.first())
                : sowing.plus(roots);
        return pending(question, move);
    }

    private static DateWindow expectedUp(
            TimelineQuestion question, ExpectedEmergence emergence, DateWindow sowing, DateWindow move) {
        if (question.method() == Method.BAG) {
            return pending(question, move.plus(emergence.fromRoots()));
        }
        LocalDate first = question.seen().firstSprout();
        LikelyDays days = emergence.seedlings();
        DateWindow up = first != null
                ? DateWindow.on(first).plusDays(0, days.usual() - days.first(), days.last() - days.first())
                : sowing.plus(days);
        return pending(question, up);
    }

    /** Whoever took seedlings off the heat or put them under light saw that they were up. */
    private static @Nullable LocalDate seenUp(TimelineQuestion question) {
        Seen seen = question.seen();
        if (seen.emerged() != null) {
            return seen.emerged();
        }
        if (seen.offHeat() != null && question.method() == Method.CELLS) {
            return seen.offHeat();
        }
        return seen.underLight();
    }

    static DateWindow pending(TimelineQuestion question, DateWindow window) {
        return question.seen().sown() == null ? window : window.notBefore(question.today());
    }
}
