package warmshelf.leaving;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.duty.DutyStore;
import warmshelf.group.MemberStore;
import warmshelf.sowing.SowingStores;
import warmshelf.surplus.SurplusStore;
import warmshelf.web.Pages;

/** Members who leave, and what becomes of what they leave, wired. */
public final class LeavingRoom {
    /** How long a leaving can be taken back. */
    public static final Duration UNDOABLE = LeavingUndoStore.UNDOABLE;

    private final LeavingStore leavings;
    private final LeavingUndoStore undos;
    private final MemberStore members;

    public LeavingRoom(Database database, Audit audit, MemberStore members, SowingStores stores, DutyStore duties) {
        this.members = members;
        SurplusStore surplus = new SurplusStore(stores);
        this.leavings = new LeavingStore(
                database,
                audit,
                new LeftThingStore(stores.sowings(), stores.crops()),
                members,
                stores.histories(),
                duties,
                surplus);
        this.undos = new LeavingUndoStore(
                database, audit, members, duties, stores.histories().withdrawals(), surplus);
    }

    public List<Pages> pages() {
        return List.of(new LeavingPages(members, leavings, undos));
    }

    /** What becomes of all that somebody has who is erased. */
    public LeavingStore leavings() {
        return leavings;
    }

    /** The members whose leaving can still be taken back. */
    public Supplier<Set<UUID>> undoable() {
        return undos::undoable;
    }
}
