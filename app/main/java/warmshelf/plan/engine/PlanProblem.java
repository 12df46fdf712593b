package warmshelf.plan.engine;

import static warmshelf.plan.engine.EngineSentences.SAY;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import warmshelf.words.Units;

/** What is wrong with a plan: which rule it breaks, and where. */
public sealed interface PlanProblem {
    /** As a sentence. */
    String words(PlanNames names, Units units);

    /** A set-point is given for what is no mat. */
    record NoSuchMat(String mat) implements PlanProblem {
        @Override
        public String words(PlanNames names, Units units) {
            return SAY.noSuchMat(mat);
        }
    }

    /** A set-point lies outside what the thermostat offers. */
    record BeyondThermostat(String mat, double celsius) implements PlanProblem {
        @Override
        public String words(PlanNames names, Units units) {
            return SAY.beyondThermostat(mat, units.temperature(celsius));
        }
    }

    /** A mat has two set-points on one day. */
    record TwoSetPoints(String mat, LocalDate day) implements PlanProblem {
        @Override
        public String words(PlanNames names, Units units) {
            return SAY.twoSetPoints(mat, String.valueOf(day));
        }
    }

    /** Something lies too cold or too warm; without a set-point at all where the degrees are null. */
    record OutsideBand(PlanParty who, @Nullable Double celsius, LocalDate day) implements PlanProblem {
        @Override
        public String words(PlanNames names, Units units) {
            return SAY.outsideBand(
                    names.of(who),
                    celsius == null ? SAY.noSetPoint() : units.temperature(celsius),
                    String.valueOf(day));
        }
    }

    /** A placed request or its mat is unknown. */
    record NotInFile(PlanParty who, String mat) implements PlanProblem {
        @Override
        public String words(PlanNames names, Units units) {
            return SAY.notInFile(names.of(who), mat);
        }
    }

    /** A mat has fewer places. */
    record NoSuchPlace(PlanParty who, int place, String mat, int places) implements PlanProblem {
        @Override
        public String words(PlanNames names, Units units) {
            return SAY.noSuchPlace(names.of(who), String.valueOf(place), mat, String.valueOf(places));
        }
    }

    /** It takes more or less than it asked for. */
    record OtherSize(PlanParty who, int quarters, int asked) implements PlanProblem {
        @Override
        public String words(PlanNames names, Units units) {
            return SAY.otherSize(names.of(who), String.valueOf(quarters), String.valueOf(asked));
        }
    }

    /** It begins earlier or later than it may. */
    record OutsideWindow(PlanParty who, LocalDate day) implements PlanProblem {
        @Override
        public String words(PlanNames names, Units units) {
            return SAY.outsideWindow(names.of(who), String.valueOf(day));
        }
    }

    /** It lies there on days that are not planned. */
    record BeyondPlan(PlanParty who, LocalDate from, LocalDate to) implements PlanProblem {
        @Override
        public String words(PlanNames names, Units units) {
            return SAY.beyondPlan(names.of(who), String.valueOf(from), String.valueOf(to));
        }
    }

    /** Its seed needs light and has none. */
    record DarkMat(PlanParty who, String mat) implements PlanProblem {
        @Override
        public String words(PlanNames names, Units units) {
            return SAY.darkMat(names.of(who), mat);
        }
    }

    /** Its mat is out of service on one of its days. */
    record MatOut(PlanParty who, String mat, LocalDate day) implements PlanProblem {
        @Override
        public String words(PlanNames names, Units units) {
            return SAY.matOut(names.of(who), mat, String.valueOf(day));
        }
    }

    /** It lies longer or shorter than it takes at that warmth. */
    record NotItsTime(PlanParty who, int days, double celsius) implements PlanProblem {
        @Override
        public String words(PlanNames names, Units units) {
            return SAY.notItsTime(names.of(who), String.valueOf(days), units.temperature(celsius));
        }
    }

    /** It goes on to a place under a light that there is not. */
    record NoSuchLitPlace(PlanParty who) implements PlanProblem {
        @Override
        public String words(PlanNames names, Units units) {
            return SAY.noSuchLitPlace(names.of(who));
        }
    }

    /** It has no place under a light when it comes off the mat. */
    record NoLightAfter(PlanParty who) implements PlanProblem {
        @Override
        public String words(PlanNames names, Units units) {
            return SAY.noLightAfter(names.of(who));
        }
    }

    /** Its place under a light is not what it asked for. */
    record OtherLight(PlanParty who) implements PlanProblem {
        @Override
        public String words(PlanNames names, Units units) {
            return SAY.otherLight(names.of(who));
        }
    }

    /** Two lie on one quarter. */
    record BothLie(PlanParty first, PlanParty second, int quarter, int place, String surface, LocalDate day)
            implements PlanProblem {
        @Override
        public String words(PlanNames names, Units units) {
            return SAY.bothLie(
                    names.of(first),
                    names.of(second),
                    String.valueOf(quarter),
                    String.valueOf(place),
                    surface,
                    String.valueOf(day));
        }
    }

    /** A circuit carries more than 80 % of its rating. */
    record CircuitOverloaded(String circuit, int watts, LocalDate day) implements PlanProblem {
        @Override
        public String words(PlanNames names, Units units) {
            return SAY.circuitOverloaded(circuit, String.valueOf(watts), String.valueOf(day));
        }
    }

    /** An answer is for a request that is unknown. */
    record NotAsked(String request) implements PlanProblem {
        @Override
        public String words(PlanNames names, Units units) {
            return SAY.notAsked(request);
        }
    }

    /** A request is placed or refused more than once. */
    record AnsweredTwice(PlanParty who) implements PlanProblem {
        @Override
        public String words(PlanNames names, Units units) {
            return SAY.answeredTwice(names.of(who));
        }
    }

    /** A request is neither placed nor refused. */
    record NotAnswered(PlanParty who) implements PlanProblem {
        @Override
        public String words(PlanNames names, Units units) {
            return SAY.notAnswered(names.of(who));
        }
    }
}
