package warmshelf.duty;

import java.util.Locale;

/** What has become of asking somebody to take a day. */
public enum SwapState {
    OPEN,
    TAKEN,
    DECLINED,
    WITHDRAWN,
    /** The day was given to somebody else meanwhile. */
    OVERTAKEN;

    String word() {
        return name().toLowerCase(Locale.ENGLISH);
    }

    static SwapState of(String word) {
        return valueOf(word.toUpperCase(Locale.ENGLISH));
    }
}
