package warmshelf.duty;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import warmshelf.check.RoundStore;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.web.Aside;
import warmshelf.web.Awaiting;
import warmshelf.web.Pages;

/** The duty rota, wired; and what it adds to Today. */
public final class DutyRoom {
    private final Database database;
    private final DutyStore duties;
    private final StandInStore standIns;
    private final SiteRuleStore rules;
    private final WillingStore willing;
    private final SwapStore swaps;
    private final SwapReadStore swapReads;
    private final DutyNews news;

    public DutyRoom(Database database, Audit audit, RoundStore rounds) {
        this.database = database;
        standIns = new StandInStore(database, audit);
        duties = new DutyStore(database, audit, standIns);
        rules = new SiteRuleStore(database, audit, standIns);
        willing = new WillingStore(database, audit, standIns);
        swaps = new SwapStore(database, audit, standIns);
        swapReads = new SwapReadStore(database);
        news = new DutyNews(new WatchStore(database, duties, standIns, rules, swapReads), rounds, audit::now);
    }

    public DutyStore duties() {
        return duties;
    }

    public List<Pages> pages() {
        return List.of(
                new DutyPages(duties, standIns, rules, swapReads, news),
                new MinePages(duties, standIns, willing, swapReads),
                new ProposalPages(duties, new RotaBookStore(database)),
                new SwapPages(duties, swaps, swapReads));
    }

    /** The rounds that somebody is to walk because whoever is on duty has not, by a time of day in the group's zone. */
    public List<LateRound> standIns(UUID member, LocalDate day, LocalTime now) {
        return news.standIns(member, day, now);
    }

    /** Days on which nobody is down to look. */
    public Awaiting awaiting() {
        return new EmptyTurnNews(duties);
    }

    /** Days to take, rounds to walk in another's stead, and for coordinators what is late. */
    public Aside today() {
        return news;
    }
}
