package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import java.time.Duration;

/** How often somebody may try what could be guessed, before they have to wait. */
public enum GuessLimit {
    LINKS_FROM_ADDRESS(40, Duration.ofSeconds(10), SAY.linksFromAddress()),
    SIGN_IN_FROM_ADDRESS(20, Duration.ofSeconds(15), SAY.signInFromAddress()),
    SIGN_IN_BY_NAME_FROM_ADDRESS(10, Duration.ofMinutes(1), SAY.signInByNameFromAddress()),
    SIGN_IN_BY_NAME(60, Duration.ofSeconds(20), SAY.signInByName()),
    SIGN_IN_ON_KNOWN_DEVICE(10, Duration.ofMinutes(1), SAY.signInOnKnownDevice()),
    /** Asking for the question and answering it count each. */
    PASSKEYS_FROM_ADDRESS(40, Duration.ofSeconds(8), SAY.passkeysFromAddress()),
    PASSPHRASE_CHANGE(10, Duration.ofMinutes(1), SAY.passphraseChange());

    private final int tries;
    private final Duration oneBackEach;
    private final String about;

    GuessLimit(int tries, Duration oneBackEach, String about) {
        this.tries = tries;
        this.oneBackEach = oneBackEach;
        this.about = about;
    }

    /** How many are free at first. */
    public int tries() {
        return tries;
    }

    /** After how long one more is free. */
    public Duration oneBackEach() {
        return oneBackEach;
    }

    /** What is tried, and where from. */
    public String about() {
        return about;
    }
}
