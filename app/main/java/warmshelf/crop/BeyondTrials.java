package warmshelf.crop;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What can be said of temperatures beyond those at which the trials timed a vegetable's seed. Colder, the rate of emergence is
 * drawn on as a line through the two coldest timed temperatures (thermal time); warmer, the days are those of the warmest one.
 * Either is doubtful by a factor of two (our assumption).
 */
final class BeyondTrials {
    private static final double DOUBT = 2;
    /** So many times slower than the slowest that was timed a line through two points says nothing any more. */
    private static final double SLOWEST = 4;

    private final List<TestedCell.CameUp> timed;
    private final @Nullable PublishedRange published;
    private final double nothingFromBelow;
    private final double nothingFromAbove;

    BeyondTrials(List<TestedCell> cells, @Nullable PublishedRange published) {
        this.timed = TrialLine.timed(cells);
        this.published = published;
        this.nothingFromBelow =
                nothingGrew(cells).filter(celsius -> celsius < coldest()).max().orElse(Double.NEGATIVE_INFINITY);
        this.nothingFromAbove =
                nothingGrew(cells).filter(celsius -> celsius > warmest()).min().orElse(Double.POSITIVE_INFINITY);
    }

    private static java.util.stream.DoubleStream nothingGrew(List<TestedCell> cells) {
        return cells.stream().filter(TestedCell.NothingGrew.class::isInstance).mapToDouble(TestedCell::celsius);
    }

    private double coldest() {
        return timed.get(0).celsius();
    }

    private double warmest() {
        return timed.get(timed.size() - 1).celsius();
    }

    /** The timed temperatures, and around them what the published range adds up to where nothing grew. */
    CelsiusRange possible() {
        if (published == null) {
            return new CelsiusRange(coldest(), warmest());
        }
        return new CelsiusRange(
                Math.min(coldest(), Math.max(published.possible().low(), nothingFromBelow)),
                Math.max(warmest(), Math.min(published.possible().high(), nothingFromAbove)));
    }

    /** Whether the temperature is among those published as best. */
    boolean isPublishedBest(double celsius) {
        return published != null
                && published.best().map(best -> best.contains(celsius)).orElse(false);
    }

    /** @param share of normal seedlings at that temperature; empty where none were counted around it */
    Prospect prospect(double celsius, OptionalDouble share) {
        if (celsius <= nothingFromBelow || celsius >= nothingFromAbove) {
            return new Prospect.NothingGrew();
        }
        if (!possible().contains(celsius)) {
            return new Prospect.NotTested();
        }
        double rate = celsius > warmest() ? 1 / timed.get(timed.size() - 1).days() : colderRate(celsius);
        return rate * SLOWEST * timed.get(0).days() < 1
                ? new Prospect.Untimed(share)
                : new Prospect.Timed(reckoned(1 / rate, share), Prospect.Basis.PUBLISHED_RANGE);
    }

    private double colderRate(double celsius) {
        TestedCell.CameUp first = timed.get(0);
        TestedCell.CameUp second = timed.get(1);
        double slope = (1 / second.days() - 1 / first.days()) / (second.celsius() - first.celsius());
        return 1 / first.days() + slope * (celsius - first.celsius());
    }

    private static Emergence reckoned(double days, OptionalDouble share) {
        return new Emergence(days, days / DOUBT, days * DOUBT, share);
    }
}
