package warmshelf;

import java.time.Clock;
import java.util.List;
import warmshelf.crop.CropCatalogue;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.group.GroupSettingsPages;
import warmshelf.group.GroupStore;
import warmshelf.group.OpeningPages;
import warmshelf.member.Doorway;
import warmshelf.member.JoinPages;
import warmshelf.member.LinkStore;
import warmshelf.member.MemberStore;
import warmshelf.member.OwnSettingsPages;
import warmshelf.member.Passphrases;
import warmshelf.member.PeoplePages;
import warmshelf.member.SessionStore;
import warmshelf.member.SignInPages;
import warmshelf.seed.LotStore;
import warmshelf.seed.SeedBoxPages;
import warmshelf.web.BookPages;
import warmshelf.web.ClientAddress;
import warmshelf.web.HealthPages;
import warmshelf.web.Pages;
import warmshelf.web.RateLimits;
import warmshelf.web.SessionCookie;
import warmshelf.web.WebSettings;

/** Every feature's pages, wired once. A new feature adds its lines here. */
final class Rooms {
    private Rooms() {}

    static List<Pages> pages(Database database, Clock clock, SessionStore sessions, WebSettings web) {
        Audit audit = new Audit(clock);
        MemberStore members = new MemberStore(database, audit);
        LinkStore links = new LinkStore(database, audit);
        GroupStore group = new GroupStore(database, audit);
        Passphrases passphrases = new Passphrases();
        Doorway doorway = new Doorway(
                links,
                sessions,
                new SessionCookie(web.https()),
                new RateLimits(clock),
                new ClientAddress(web.trustedProxies()),
                audit);
        return List.of(
                new BookPages(),
                new HealthPages(database::answers),
                new OpeningPages(database, group, members, links, sessions, passphrases, doorway, clock, web.zone()),
                new JoinPages(database, members, links, sessions, passphrases, doorway),
                new SignInPages(database, members, links, sessions, passphrases, doorway),
                new PeoplePages(members, links, web.baseUrl()),
                new OwnSettingsPages(database, members, sessions, passphrases, doorway),
                new GroupSettingsPages(group),
                new SeedBoxPages(new LotStore(database, audit), CropCatalogue.bundled()));
    }
}
