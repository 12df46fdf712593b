package warmshelf.surplus;

import static warmshelf.surplus.SurplusSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why seedlings are not offered, taken or handed over. */
sealed interface SurplusRefusal extends Message {

    /** There are not that many. */
    record TooMany(String title, int plants, int most) implements SurplusRefusal {
        @Override
        public String words(Units units) {
            return SAY.tooMany(plants, title, most);
        }
    }

    /** More than that are taken already. */
    record TakenAlready(int plants, int taken) implements SurplusRefusal {
        @Override
        public String words(Units units) {
            return SAY.takenAlready(plants, taken);
        }
    }

    /** Others were quicker. */
    record TooFewFree(String title, int plants, int free) implements SurplusRefusal {
        @Override
        public String words(Units units) {
            return free == 0 ? SAY.allTaken(title) : SAY.tooFewFree(plants, title, free);
        }
    }

    /** There is nothing of it to give away, or not any more. */
    record NotOpen(String title) implements SurplusRefusal {
        @Override
        public String words(Units units) {
            return SAY.notOpen(title);
        }
    }

    /** Its rack is held. */
    record OnHeldRack(String title) implements SurplusRefusal {
        @Override
        public String words(Units units) {
            return SAY.onHeldRack(title);
        }
    }

    /** They are the taker's own. */
    record OwnPlants(String title) implements SurplusRefusal {
        @Override
        public String words(Units units) {
            return SAY.ownPlants(title);
        }
    }

    /** They are somebody else's to offer. */
    record OthersPlants(String grower) implements SurplusRefusal {
        @Override
        public String words(Units units) {
            return SAY.onlyGrowerOffers(grower);
        }
    }

    /** The other side was quicker. */
    record Changed() implements SurplusRefusal {
        @Override
        public String words(Units units) {
            return SAY.takingChanged();
        }
    }
}
