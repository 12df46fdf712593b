package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why something about the people of the group is not done. */
sealed interface GroupRefusal extends Message {

    /** The group would have no coordinator any more. */
    record OnlyCoordinator(String member) implements GroupRefusal {
        @Override
        public String words(Units units) {
            return SAY.onlyCoordinator(member);
        }
    }
}
