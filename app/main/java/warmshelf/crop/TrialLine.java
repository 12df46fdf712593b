package warmshelf.crop;

import java.util.List;
import java.util.OptionalDouble;

/** What lies between the cells of one vegetable. */
final class TrialLine {
    private TrialLine() {}

    static List<TestedCell.CameUp> timed(List<TestedCell> cells) {
        return cells.stream()
                .filter(TestedCell.CameUp.class::isInstance)
                .map(TestedCell.CameUp.class::cast)
                .toList();
    }

    /** Days at a temperature between two with days. */
    static double days(List<TestedCell> cells, double celsius) {
        return 1 / line(timed(cells), celsius, cell -> 1 / cell.days()).orElseThrow();
    }

    /** The share of normal seedlings; empty beyond the temperatures at which they were counted. */
    static OptionalDouble share(List<TestedCell> cells, double celsius) {
        List<TestedCell> counted =
                cells.stream().filter(cell -> cell.share().isPresent()).toList();
        return line(counted, celsius, cell -> cell.share().orElseThrow());
    }

    private static <C extends TestedCell> OptionalDouble line(List<C> cells, double celsius, Figure<C> figure) {
        for (int i = 0; i < cells.size(); i++) {
            C here = cells.get(i);
            if (here.celsius() == celsius) {
                return OptionalDouble.of(figure.of(here));
            }
            if (here.celsius() > celsius) {
                return i == 0
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(between(cells.get(i - 1), here, celsius, figure));
            }
        }
        return OptionalDouble.empty();
    }

    private static <C extends TestedCell> double between(C colder, C warmer, double celsius, Figure<C> figure) {
        double way = (celsius - colder.celsius()) / (warmer.celsius() - colder.celsius());
        return figure.of(colder) + way * (figure.of(warmer) - figure.of(colder));
    }

    private interface Figure<C extends TestedCell> {
        double of(C cell);
    }
}
