package warmshelf.plan.engine;

import static warmshelf.plan.engine.EngineSentences.SAY;

import java.time.LocalDate;
import warmshelf.allocation.Band;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;
import warmshelf.words.Message;
import warmshelf.words.Units;

/** What would get a request a place, as things stand in the plan, with its figures. */
public sealed interface PlaceChange extends Message {

    /** To begin so many days after its latest day. */
    record StartLater(LocalDate start, int days) implements PlaceChange {
        @Override
        public String words(Units units) {
            return SAY.startLater(DayWords.dayOfMonth(start), Counted.days(days));
        }
    }

    /** To begin so many days before its earliest day. */
    record StartEarlier(LocalDate start, int days) implements PlaceChange {
        @Override
        public String words(Units units) {
            return SAY.startEarlier(DayWords.dayOfMonth(start), Counted.days(days));
        }
    }

    /** To take fewer quarters of a place: 4 are a tray, 2 a half tray, 1 a bag. */
    record Smaller(int quarters, int insteadOf, LocalDate start) implements PlaceChange {
        @Override
        public String words(Units units) {
            return SAY.smaller(container(quarters), container(insteadOf), DayWords.dayOfMonth(start));
        }

        private static String container(int quarters) {
            return switch (quarters) {
                case 4 -> "tray";
                case 2 -> "half tray";
                default -> "bag";
            };
        }
    }

    /**
     * To lie at a set-point outside its band.
     *
     * @param celsius a whole degree
     * @param slowerDays how much longer it then lies there than at its best; 0 for no longer
     */
    record OtherWarmth(int celsius, Band insteadOf, LocalDate start, int slowerDays) implements PlaceChange {
        @Override
        public String words(Units units) {
            String degrees = units.temperature(celsius);
            String band = insteadOf.words(units);
            String day = DayWords.dayOfMonth(start);
            return slowerDays == 0
                    ? SAY.otherWarmth(degrees, band, day)
                    : SAY.otherWarmthSlower(degrees, band, day, Counted.days(slowerDays));
        }
    }

    /** To be laid on a mat without light by whoever sees to its light. */
    record LightOtherwise() implements PlaceChange {
        @Override
        public String words(Units units) {
            return SAY.lightOtherwise();
        }
    }

    /** Nothing that was tried helps; what comes free later is offered. */
    record JoinWaitingList() implements PlaceChange {
        @Override
        public String words(Units units) {
            return SAY.waitingList();
        }
    }

    /** The plan knows nothing of it. */
    record PlanAnew() implements PlaceChange {
        @Override
        public String words(Units units) {
            return SAY.planAnew();
        }
    }

    /** Nothing is proposed. */
    record NothingProposed() implements PlaceChange {
        @Override
        public String words(Units units) {
            return "";
        }
    }

    /** As another program, or this one before it kept codes, put it into words; may be empty. */
    record Proposed(String written) implements PlaceChange {
        @Override
        public String words(Units units) {
            return written;
        }
    }
}
