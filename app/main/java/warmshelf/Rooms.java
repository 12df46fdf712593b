package warmshelf;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import warmshelf.allocation.ClashStore;
import warmshelf.allocation.RequestStore;
import warmshelf.allocation.SpaceStore;
import warmshelf.allocation.StayStore;
import warmshelf.check.CheckRoom;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.frost.FrostPages;
import warmshelf.group.GroupSettingsPages;
import warmshelf.group.GroupStore;
import warmshelf.group.OpeningPages;
import warmshelf.group.OpeningStore;
import warmshelf.member.AdmissionStore;
import warmshelf.member.Doorway;
import warmshelf.member.JoinPages;
import warmshelf.member.LinkStore;
import warmshelf.member.MemberStore;
import warmshelf.member.OwnSettingsPages;
import warmshelf.member.Passphrases;
import warmshelf.member.PeoplePages;
import warmshelf.member.SessionStore;
import warmshelf.member.SignInPages;
import warmshelf.request.RequestRoom;
import warmshelf.seed.LotStore;
import warmshelf.seed.SeedBoxPages;
import warmshelf.shelf.BoardPages;
import warmshelf.shelf.BoardStore;
import warmshelf.shelf.MatPages;
import warmshelf.shelf.MatStore;
import warmshelf.shelf.SitePages;
import warmshelf.shelf.SiteStore;
import warmshelf.shelf.StandStore;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.GrowerFrost;
import warmshelf.sowing.HistoryStore;
import warmshelf.sowing.SowingPlanner;
import warmshelf.sowing.SowingRoom;
import warmshelf.sowing.SowingStore;
import warmshelf.web.BookPages;
import warmshelf.web.BrowserSession;
import warmshelf.web.HealthPages;
import warmshelf.web.Pages;
import warmshelf.web.RateLimits;
import warmshelf.web.WebSettings;

/** Every feature's pages, wired once. A new feature adds its lines here. */
final class Rooms {
    private Rooms() {}

    static List<Pages> pages(Database database, Clock clock, SessionStore sessions, WebSettings web) {
        Audit audit = new Audit(clock);
        CropCatalogue crops = CropCatalogue.bundled();
        MemberStore members = new MemberStore(database, audit);
        LinkStore links = new LinkStore(database, audit);
        GroupStore group = new GroupStore(database, audit);
        AdmissionStore admissions = new AdmissionStore(database, members, links, sessions);
        OpeningStore openings = new OpeningStore(admissions, members, group);
        Passphrases passphrases = new Passphrases();
        BrowserSession browsers = new BrowserSession(sessions, web);
        Doorway doorway = new Doorway(links, new RateLimits(clock), audit);
        SiteStore sites = new SiteStore(database.sql());
        BoardStore board = new BoardStore(
                database.sql(), id -> crops.find(id).map(Crop::name).orElse(id));
        List<Pages> pages = new ArrayList<>(List.of(
                new BookPages(),
                new HealthPages(database::answers),
                new OpeningPages(openings, passphrases, doorway, browsers, clock, web.zone()),
                new JoinPages(admissions, passphrases, doorway, browsers),
                new SignInPages(admissions, members, sessions, passphrases, doorway, browsers),
                new PeoplePages(members, links, browsers),
                new OwnSettingsPages(members, admissions, passphrases, doorway, browsers),
                new GroupSettingsPages(group),
                new SitePages(sites, new StandStore(database.sql(), audit)),
                new MatPages(sites, new MatStore(database.sql(), audit)),
                new BoardPages(sites, board),
                new FrostPages(),
                new SeedBoxPages(new LotStore(database, audit), crops)));
        pages.addAll(sowingRooms(database, audit, crops));
        return pages;
    }

    /** Asking, placing and the daily round stand on the same stores. */
    private static List<Pages> sowingRooms(Database database, Audit audit, CropCatalogue crops) {
        SowingPlanner planner = new SowingPlanner(crops, new GrowerFrost());
        SowingStore sowings = new SowingStore(database, crops, audit);
        EntryStore entries = new EntryStore(audit);
        RequestStore requests = new RequestStore(database, audit);
        StayStore stays = new StayStore(audit, new ClashStore(crops));
        HistoryStore histories = new HistoryStore(database, audit, sowings, entries, requests, stays);
        LotStore lots = new LotStore(database, audit);
        SpaceStore space = new SpaceStore(database);
        List<Pages> pages = new ArrayList<>();
        pages.addAll(SowingRoom.pages(database, crops, planner, lots, sowings, requests, histories, space));
        pages.addAll(RequestRoom.pages(database, planner, sowings, requests, histories, stays, space));
        pages.addAll(CheckRoom.pages(database, audit, planner, sowings, entries, histories, stays, lots, space));
        return pages;
    }
}
