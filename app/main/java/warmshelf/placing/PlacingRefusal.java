package warmshelf.placing;

import static warmshelf.placing.PlacingSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why a request or a stay cannot be decided on. */
sealed interface PlacingRefusal extends Message {

    /** What has ended stays as it was. */
    record StayEnded() implements PlacingRefusal {
        @Override
        public String words(Units units) {
            return SAY.stayEnded();
        }
    }

    /** Somebody decided on the request of a stay that was to be freed. */
    record DecidedByOthers() implements PlacingRefusal {
        @Override
        public String words(Units units) {
            return SAY.decidedByOthers();
        }
    }

    /** A decision on seed that is sown is not taken back. */
    record OnlyBeforeSowing() implements PlacingRefusal {
        @Override
        public String words(Units units) {
            return SAY.onlyBeforeSowing();
        }
    }

    /** The last move is somebody else's, or something changed since. */
    record NoMoveToTakeBack() implements PlacingRefusal {
        @Override
        public String words(Units units) {
            return SAY.noMoveToTakeBack();
        }
    }

    /** It was sown meanwhile, or that was taken back. */
    record EntryMade() implements PlacingRefusal {
        @Override
        public String words(Units units) {
            return SAY.entryMade();
        }
    }

    /** What would be saved is not what was shown. */
    record OtherThanShown() implements PlacingRefusal {
        @Override
        public String words(Units units) {
            return SAY.otherThanShown();
        }
    }
}
