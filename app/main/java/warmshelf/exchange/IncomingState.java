package warmshelf.exchange;

/** How far a file that somebody brings has come. Only in {@link #TAKEN} is anything of it kept. */
public enum IncomingState {
    CHECKING,
    READY,
    TAKING,
    TAKEN,
    REFUSED,
    CANCELLED,
    FAILED;

    /** Whether it is being read just now, or waits for that. */
    public boolean isBusy() {
        return this == CHECKING || this == TAKING;
    }

    /** Whether nobody has said yet what becomes of it. */
    boolean isUndecided() {
        return this == CHECKING || this == READY;
    }

    /** Whether its file is needed no more. */
    boolean isOver() {
        return !isBusy() && this != READY;
    }
}
