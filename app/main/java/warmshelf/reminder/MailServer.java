package warmshelf.reminder;

import org.jspecify.annotations.Nullable;

/**
 * The server that takes the group's letters.
 *
 * @param user null: no sign-in is asked for
 * @param from the address that letters come from
 */
public record MailServer(
        String host,
        int port,
        @Nullable String user,
        @Nullable String password,
        String from,
        Security security) {
    /** How the line to it is kept secret. */
    public enum Security {
        /** Begun in the open and secured before anything is said; refused where the server cannot. */
        STARTTLS,
        /** Secured from the first byte. */
        TLS,
        /** In the open: for a server on the same machine. */
        NONE
    }
}
