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

    /** Another plan is being worked on; one at a time is. */
    record AnotherRuns() implements PlanRefusal {
        @Override
        public String words(Units units) {
            return SAY.anotherRuns();
        }
    }

    /** The plan that is to be stopped is not being worked on. */
    record DoesNotRun(KeptPlan.State state) implements PlanRefusal {
        @Override
        public String words(Units units) {
            return SAY.doesNotRun(state.words());
        }
    }

    /** Somebody changed, published or undid the plan after it was looked at. */
    record PlanChanged() implements PlanRefusal {
        @Override
        public String words(Units units) {
            return SAY.planChanged();
        }
    }

    /** The same, where a change by hand is therefore not kept. */
    record EditNotKept(String what) implements PlanRefusal {
        @Override
        public String words(Units units) {
            return SAY.editNotKept(what);
        }
    }

    /** Nothing of the publication can be taken back any more. */
    record NothingToUndo() implements PlanRefusal {
        @Override
        public String words(Units units) {
            return SAY.nothingToUndo();
        }
    }

    /** The request is somebody else's, or does not wait. */
    record NotYoursToPutFirst() implements PlanRefusal {
        @Override
        public String words(Units units) {
            return SAY.notYoursToPutFirst();
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
