package warmshelf.check;

import java.util.List;
import warmshelf.words.Units;

/**
 * The round with one thing on a screen.
 *
 * @param at its number, from 1
 * @param of how many there are
 * @param nextOpen the number of the next that is still to do, going round to the start; 0 when all is done
 */
public record CheckStep(Round.Step step, int at, int of, int nextOpen) {
    /** The number of the card that comes once a check of this one is done: the next, or this again where it has more. */
    public int goOn() {
        Round.Item item = step.item();
        boolean more = item != null && item.open().size() > 1;
        return more || nextOpen == 0 ? at : nextOpen;
    }

    List<HowTo> howTos(Units units) {
        Round.Item item = step.item();
        return item == null ? List.of() : item.howTos(units);
    }

    /** The first that is still to do; the first of all when all is done. There must be at least one. */
    static CheckStep firstOpen(List<Round.Step> walk) {
        CheckStep first = at(walk, 1);
        return first.step().isDone() && first.nextOpen() > 0 ? at(walk, first.nextOpen()) : first;
    }

    /** The step of a number; one beyond the ends is the nearest. There must be at least one. */
    static CheckStep at(List<Round.Step> walk, int asked) {
        int at = Math.max(1, Math.min(asked, walk.size()));
        int next = 0;
        for (int ahead = 1; ahead <= walk.size() && next == 0; ahead++) {
            int number = (at - 1 + ahead) % walk.size() + 1;
            next = !walk.get(number - 1).isDone() && number != at ? number : 0;
        }
        return new CheckStep(walk.get(at - 1), at, walk.size(), next);
    }
}
