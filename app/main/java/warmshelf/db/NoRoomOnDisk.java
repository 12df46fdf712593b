package warmshelf.db;

/** Nothing can be written: what is left of the disk is kept free, so that what is there can still be read. */
public final class NoRoomOnDisk extends RuntimeException {
    private static final long serialVersionUID = 1;

    public NoRoomOnDisk() {
        super("the disk has less room than is kept free");
    }
}
