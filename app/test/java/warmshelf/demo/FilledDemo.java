package warmshelf.demo;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import warmshelf.check.TodayStore;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.group.LinkStore;
import warmshelf.group.MemberStore;

/** The demo group in a database of a test's own: the names of a member, a coordinator and whoever is on duty. */
public record FilledDemo(String member, String coordinator, String onDuty) {
    public static final String PASSPHRASE = DemoGroup.PASSPHRASE;

    public static FilledDemo in(Database database, Clock clock) {
        DemoGroup.fill(database, clock.instant());
        Audit audit = new Audit(clock);
        LocalDate today = LocalDate.ofInstant(clock.instant(), DemoGroup.ZONE);
        List<String> names = new DemoLinks(new MemberStore(database, audit), new LinkStore(database, audit))
                .make(new TodayStore(database).onDuty(today)).stream()
                        .map(signIn -> signIn.who().replaceAll(",.*", ""))
                        .toList();
        return new FilledDemo(names.get(0), names.get(1), names.get(2));
    }
}
