package warmshelf;

import java.io.PrintWriter;
import java.time.Clock;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import warmshelf.db.Database;

/** Runs the group's server until it is told to stop. */
@Command(
        name = "serve",
        description = "Serve the group's pages. Each setting is an option or, in brackets, an environment variable;"
                + " the option counts more.",
        footerHeading = "%n",
        footer = {
            "Prints where it is, not JSON. GET /health answers 200 while the program and its database work,"
                    + " and says what is amiss."
        },
        mixinStandardHelpOptions = true,
        abbreviateSynopsis = true,
        sortOptions = false)
public final class ServeCommand implements Callable<Integer> {
    private static final long BETWEEN_TRIES_MS = 2_000;

    @Mixin
    private SettingsOptions options;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws InterruptedException {
        Settings settings = options.read(System.getenv());
        PrintWriter out = spec.commandLine().getOut();
        Database database = openWhenItAnswers(settings, out);
        Server server = start(settings, database);
        out.println("Warmshelf is at " + server.address());
        server.openingLink()
                .ifPresent(link -> out.println("Nobody has opened the group yet. Whoever follows this link first"
                        + " becomes its coordinator:\n" + link));
        out.flush();
        CountDownLatch stopped = new CountDownLatch(1);
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            server.close();
            database.close();
            stopped.countDown();
        }));
        stopped.await();
        return 0;
    }

    /** After a power cut the database server may come up later than this program. */
    private static Database openWhenItAnswers(Settings settings, PrintWriter out) throws InterruptedException {
        for (boolean told = false; ; told = true) {
            try {
                return settings.openDatabase();
            } catch (DatabaseOutOfReach notYet) {
                if (!told) {
                    out.println(notYet.getMessage() + " Trying again until it does.");
                    out.flush();
                }
                Thread.sleep(BETWEEN_TRIES_MS);
            }
        }
    }

    private static Server start(Settings settings, Database database) {
        try {
            return Server.start(settings, database, Clock.systemUTC());
        } catch (RuntimeException notStarted) {
            database.close();
            throw notStarted;
        }
    }
}
