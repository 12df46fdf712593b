package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.UUID;

/**
 * What somebody answered to a problem.
 *
 * @param entry the entry that told of the problem
 */
public record ProblemAnswer(UUID entry, Word word, UUID by, String byName, OffsetDateTime at) {
    /** The day on which it was given, in the group's zone. */
    public LocalDate on(ZoneId zone) {
        return at.atZoneSameInstant(zone).toLocalDate();
    }

    /** How far it has come with a problem. */
    public enum Word {
        /** Somebody knows of it and sees to it. */
        SEEN("seen", SAY.problemSeen()),
        /** It is dealt with. */
        DONE("done", SAY.problemDealtWith());

        private final String word;
        private final String words;

        Word(String word, String words) {
            this.word = word;
            this.words = words;
        }

        /** The word that the database and forms use. */
        public String word() {
            return word;
        }

        /** As a sentence says it: 'seen by Ana'. */
        public String words() {
            return words;
        }

        /** The answer of that word. */
        public static Word named(String word) {
            for (Word each : values()) {
                if (each.word.equals(word)) {
                    return each;
                }
            }
            throw new IllegalArgumentException("no answer is called '" + word + "'");
        }
    }
}
