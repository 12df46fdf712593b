package warmshelf.backup;

import java.util.Arrays;

/** A backup could not be made. */
final class BackupTrouble extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final Reason reason;

    BackupTrouble(Reason reason, Throwable cause) {
        super(reason.code(), cause);
        this.reason = reason;
    }

    BackupTrouble(Reason reason) {
        super(reason.code());
        this.reason = reason;
    }

    Reason reason() {
        return reason;
    }

    /** Why. */
    enum Reason {
        NO_ROOM("no-room"),
        UNWRITABLE("unwritable"),
        /** It was opened, and was not what it should be. */
        NOT_WHOLE("not-whole"),
        /** The database was away, or the program is at fault. */
        FAULT("fault");

        private final String code;

        Reason(String code) {
            this.code = code;
        }

        /** For scripts. */
        String code() {
            return code;
        }

        static Reason named(String code) {
            return Arrays.stream(values())
                    .filter(each -> each.code.equals(code))
                    .findFirst()
                    .orElse(FAULT);
        }
    }
}
