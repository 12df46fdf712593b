package warmshelf.news;

import java.util.UUID;

/** What can be new for somebody, and the page that shows it. */
public enum NewsKind {
    PLACED("placed", "/sowings/%s"),
    REFUSED("refused", "/sowings/%s"),
    /** A place is taken back. */
    WAITING("waiting", "/sowings/%s"),
    /** A plan has no place for what waits. */
    NO_PLACE("no-place", "/sowings/%s"),
    MOVED("moved", "/sowings/%s"),
    PROBLEM("problem", "/sowings/%s"),
    MESSAGE("message", "/sowings/%s"),
    PHOTO("photo", "/sowings/%s"),
    SEED_ASKED("seed-asked", "/sowings/%s/seed"),
    SEED_GIVEN("seed-given", "/sowings/%s"),
    SEED_REFUSED("seed-refused", "/sowings/%s"),
    SEEDLINGS("seedlings", "/surplus"),
    SEEDLINGS_TAKEN("seedlings-taken", "/sowings/%s/surplus"),
    DUTY_ASKED("duty-asked", "/duty/swaps"),
    DUTY_TAKEN("duty-taken", "/duty");

    private final String word;
    private final String address;

    NewsKind(String word, String address) {
        this.word = word;
        this.address = address;
    }

    String word() {
        return word;
    }

    /** The page that shows it, of a sowing or a swap. */
    String address(UUID thing) {
        return address.formatted(thing);
    }

    static NewsKind named(String word) {
        for (NewsKind kind : values()) {
            if (kind.word.equals(word)) {
                return kind;
            }
        }
        throw new IllegalArgumentException("no news are called '" + word + "'");
    }
}
