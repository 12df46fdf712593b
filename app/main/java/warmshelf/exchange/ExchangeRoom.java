package warmshelf.exchange;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.frost.garden.NightStore;
import warmshelf.frost.garden.ThermometerStore;
import warmshelf.group.LinkStore;
import warmshelf.group.MemberStore;
import warmshelf.sowing.SowingStores;
import warmshelf.web.BrowserSession;
import warmshelf.web.Pages;

/** Tables that people take out and bring in, wired. */
public final class ExchangeRoom {
    /** How long a file waits to be taken in. */
    public static final Duration KEPT = IncomingJobs.KEPT;

    private final IncomingJobs jobs;
    private final List<Pages> pages;

    public ExchangeRoom(
            SowingStores stores, Clock clock, MemberStore members, LinkStore links, BrowserSession browsers) {
        Database database = stores.database();
        Audit audit = stores.audit();
        IncomingLogStore log = new IncomingLogStore(database, audit);
        IncomingStore.Parts parts = new IncomingStore.Parts(
                stores.lots(),
                stores.sowings(),
                stores.entries(),
                stores.crops(),
                members,
                links,
                new NightStore(database, audit));
        this.jobs = new IncomingJobs(new IncomingStore(database, log, parts), clock);
        ThermometerStore thermometers = new ThermometerStore(database, audit);
        this.pages = List.of(
                new FilesPages(new ExportStore(database, stores.crops()), log),
                new SendingPages(jobs, thermometers),
                new IncomingPages(jobs, log, thermometers, browsers));
    }

    public List<Pages> pages() {
        return pages;
    }

    /** Drops files that wait to be taken in, with all that was found in them. */
    public void forgetIncoming() {
        jobs.forgetAll();
    }
}
