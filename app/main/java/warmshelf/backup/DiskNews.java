package warmshelf.backup;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import warmshelf.db.Database;
import warmshelf.db.DiskRoom;
import warmshelf.web.Aside;
import warmshelf.web.Visitor;
import warmshelf.words.Numbers;

/** Tells everybody while the disk is full, as nothing can be saved, and coordinators before it is. */
final class DiskNews implements Aside {
    private static final double GIGABYTE = 1e9;

    private final Database database;

    DiskNews(Database database) {
        this.database = database;
    }

    /**
     * The disk, for pages.
     *
     * @param state 'roomy', 'low' or 'full'
     * @param gigabytes that are free, in words
     * @param days left at the rate of the last days; -1: nothing can be said
     */
    public record DiskView(String state, String gigabytes, long days) {}

    @Override
    public Map<String, Object> model(Visitor visitor) {
        Optional<DiskRoom> room = database.room();
        DiskRoom.State state = room.map(DiskRoom::state).orElse(DiskRoom.State.ROOMY);
        boolean told = state == DiskRoom.State.FULL || (state == DiskRoom.State.LOW && visitor.coordinator());
        return Map.of(
                "disk",
                room.isPresent() && told ? view(room.get(), state) : new DiskView(DiskRoom.State.ROOMY.code(), "", -1));
    }

    private static DiskView view(DiskRoom room, DiskRoom.State state) {
        OptionalLong days = room.daysLeft();
        return new DiskView(state.code(), Numbers.oneDecimal(room.free() / GIGABYTE), days.orElse(-1));
    }
}
