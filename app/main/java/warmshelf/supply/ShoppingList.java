package warmshelf.supply;

import java.util.Arrays;
import java.util.List;
import warmshelf.words.Units;

/** What a whole season needs, what of it is promised or there, and what is still to be found. */
public record ShoppingList(List<Line> lines) {

    /**
     * One item of which something is needed or promised.
     *
     * @param needed in millilitres or pieces
     * @param mine how much of it is needed for the reader's own sowings
     * @param promises those that stand
     */
    public record Line(SupplyItem item, double needed, double mine, List<Promise> promises) {
        // Cell and pot volumes are from memory, within a quarter (containers.csv).
        private static final double SPREAD = 0.25;

        /** What is promised or there. */
        public double promised() {
            return promises.stream().mapToDouble(Promise::amount).sum();
        }

        /** What nobody brings yet; never below nothing. */
        public double missing() {
            return Math.max(0, needed - promised());
        }

        /** What may do, where makers' cells and pots hold less than reckoned. */
        public double atLeast() {
            return item.isUncertain() ? needed * (1 - SPREAD) : needed;
        }

        /** What it may take, where they hold more. */
        public double atMost() {
            return item.isUncertain() ? needed * (1 + SPREAD) : needed;
        }

        /** What to look for of what is missing, in millilitres or pieces: volumes up to a step in the reader's own measure. */
        public double toLookFor(Units units) {
            if (!item.isVolume()) {
                return missing();
            }
            double step = units.millilitresOf(item.step());
            // What lies a hair above a step for want of digits is not another step.
            return Math.ceil(missing() / step - 1e-3) * step;
        }

        /** What would be there beyond what is needed; never below nothing. */
        public double tooMuch() {
            return Math.max(0, promised() - needed);
        }
    }

    static ShoppingList of(Supplies group, Supplies own, List<Promise> promises) {
        return new ShoppingList(Arrays.stream(SupplyItem.values())
                .map(item -> new Line(
                        item,
                        group.of(item),
                        own.of(item),
                        promises.stream()
                                .filter(promise -> promise.item() == item)
                                .toList()))
                .filter(line -> line.needed() > 0 || !line.promises().isEmpty())
                .toList());
    }
}
