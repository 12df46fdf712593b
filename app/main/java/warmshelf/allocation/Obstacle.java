package warmshelf.allocation;

import static warmshelf.allocation.AllocationSentences.SAY;

import java.time.LocalDate;
import warmshelf.shelf.Outage;
import warmshelf.words.DayWords;
import warmshelf.words.Message;
import warmshelf.words.Units;

/** One thing that keeps a stay from lying somewhere. */
public sealed interface Obstacle extends Message {

    /** Somebody else lies there. */
    record Taken(CandidatePlace place, Neighbour by) implements Obstacle {
        @Override
        public String words(Units units) {
            return place.mat() == null
                    ? SAY.takenUnderLight(place.number(), by.words(), DayWords.span(by.from(), by.to()))
                    : SAY.takenOnMat(place.number(), place.mat().name(), by.words(), DayWords.span(by.from(), by.to()));
        }
    }

    /** The mat cannot be used on some of the days. */
    record Out(MatSpace mat, Outage outage) implements Obstacle {
        @Override
        public String words(Units units) {
            return SAY.outOfService(mat.name(), DayWords.span(outage.from(), outage.to()), outage.reason());
        }
    }

    /** The place is retired, so that nothing lies there any more from a day on. */
    record Retired(LocalDate from) implements Obstacle {
        @Override
        public String words(Units units) {
            return SAY.retired(DayWords.day(from));
        }
    }

    /** Its seed comes up in light only, and none reaches the mat. */
    record Dark(MatSpace mat) implements Obstacle {
        @Override
        public String words(Units units) {
            return SAY.dark(mat.name());
        }
    }

    /** The days reach beyond those that are looked at. */
    record TooFar(LocalDate lastDay) implements Obstacle {
        @Override
        public String words(Units units) {
            return SAY.tooFar(DayWords.day(lastDay));
        }
    }

    /** The seed does not come up well at a set-point asked for. */
    record OutsideBand(double celsius, Band band) implements Obstacle {
        @Override
        public String words(Units units) {
            return SAY.outsideBand(units.temperature(celsius), band.words(units));
        }
    }

    /** The thermostat cannot hold a set-point asked for. */
    record BeyondThermostat(MatSpace mat, double celsius) implements Obstacle {
        @Override
        public String words(Units units) {
            return SAY.beyondThermostat(mat.name(), mat.thermostat().words(units), units.temperature(celsius));
        }
    }

    /** What lies there already needs a set-point that the seed does not like. */
    record SetForOthers(MatSpace mat, LocalDate day, double celsius, Band band) implements Obstacle {
        @Override
        public String words(Units units) {
            return SAY.setForOthers(mat.name(), units.temperature(celsius), DayWords.date(day), band.words(units));
        }
    }

    /** The mat was turned since the set-points were worked out. */
    record TurnedSince(MatSpace mat, LocalDate day, double celsius, double worked) implements Obstacle {
        @Override
        public String words(Units units) {
            return SAY.turnedSince(
                    mat.name(), units.temperature(celsius), DayWords.date(day), units.temperature(worked));
        }
    }

    /** Something that lies there already keeps its days. */
    record DaysStay(LocalDate since) implements Obstacle {
        @Override
        public String words(Units units) {
            return SAY.daysStay(DayWords.day(since));
        }
    }

    /** Something was found on the rack where it lies that spreads. */
    record RackIsHeld(RackHold hold) implements Obstacle {
        @Override
        public String words(Units units) {
            return SAY.rackIsHeld(hold.rack(), hold.sinceWords());
        }
    }

    /** Something was found on the rack where it would lie that spreads. */
    record RackTakesNothing(RackHold hold) implements Obstacle {
        @Override
        public String words(Units units) {
            return SAY.rackTakesNothing(hold.rack(), hold.sinceWords());
        }
    }

    /** From a mat to a light, or the other way. */
    record OtherKind(boolean fromMat) implements Obstacle {
        @Override
        public String words(Units units) {
            return fromMat ? SAY.noHeatUnderLight() : SAY.onlyUnderLight();
        }
    }
}
