package warmshelf.plan.engine;

import static warmshelf.plan.engine.EngineSentences.SAY;

import java.time.LocalDate;
import warmshelf.allocation.Band;
import warmshelf.words.DayWords;
import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why a request has no place in a plan, with its figures. */
public sealed interface NoPlaceReason extends Message {

    /** No thermostat reaches what it needs. */
    record NoMatWarmEnough(Band band) implements NoPlaceReason {
        @Override
        public String words(Units units) {
            return SAY.noMatWarmEnough(band.words(units));
        }
    }

    /** Its seed comes up in light only, and only on mats without light is there room. */
    record DarkMatsOnly(Band band) implements NoPlaceReason {
        @Override
        public String words(Units units) {
            return SAY.darkMatsOnly(band.words(units));
        }
    }

    /** A mat would have room, but no lit place is free after it. */
    record NoLightAfterwards() implements NoPlaceReason {
        @Override
        public String words(Units units) {
            return SAY.noLightAfterwards();
        }
    }

    /** A mat would have room, but may not be switched on beside those that are. */
    record CircuitFull() implements NoPlaceReason {
        @Override
        public String words(Units units) {
            return SAY.circuitFull();
        }
    }

    /** Others lie there; {@code to} is the last day on which it would lie there at the latest. */
    record MatsTaken(LocalDate from, LocalDate to) implements NoPlaceReason {
        @Override
        public String words(Units units) {
            return SAY.matsTaken(DayWords.dayOfMonth(from), DayWords.dayOfMonth(to));
        }
    }

    /** It could begin until {@code last} only, before the first day of the plan. */
    record WindowOver(LocalDate last) implements NoPlaceReason {
        @Override
        public String words(Units units) {
            return SAY.windowOver(DayWords.dayOfMonth(last));
        }
    }

    /** Even with all mats and lit places empty there is none under a light for it. */
    record TooFewLitPlaces() implements NoPlaceReason {
        @Override
        public String words(Units units) {
            return SAY.tooFewLitPlaces();
        }
    }

    /** It takes longer than to {@code last}, the last day of the plan. */
    record OutlastsPlan(LocalDate last) implements NoPlaceReason {
        @Override
        public String words(Units units) {
            return SAY.outlastsPlan(DayWords.dayOfMonth(last));
        }
    }

    /** The mats that are warm enough cannot be used then. */
    record MatsOutOfService() implements NoPlaceReason {
        @Override
        public String words(Units units) {
            return SAY.matsOutOfService();
        }
    }

    /** The search goes on; nobody has looked why. */
    record NotFoundYet() implements NoPlaceReason {
        @Override
        public String words(Units units) {
            return SAY.notFoundYet();
        }
    }

    /** It was asked for after the plan was made. */
    record CameLater() implements NoPlaceReason {
        @Override
        public String words(Units units) {
            return SAY.cameLater();
        }
    }

    /** Somebody took it out by hand. */
    record TakenOut(String by) implements NoPlaceReason {
        @Override
        public String words(Units units) {
            return SAY.takenOut(by);
        }
    }

    /** As another program, or this one before it kept codes, put it into words; may be empty. */
    record AsWritten(String written) implements NoPlaceReason {
        @Override
        public String words(Units units) {
            return written;
        }
    }
}
