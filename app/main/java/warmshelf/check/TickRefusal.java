package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import warmshelf.allocation.RackHold;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.SowingStage;
import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why a tick cannot be taken. */
sealed interface TickRefusal extends Message {

    /** Its id names an entry of another sowing. */
    record IdOfAnotherSowing() implements TickRefusal {
        @Override
        public String words(Units units) {
            return SAY.idOfAnotherSowing();
        }
    }

    /** It corrects an entry that is not one of this sowing's. */
    record NotOfThisSowing() implements TickRefusal {
        @Override
        public String words(Units units) {
            return SAY.notOfThisSowing();
        }
    }

    /** Nothing more is entered for what is over. */
    record HasEnded(String sowing, SowingStage stage) implements TickRefusal {
        @Override
        public String words(Units units) {
            return SAY.hasEnded(sowing, stage.title());
        }
    }

    /** Something was found on its rack that spreads. */
    record RackIsHeld(RackHold hold) implements TickRefusal {
        @Override
        public String words(Units units) {
            return SAY.rackIsHeld(hold.rack(), hold.sinceWords());
        }
    }

    /** Something was found on the rack to which it would go that spreads. */
    record RackTakesNothing(RackHold hold) implements TickRefusal {
        @Override
        public String words(Units units) {
            return SAY.rackTakesNothing(hold.rack(), hold.sinceWords());
        }
    }

    /** Another entry corrects it already. */
    record CorrectedAlready() implements TickRefusal {
        @Override
        public String words(Units units) {
            return SAY.correctedAlready();
        }
    }

    /** A step that changed a place or a packet is corrected, not taken back. */
    record MovedOn(EntryStep step) implements TickRefusal {
        @Override
        public String words(Units units) {
            return SAY.movedOn(step.done());
        }
    }

    /** It counts what is not sown yet. */
    record NotSownYet(String sowing) implements TickRefusal {
        @Override
        public String words(Units units) {
            return SAY.notSownYet(sowing);
        }
    }

    /** The step does not come after that stage. */
    record CannotFollow(String sowing, SowingStage stage, EntryStep step) implements TickRefusal {
        @Override
        public String words(Units units) {
            return SAY.cannotFollow(sowing, stage.title(), step.done());
        }
    }

    /** Counts say 'so far' and cannot fall. */
    record FewerSprouted(int now, int before) implements TickRefusal {
        @Override
        public String words(Units units) {
            return SAY.fewerSprouted(now, before);
        }
    }

    /** Out of a bag moves only what has sprouted. */
    record MoreMovedThanSprouted(int moved, int sprouted) implements TickRefusal {
        @Override
        public String words(Units units) {
            return SAY.moreMovedThanSprouted(moved, sprouted);
        }
    }

    /** Counts say 'so far' and cannot fall. */
    record FewerMoved(int now, int before) implements TickRefusal {
        @Override
        public String words(Units units) {
            return SAY.fewerMoved(now, before);
        }
    }
}
