package warmshelf.allocation;

import static warmshelf.allocation.AllocationSentences.SAY;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import warmshelf.shelf.Thermostat;
import warmshelf.words.DayWords;
import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why space or warmth is not given. */
public sealed interface SpaceRefusal extends Message {

    /** Each thing that is in the way. */
    record InTheWay(List<Obstacle> obstacles) implements SpaceRefusal {
        public InTheWay {
            obstacles = List.copyOf(obstacles);
        }

        @Override
        public String words(Units units) {
            return obstacles.stream().map(each -> each.words(units)).collect(Collectors.joining(" "));
        }
    }

    /** The mat is not set to anything on a day on which it was to stay as it is set. */
    record NoSetPoint(LocalDate day) implements SpaceRefusal {
        @Override
        public String words(Units units) {
            return SAY.noSetPoint(DayWords.date(day));
        }
    }

    /** The place is under no light. */
    record NotUnderLight() implements SpaceRefusal {
        @Override
        public String words(Units units) {
            return SAY.notUnderLight();
        }
    }

    /** From a mat to a light, or the other way. */
    record OtherKind() implements SpaceRefusal {
        @Override
        public String words(Units units) {
            return SAY.otherKind();
        }
    }

    /** The place is on no mat. */
    record NoBottomHeat() implements SpaceRefusal {
        @Override
        public String words(Units units) {
            return SAY.noBottomHeat();
        }
    }

    /** The thermostat cannot hold that temperature. */
    record BeyondThermostat(String mat, Thermostat thermostat, double celsius) implements SpaceRefusal {
        @Override
        public String words(Units units) {
            return SAY.beyondThermostat(mat, thermostat.words(units), units.temperature(celsius));
        }
    }

    /** Something that lies on the mat cannot bear that temperature. */
    record Unbearable(double celsius, String grower, String variety, LocalDate day, Band band) implements SpaceRefusal {
        @Override
        public String words(Units units) {
            return SAY.unbearable(units.temperature(celsius), grower, variety, DayWords.date(day), band.words(units));
        }
    }

    /** The request does not wait any more. */
    record DecidedMeanwhile() implements SpaceRefusal {
        @Override
        public String words(Units units) {
            return SAY.decidedMeanwhile();
        }
    }

    /** Somebody else was quicker. */
    record TakenMeanwhile() implements SpaceRefusal {
        @Override
        public String words(Units units) {
            return SAY.takenMeanwhile();
        }
    }
}
