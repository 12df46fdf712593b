package warmshelf.privacy;

import java.time.Clock;
import java.util.List;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.group.DoorPages;
import warmshelf.group.MemberStore;
import warmshelf.group.Passphrases;
import warmshelf.leaving.LeavingStore;
import warmshelf.web.BrowserSession;
import warmshelf.web.Pages;

/** What people may ask of what is known of them, wired. */
public final class PrivacyRoom {
    private PrivacyRoom() {}

    /**
     * The room's pages, wired.
     *
     * @param forgetIncoming drops files that wait to be taken in, as they may name somebody who is erased
     */
    public static List<Pages> pages(
            Database database,
            Audit audit,
            Clock clock,
            MemberStore members,
            LeavingStore leavings,
            Passphrases passphrases,
            DoorPages door,
            BrowserSession browsers,
            Runnable forgetIncoming) {
        return List.of(
                new RetentionPages(),
                new KnownPages(new KnownStore(database), clock),
                new ErasurePages(
                        members,
                        new ErasureStore(database, audit, members, leavings),
                        new ErasureCountStore(database, leavings),
                        passphrases,
                        door,
                        browsers,
                        forgetIncoming));
    }
}
