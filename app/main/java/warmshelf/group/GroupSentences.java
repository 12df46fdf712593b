package warmshelf.group;

import warmshelf.words.Sentences;

/** What is said when something about the people of the group is not done; the words stand in the room's file. */
interface GroupSentences {
    GroupSentences SAY = Sentences.of(GroupSentences.class);

    String onlyCoordinator(String member);
}
