package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import warmshelf.words.FormReader;

/** Which passphrases are accepted. Length counts; kinds of characters do not (as NIST SP 800-63B has it). */
final class PassphraseRule {
    private static final int FEWEST_DIFFERENT = 5;

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
        }
        return passphrase;
    }
}
