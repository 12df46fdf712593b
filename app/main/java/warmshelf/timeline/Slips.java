package warmshelf.timeline;

import java.util.Optional;
import warmshelf.crop.CelsiusRange;
import warmshelf.crop.Crop;
import warmshelf.crop.RaisedFrom;
import warmshelf.words.Units;

/** What to do with a crop that is raised from slips: nobody can sow it. */
public final class Slips {
    // Common practice.
    private static final double SHORTEST_MM = 150;
    private static final double LONGEST_MM = 200;

    private Slips() {}

    /** In sentences; empty for a crop that is raised from seed. The weeks are those of the crop's row, the rest common practice. */
    public static Optional<String> insteadOfSowing(Crop crop, CelsiusRange comfortable, Units units) {
        if (crop.raisedFrom() != RaisedFrom.SLIPS) {
            return Optional.empty();
        }
        return Optional.of(
                ("%s is raised from slips, the shoots of its tubers, not from seed: there is none to sow. Buy slips"
                                + " for the day of planting out, or sprout tubers at home %s before it: half buried in damp sand"
                                + " at %s they shoot. Twist the shoots off when they are %s to %s long, and root them in water.")
                        .formatted(
                                crop.name(),
                                TimelineWords.weeks(crop.weeksIndoorsMin(), crop.weeksIndoorsMax()),
                                units.temperatureRange(comfortable.low(), comfortable.high()),
                                units.length(SHORTEST_MM),
                                units.length(LONGEST_MM)));
    }
}
