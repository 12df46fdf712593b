package warmshelf.plan;

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
            return "No mat can hold %s, which is what it needs.".formatted(band.words(units));
        }

        @Override
        public String help(Units units) {
            return "It needs a mat with a thermostat that can.";
        }
    }

    /** Every mat warm enough is out of service on its days. */
    record AllOut() implements NoOtherPlace {
        @Override
        public String words(Units units) {
            return "All mats warm enough for it are out of service on its days.";
        }

        @Override
        public String help(Units units) {
            return "It fits once one of them is back or another is set up.";
        }
    }

    /** A place is free, but what lies beside it needs another warmth. */
    record SetOtherwise(MatSpace mat, int placeNumber, Obstacle.SetForOthers obstacle) implements NoOtherPlace {
        @Override
        public String words(Units units) {
            return "Place %d on mat %s is free, but not at a warmth that suits it. %s"
                    .formatted(placeNumber, mat.name(), obstacle.words(units));
        }

        @Override
        public String help(Units units) {
            return "It fits once what lies there has gone to another mat.";
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
                    ? "On mats warm enough for it, no %s is free for all its days, %s."
                            .formatted(
                                    size(wish.quarters()),
                                    DayWords.span(wish.ideal(), wish.ideal().plusDays(days)))
                    : "On mats warm enough for it, no %s is free for %d days from any day on which it may begin, %s."
                            .formatted(
                                    size(wish.quarters()),
                                    days,
                                    DayWords.span(wish.earliest(), wish.latest().plusDays(1)));
        }

        @Override
        public String help(Units units) {
            return later == null
                    ? "It fits once a place is freed, one of the mats is back, or another is set up."
                    : later.words(begun);
        }

        private static String size(int quarters) {
            return switch (quarters) {
                case 4 -> "whole place";
                case 2 -> "half a place";
                default -> "quarter of a place";
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
                    ? "Place %d on mat %s is free for the rest of its days from %s."
                            .formatted(placeNumber, mat.name(), DayWords.day(from))
                    : "Begun on %s, %s after its last day, it could lie on mat %s, place %d."
                            .formatted(DayWords.day(from), Counted.days(days), mat.name(), placeNumber);
        }
    }
}
