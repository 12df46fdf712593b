package warmshelf.plan;

import static warmshelf.plan.PlanSentences.SAY;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Band;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.Obstacle;
import warmshelf.allocation.SpaceWish;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;
import warmshelf.words.Units;

/** What a displaced stay lacks, and what would help it. */
public sealed interface NoOtherPlace {

    /** A sentence that says what is lacking, in a reader's units. */
    String words(Units units);

    /** A sentence that says what can be done. */
    String help(Units units);

    /** No thermostat reaches the warmth that suits it. */
    record NoWarmMat(Band band) implements NoOtherPlace {
        @Override
        public String words(Units units) {
            return SAY.noWarmMat(band.words(units));
        }

        @Override
        public String help(Units units) {
            return SAY.noWarmMatHelp();
        }
    }

    /** Every mat warm enough is out of service on its days. */
    record AllOut() implements NoOtherPlace {
        @Override
        public String words(Units units) {
            return SAY.allOut();
        }

        @Override
        public String help(Units units) {
            return SAY.allOutHelp();
        }
    }

    /** Every other mat warm enough is closed to it: its rack is held, or a quarantine shelf stays apart. */
    record AllClosed() implements NoOtherPlace {
        @Override
        public String words(Units units) {
            return SAY.allClosed();
        }

        @Override
        public String help(Units units) {
            return SAY.allClosedHelp();
        }
    }

    /** A place is free, but what lies beside it needs another warmth. */
    record SetOtherwise(MatSpace mat, int placeNumber, Obstacle.SetForOthers obstacle) implements NoOtherPlace {
        @Override
        public String words(Units units) {
            return SAY.setOtherwise(placeNumber, mat.name(), obstacle.words(units));
        }

        @Override
        public String help(Units units) {
            return SAY.setOtherwiseHelp();
        }
    }

    /**
     * Mats warm enough are taken.
     *
     * @param begun whether it lies there already, so that its days are given
     * @param days how long it must lie there at the least
     * @param later the first place that is free for it on other days; null: none is for weeks
     */
    record NoRoom(
            SpaceWish wish,
            boolean begun,
            int days,
            @Nullable Later later) implements NoOtherPlace {
        @Override
        public String words(Units units) {
            return begun
                    ? SAY.noRoomForItsDays(
                            size(wish.quarters()),
                            DayWords.span(wish.ideal(), wish.ideal().plusDays(days)))
                    : SAY.noRoomForDays(
                            size(wish.quarters()),
                            days,
                            DayWords.span(wish.earliest(), wish.latest().plusDays(1)));
        }

        @Override
        public String help(Units units) {
            return later == null ? SAY.noRoomHelp() : later.words(begun);
        }

        private static String size(int quarters) {
            return switch (quarters) {
                case 4 -> SAY.wholePlace();
                case 2 -> SAY.halfAPlace();
                default -> SAY.quarterOfAPlace();
            };
        }
    }

    /**
     * A place that is free for it later than it should be.
     *
     * @param days after today for what lies there already, else after its last day to begin
     */
    record Later(MatSpace mat, int placeNumber, LocalDate from, int days) {
        String words(boolean begun) {
            return begun
                    ? SAY.freeForTheRest(placeNumber, mat.name(), DayWords.day(from))
                    : SAY.couldBegin(DayWords.day(from), Counted.days(days), mat.name(), placeNumber);
        }
    }
}
