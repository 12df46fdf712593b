package warmshelf;

import java.net.BindException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import warmshelf.backup.BackupRoom;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.group.CalledStore;
import warmshelf.group.GroupStore;
import warmshelf.group.LinkPurpose;
import warmshelf.group.LinkStore;
import warmshelf.group.Passphrases;
import warmshelf.group.SessionStore;
import warmshelf.group.SubmissionStore;
import warmshelf.shelf.AddressedSiteStore;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.SowingResultStore;
import warmshelf.web.Pages;
import warmshelf.web.RouteRight;
import warmshelf.web.WebServer;

/** The whole application, serving one group's database. The database stays the caller's to close. */
public final class Server implements AutoCloseable {
    private final Settings settings;
    private final Database database;
    private final Clock clock;
    private final WebServer web;
    private final List<AutoCloseable> work;

    private Server(Settings settings, Database database, Clock clock, WebServer web, BackupRoom backups) {
        this.settings = settings;
        this.database = database;
        this.clock = clock;
        this.web = web;
        List<AutoCloseable> begun = new ArrayList<>();
        begun.add(backups.start());
        if (!settings.means().none()) {
            begun.add(Rooms.work(database, clock, settings.means(), settings.addressAt(web.port())));
        }
        this.work = begun;
    }

    public static Server start(Settings settings, Database database, Clock clock) {
        return start(settings, database, clock, new Passphrases(), List.of());
    }

    /**
     * Starts with more pages than the application's own, and passphrases at a cost of one's own.
     *
     * @throws BadInput when the port cannot be had
     */
    public static Server start(
            Settings settings, Database database, Clock clock, Passphrases passphrases, List<Pages> more) {
        database.sql().transaction(inside -> CalledStore.renew(inside.dsl()));
        Audit audit = new Audit(clock);
        new SowingResultStore(database, new EntryStore(audit), audit).fill();
        SessionStore sessions = new SessionStore(database, clock);
        BackupRoom backups = BackupRoom.over(database, new GroupStore(database, audit), settings.upkeep(), clock);
        List<Pages> pages = new ArrayList<>(
                Rooms.pages(database, clock, sessions, passphrases, settings.web(), settings.means(), backups));
        pages.addAll(more);
        try {
            return new Server(
                    settings,
                    database,
                    clock,
                    WebServer.start(
                            settings.web(),
                            sessions,
                            new AddressedSiteStore(database.sql()),
                            new SubmissionStore(database),
                            clock,
                            pages),
                    backups);
        } catch (RuntimeException notStarted) {
            if (Causes.has(notStarted, BindException.class)) {
                throw new BadInput(
                        "Port %d at %s cannot be used; another program may have it. Choose another by --port."
                                .formatted(settings.port(), settings.host()));
            }
            throw notStarted;
        }
    }

    /** The address people type, without a slash at the end. */
    public String address() {
        return settings.addressAt(web.port());
    }

    public int port() {
        return web.port();
    }

    public List<RouteRight> rights() {
        return web.rights();
    }

    /** While nobody has opened the group: the address of a fresh link that does, which voids the links before it. */
    public Optional<String> openingLink() {
        Audit audit = new Audit(clock);
        if (new GroupStore(database, audit).opened()) {
            return Optional.empty();
        }
        String token = new LinkStore(database, audit).makeOpening();
        return Optional.of(address() + LinkPurpose.OPEN_GROUP.address(token));
    }

    @Override
    public void close() {
        try {
            for (AutoCloseable each : work) {
                each.close();
            }
        } catch (Exception neverHappens) {
            throw new IllegalStateException("what goes on by itself could not be stopped", neverHappens);
        }
        web.close();
    }
}
