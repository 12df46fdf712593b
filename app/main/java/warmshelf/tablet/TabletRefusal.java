package warmshelf.tablet;

import static warmshelf.tablet.TabletSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why a tablet is not made, or does not come in. */
sealed interface TabletRefusal extends Message {
    /** Two of one name could not be told apart where an entry says which it came from. */
    record NameTaken(String name) implements TabletRefusal {
        @Override
        public String words(Units units) {
            return SAY.nameTaken(name);
        }
    }

    record SiteGone() implements TabletRefusal {
        @Override
        public String words(Units units) {
            return SAY.siteGone();
        }
    }

    record Ended(String name) implements TabletRefusal {
        @Override
        public String words(Units units) {
            return SAY.endedBefore(name);
        }
    }
}
