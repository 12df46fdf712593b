package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import com.nulabinc.zxcvbn.Zxcvbn;
import java.util.ArrayList;
import java.util.List;
import warmshelf.words.FormReader;

/**
 * Which passphrases are accepted. Length counts, and how many guesses it takes; kinds of characters do not (as NIST SP 800-63B has
 * it).
 */
final class PassphraseRule {
    private static final int FEWEST_DIFFERENT = 5;
    /** What the estimator calls safe from guessing at the door, however quick: 100 million guesses or more. */
    private static final int LEAST_SCORE = 3;
    /** Judging takes longer with length; what is not easy to guess so far does not become it. */
    private static final int JUDGED = 60;
    /** Words that whoever guesses at a group's door tries first. */
    private static final List<String> WORDS_OF_HERE =
            List.of("warmshelf", "warm shelf", "seed", "seedling", "seedlings");

    private PassphraseRule() {}

    /** Reads a new passphrase; the sentences never repeat what was typed. */
    static String read(FormReader form, String field, String label, String name) {
        String passphrase = form.text(field);
        int length = passphrase.codePointCount(0, passphrase.length());
        if (length < Passphrases.SHORTEST || length > Passphrases.LONGEST) {
            form.refuse(field, SAY.passphraseLength(label, length, Passphrases.SHORTEST, Passphrases.LONGEST));
        } else if (passphrase.codePoints().distinct().count() < FEWEST_DIFFERENT) {
            form.refuse(field, SAY.passphraseRepeats(label));
        } else if (Member.key(passphrase).equals(Member.key(name))) {
            form.refuse(field, SAY.passphraseIsName(label));
        } else if (isEasyToGuess(passphrase, name)) {
            form.refuse(field, SAY.passphraseEasy(label));
        }
        return passphrase;
    }

    private static boolean isEasyToGuess(String passphrase, String name) {
        String judged = passphrase.substring(0, Math.min(passphrase.length(), JUDGED));
        List<String> guessedFirst = new ArrayList<>(WORDS_OF_HERE);
        guessedFirst.add(name);
        guessedFirst.addAll(List.of(name.split("\\s+", 0)));
        // Made anew each time: its word lists take 11 MB and are wanted once in a long while.
        return new Zxcvbn().measure(judged, guessedFirst).getScore() < LEAST_SCORE;
    }
}
