package warmshelf.group;

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
            form.refuse(
                    field,
                    "%s has %,d characters; from %d to %d are accepted. A few plain words are good."
                            .formatted(label, length, Passphrases.SHORTEST, Passphrases.LONGEST));
        } else if (passphrase.codePoints().distinct().count() < FEWEST_DIFFERENT) {
            form.refuse(field, label + " repeats the same few characters; a few plain words are better.");
        } else if (Member.key(passphrase).equals(Member.key(name))) {
            form.refuse(field, label + " is your name; a few words that nobody expects are better.");
        }
        return passphrase;
    }
}
