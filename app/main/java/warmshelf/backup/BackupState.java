package warmshelf.backup;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How backups stand.
 *
 * @param newest when the newest was made; null: there is none
 * @param trouble why the last try failed; null: it did not
 */
record BackupState(Kind kind, @Nullable Instant newest, BackupTrouble.@Nullable Reason trouble) {
    /** One a day, and a day's grace for a laptop that was asleep. */
    static final Duration OLD = Duration.ofDays(2);

    /** What they come to. */
    enum Kind {
        FRESH("fresh"),
        /** The group is new, and its first is about to be made. */
        NONE_YET("none-yet"),
        OLD("old"),
        FAILED("failed"),
        /** None is made by itself. */
        OFF("off");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        /** For scripts. */
        String code() {
            return code;
        }
    }

    static BackupState of(
            boolean byItself, Optional<Instant> newest, BackupTrouble.@Nullable Reason trouble, Instant now) {
        return new BackupState(kind(byItself, newest, trouble, now), newest.orElse(null), trouble);
    }

    private static Kind kind(
            boolean byItself, Optional<Instant> newest, BackupTrouble.@Nullable Reason trouble, Instant now) {
        if (trouble != null) {
            return Kind.FAILED;
        }
        if (!byItself) {
            return Kind.OFF;
        }
        if (newest.isEmpty()) {
            return Kind.NONE_YET;
        }
        return newest.get().isBefore(now.minus(OLD)) ? Kind.OLD : Kind.FRESH;
    }

    /** Whether a coordinator has to see to it. */
    boolean isAmiss() {
        return kind == Kind.OLD || kind == Kind.FAILED;
    }
}
