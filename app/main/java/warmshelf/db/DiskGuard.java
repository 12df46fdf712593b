package warmshelf.db;

import org.h2.api.ErrorCode;
import org.jooq.Delete;
import org.jooq.ExecuteContext;
import org.jooq.ExecuteListener;
import org.jooq.ExecuteType;
import org.jooq.Insert;
import org.jooq.Query;
import org.jooq.Update;

/** Keeps everything from writing while the disk has no room for it, and tells when the database has closed all the same. */
final class DiskGuard implements ExecuteListener {
    private static final long serialVersionUID = 1L;

    private final transient DiskRoom room;
    private final transient Runnable closed;

    /** @param closed is run when the database is found closed */
    DiskGuard(DiskRoom room, Runnable closed) {
        this.room = room;
        this.closed = closed;
    }

    @Override
    public void start(ExecuteContext ctx) {
        if (writes(ctx) && room.isExhausted()) {
            throw new NoRoomOnDisk();
        }
    }

    private static boolean writes(ExecuteContext ctx) {
        Query query = ctx.query();
        return ctx.type() == ExecuteType.BATCH
                || query instanceof Insert
                || query instanceof Update
                || query instanceof Delete;
    }

    @Override
    public void exception(ExecuteContext ctx) {
        if (ctx.sqlException() != null && isClosed(ctx.sqlException().getErrorCode())) {
            closed.run();
        }
    }

    /** After a write that failed half way the database closes itself. */
    static boolean isClosed(int code) {
        return code == ErrorCode.DATABASE_IS_CLOSED || code == ErrorCode.DATABASE_CALLED_AT_SHUTDOWN;
    }
}
