package warmshelf.timeline;

import java.util.Map;
import java.util.Optional;
import warmshelf.crop.CelsiusRange;
import warmshelf.crop.Crop;
import warmshelf.crop.RaisedFrom;
import warmshelf.guide.Advice;
import warmshelf.words.Counted;
import warmshelf.words.Units;

/** What to do with a crop that is raised from slips: nobody can sow it. */
public final class Slips {
    private Slips() {}

    /** In sentences; empty for a crop that is raised from seed. The weeks are those of the crop's row. */
    public static Optional<String> insteadOfSowing(Crop crop, CelsiusRange comfortable, Units units) {
        if (crop.raisedFrom() != RaisedFrom.SLIPS) {
            return Optional.empty();
        }
        return Optional.of(Advice.in(units)
                .say(
                        Advice.stepFile("slips"),
                        "how",
                        Map.of(
                                "crop",
                                crop.name(),
                                "weeks",
                                Counted.weeks(crop.weeksIndoorsMin(), crop.weeksIndoorsMax()),
                                "warmth",
                                units.temperatureRange(comfortable.low(), comfortable.high()))));
    }
}
