package warmshelf.demo;

import static warmshelf.demo.DemoSentences.SAY;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import warmshelf.BadInput;
import warmshelf.Server;
import warmshelf.Settings;
import warmshelf.SettingsOptions;
import warmshelf.UpkeepOptions;
import warmshelf.check.TodayStore;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.group.GroupStore;
import warmshelf.group.LinkStore;
import warmshelf.group.MemberStore;
import warmshelf.web.PretendedClock;

/** Runs the server with the demo group, whose data vanish at the end unless a folder is named for them. */
@Command(
        name = "demo",
        description =
                "Serve an invented group of 14 members, six weeks into its season, and print links that sign you in."
                        + " Unless it is early May it pretends a day then, and says so."
                        + " Its data lie in a temporary folder unless --data names one.",
        mixinStandardHelpOptions = true,
        abbreviateSynopsis = true,
        sortOptions = false)
public final class DemoCommand implements Callable<Integer> {
    @Mixin
    private SettingsOptions options;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws InterruptedException {
        Path temporary = DemoFolder.make();
        try {
            Settings settings = options.read(environment(temporary));
            Database database = settings.openDatabase();
            AtomicReference<@Nullable Server> running = new AtomicReference<>();
            // Before filling, which takes a moment in which someone may stop it.
            Runtime.getRuntime().addShutdownHook(new Thread(() -> stop(running.get(), database, temporary)));
            Clock clock = open(database);
            Server server = start(settings, database, clock);
            running.set(server);
            announce(server, database, clock);
            new CountDownLatch(1).await();
            return 0;
        } catch (RuntimeException notStarted) {
            DemoFolder.delete(temporary);
            throw notStarted;
        }
    }

    private static void stop(@Nullable Server server, Database database, Path temporary) {
        if (server != null) {
            server.close();
        }
        database.close();
        DemoFolder.delete(temporary);
    }

    /** A folder or database set for a real group is not the demo's business: only what the command line names counts. */
    private static Map<String, String> environment(Path temporary) {
        Map<String, String> environment = new HashMap<>(System.getenv());
        environment.keySet().removeIf(variable -> variable.startsWith("WARMSHELF_JDBC"));
        environment.put("WARMSHELF_DATA", temporary.toString());
        environment.put("WARMSHELF_BACKUP_AT", UpkeepOptions.NEVER);
        return environment;
    }

    /** Fills the database where it is empty; answers with the clock of the day on which the demo stands. */
    private static Clock open(Database database) {
        try {
            Clock real = Clock.systemUTC();
            GroupStore group = new GroupStore(database, new Audit(real));
            if (!group.opened()) {
                DemoDay day = DemoDay.on(real.instant());
                Clock clock = day.clock(real);
                database.together(() -> DemoGroup.fill(database, clock.instant()));
                return clock;
            }
            if (!DemoGroup.livesIn(group)) {
                throw new BadInput("The data there belong to another group than the demo's;"
                        + " name an empty folder by --data, or none.");
            }
            int season = group.find().orElseThrow().profile().season();
            return DemoDay.leftAt(season, DemoStore.lastMoment(database), real.instant())
                    .clock(real);
        } catch (RuntimeException notOpened) {
            database.close();
            throw notOpened;
        }
    }

    private static Server start(Settings settings, Database database, Clock clock) {
        try {
            return Server.start(settings, database, clock);
        } catch (RuntimeException notStarted) {
            database.close();
            throw notStarted;
        }
    }

    private void announce(Server server, Database database, Clock clock) {
        Audit audit = new Audit(clock);
        DemoLinks links = new DemoLinks(new MemberStore(database, audit), new LinkStore(database, audit));
        LocalDate today = LocalDate.ofInstant(clock.instant(), DemoGroup.ZONE);
        List<DemoLinks.SignIn> signIns = links.make(new TodayStore(database).onDuty(today));
        PrintWriter out = spec.commandLine().getOut();
        out.println(SAY.demoIsAt(server.address()));
        signIns.forEach(
                signIn -> out.println("  %s:%n    %s%s".formatted(signIn.who(), server.address(), signIn.path())));
        if (clock instanceof PretendedClock pretended) {
            out.println(pretended.words(today));
        }
        out.println(SAY.passphraseIs(DemoGroup.PASSPHRASE));
        out.flush();
    }
}
