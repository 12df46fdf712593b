package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why something about the people of the group is not done. */
sealed interface GroupRefusal extends Message {

    /** Somebody present has the name, in whatever capitals. */
    record NameTaken(String name) implements GroupRefusal {
        @Override
        public String words(Units units) {
            return SAY.nameTaken(name);
        }
    }

    /** Somebody came in by a link that works once. */
    record LinkUsed() implements GroupRefusal {
        @Override
        public String words(Units units) {
            return SAY.linkUsed();
        }
    }

    /** The time of a link is over, or a coordinator took it back. */
    record LinkClosed() implements GroupRefusal {
        @Override
        public String words(Units units) {
            return SAY.linkClosed();
        }
    }

    /** Somebody has opened the group. */
    record OpenedAlready() implements GroupRefusal {
        @Override
        public String words(Units units) {
            return SAY.openedAlready();
        }
    }

    /** One's own entry is not the version that was read. */
    record SettingsChanged() implements GroupRefusal {
        @Override
        public String words(Units units) {
            return SAY.settingsChanged();
        }
    }

    /** One of the sites that were ticked has been deleted. */
    record SiteGone() implements GroupRefusal {
        @Override
        public String words(Units units) {
            return SAY.siteUnknown();
        }
    }

    /** The group would have no coordinator any more. */
    record OnlyCoordinator(String member) implements GroupRefusal {
        @Override
        public String words(Units units) {
            return SAY.onlyCoordinator(member);
        }
    }
}
