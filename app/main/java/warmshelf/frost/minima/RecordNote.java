package warmshelf.frost.minima;

import static warmshelf.frost.minima.MinimaSentences.SAY;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** One thing that a record of daily minima can or cannot say. */
public sealed interface RecordNote {
    /** The note as a sentence. */
    String words();

    /** What counts as a frost: a minimum of so much or less. */
    record FrostIs(double thresholdC) implements RecordNote {
        @Override
        public String words() {
            String exact = thresholdC == Math.rint(thresholdC) ? "%.0f" : "%.1f";
            return SAY.frostIs(String.format(Locale.ROOT, exact, thresholdC));
        }
    }

    /** No latitude was given, so the half of the world was told by the warmer months. */
    record HalfByWarmth(Hemisphere half) implements RecordNote {
        @Override
        public String words() {
            return half == Hemisphere.NORTH ? SAY.northernByWarmth() : SAY.southernByWarmth();
        }
    }

    /** In the southern half a year's autumn lies in the next. */
    record AutumnNextYear() implements RecordNote {
        @Override
        public String words() {
            return SAY.autumnNextYear();
        }
    }

    /** No season of this side has enough readings. */
    record NotOneTells(boolean spring) implements RecordNote {
        @Override
        public String words() {
            return SAY.notOneTells(seasons(spring));
        }
    }

    /** All seasons of this side went by without a frost. */
    record NoneHadFrost(boolean spring, int count) implements RecordNote {
        @Override
        public String words() {
            return SAY.noneHadFrost(count, seasons(spring));
        }
    }

    /** Few seasons had a frost; the one-in-ten day may be off by so many days (90 %). */
    record FewHadFrost(boolean spring, int count, double halfWidthDays) implements RecordNote {
        @Override
        public String words() {
            return SAY.fewHadFrost(count, seasons(spring), TrendNote.whole(halfWidthDays));
        }
    }

    /** So few seasons had a frost that their spread is not known. */
    record TooFewHadFrost(boolean spring, int count) implements RecordNote {
        @Override
        public String words() {
            return SAY.tooFewHadFrost(count, seasons(spring));
        }
    }

    /** Seasons with too many days missing. */
    record LeftOut(boolean spring, int count) implements RecordNote {
        @Override
        public String words() {
            return SAY.leftOut(count, seasons(spring));
        }
    }

    /** Whole years missing between the first and the last. */
    record YearsWithout(List<Integer> years) implements RecordNote {
        private static final int MOST_NAMED = 12;

        @Override
        public String words() {
            String named = years.stream().limit(MOST_NAMED).map(String::valueOf).collect(Collectors.joining(", "));
            return SAY.yearsWithout(
                    years.size() > MOST_NAMED ? SAY.andMoreYears(named, years.size() - MOST_NAMED) : named);
        }
    }

    /** Minima that the service itself doubts. */
    record Doubted(int count) implements RecordNote {
        @Override
        public String words() {
            return SAY.doubted(count);
        }
    }

    private static String seasons(boolean spring) {
        return spring ? SAY.springs() : SAY.autumns();
    }
}
