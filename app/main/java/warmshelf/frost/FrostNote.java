package warmshelf.frost;

import static warmshelf.frost.FrostSentences.SAY;

import java.util.Locale;
import warmshelf.words.Units;

/** A caution that a reader of frost dates needs. */
public sealed interface FrostNote {
    /** The caution as a sentence or two. */
    String words();

    /** Cold air gathers in hollows: it concerns every garden. */
    record FrostPocket() implements FrostNote {
        @Override
        public String words() {
            return SAY.frostPocket();
        }
    }

    /** What a published frost date speaks of. */
    record Shelter() implements FrostNote {
        @Override
        public String words() {
            return SAY.shelter();
        }
    }

    /** The same, with the years that the grid rests on. */
    record YearsAndShelter() implements FrostNote {
        @Override
        public String words() {
            return SAY.yearsAndShelter();
        }
    }

    /** The elevation in metres is that of a cell around the place. */
    record AverageElevation(double metres) implements FrostNote {
        @Override
        public String words() {
            return SAY.averageElevation(height(metres));
        }
    }

    /** The grid's stations lie so much higher than the place; negative: lower. */
    record StationsHigher(double metres) implements FrostNote {
        @Override
        public String words() {
            String height = height(Math.abs(metres));
            return metres < 0 ? SAY.stationsLower(height) : SAY.stationsHigher(height);
        }
    }

    /** The nearest station behind the grid is far away. */
    record StationFar(double kilometres) implements FrostNote {
        @Override
        public String words() {
            return SAY.stationFar(distance(kilometres));
        }
    }

    /** At a share 0..1 of the stations around a frost comes in fewer than one year in ten. */
    record FrostRare(double share) implements FrostNote {
        @Override
        public String words() {
            return SAY.frostRare(String.format(Locale.ROOT, "%.0f", 100 * share));
        }
    }

    /** How far off such dates are was measured elsewhere. */
    record MeasuredInUnitedStates() implements FrostNote {
        @Override
        public String words() {
            return SAY.measuredInUnitedStates();
        }
    }

    /** Some of the stations rest on twelve monthly means. */
    record SomeOnMonths() implements FrostNote {
        @Override
        public String words() {
            return SAY.someOnMonths(new MonthlyError(false).words());
        }
    }

    /** How far off dates from twelve monthly means were found to be, there or elsewhere. */
    record MonthlyError(boolean inUnitedStates) implements FrostNote {
        @Override
        public String words() {
            return inUnitedStates ? SAY.errorInUnitedStates() : SAY.errorElsewhere();
        }
    }

    /** The elevation in metres was taken from the stations around. */
    record GuessedElevation(double metres) implements FrostNote {
        @Override
        public String words() {
            return SAY.guessedElevation(height(metres));
        }
    }

    /** The station that counts most is far away. */
    record WeightiestFar(double kilometres) implements FrostNote {
        @Override
        public String words() {
            return SAY.weightiestFar(distance(kilometres));
        }
    }

    /** The station that counts most lies so much higher than the place; negative: lower. */
    record WeightiestHigher(double metres) implements FrostNote {
        @Override
        public String words() {
            String height = height(Math.abs(metres));
            return metres < 0 ? SAY.weightiestLower(height) : SAY.weightiestHigher(height);
        }
    }

    /** How the dates of a file's stations were moved and weighted. */
    record StationsMoved() implements FrostNote {
        @Override
        public String words() {
            return SAY.stationsMoved();
        }
    }

    /** Published dates say nothing of years without a frost. */
    record YearsWithFrostOnly() implements FrostNote {
        @Override
        public String words() {
            return SAY.yearsWithFrostOnly();
        }
    }

    /** The dates come from twelve monthly means and nothing else. */
    record MonthsAlone(boolean inUnitedStates) implements FrostNote {
        @Override
        public String words() {
            return SAY.monthsAlone(new MonthlyError(inUnitedStates).words());
        }
    }

    /** The means must be those of the garden itself. */
    record MeansDecide() implements FrostNote {
        @Override
        public String words() {
            return SAY.meansDecide();
        }
    }

    /** In the southern half a year's autumn lies in the next. */
    record AutumnInNextYear() implements FrostNote {
        @Override
        public String words() {
            return SAY.autumnInNextYear();
        }
    }

    /** A height for readers of either unit, for example '175 m (574 ft)'. */
    private static String height(double metres) {
        return SAY.bothUnits(Units.METRIC.height(metres), Units.AMERICAN.height(metres));
    }

    /** A way along the ground for readers of either unit. */
    private static String distance(double kilometres) {
        return SAY.bothUnits(Units.METRIC.distance(kilometres), Units.AMERICAN.distance(kilometres));
    }
}
