package warmshelf.plan;

import static warmshelf.plan.PlanSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why something that was planned is not done. */
sealed interface PlanRefusal extends Message {

    /** A published stay that the plan moves has begun, or was changed by hand. */
    record BegunOrChanged(String what) implements PlanRefusal {
        @Override
        public String words(Units units) {
            return SAY.begunOrChanged(what);
        }
    }

    /** The request does not wait any more. */
    record DoesNotWait(String what) implements PlanRefusal {
        @Override
        public String words(Units units) {
            return SAY.doesNotWait(what);
        }
    }

    /** Somebody decided on the request at the same moment. */
    record DecidedMeanwhile(String what) implements PlanRefusal {
        @Override
        public String words(Units units) {
            return SAY.decidedMeanwhile(what);
        }
    }

    /** Space or warmth is not to be had. */
    record InTheWay(String what, Message why) implements PlanRefusal {
        @Override
        public String words(Units units) {
            return SAY.inTheWay(what, why.words(units));
        }
    }

    /** The mat is not there any more. */
    record MatGone(String mat) implements PlanRefusal {
        @Override
        public String words(Units units) {
            return SAY.matGone(mat);
        }
    }

    /** The mat has fewer places by now. */
    record PlaceGone(int place, String mat) implements PlanRefusal {
        @Override
        public String words(Units units) {
            return SAY.placeGone(place, mat);
        }
    }

    /** The lit shelf has fewer places by now. */
    record LightGone(int place, String shelf) implements PlanRefusal {
        @Override
        public String words(Units units) {
            return SAY.lightGone(place, shelf);
        }
    }

    /** What lies on a mat out of service is not what was shown. */
    record ChangedSince() implements PlanRefusal {
        @Override
        public String words(Units units) {
            return SAY.changedSince();
        }
    }
}
