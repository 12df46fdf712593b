package warmshelf.operation;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Database;
import warmshelf.db.DiskRoom;
import warmshelf.web.Aside;
import warmshelf.web.HealthPages;
import warmshelf.web.HealthPart;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.DayWords;
import warmshelf.words.Numbers;

/** How the server runs, on one page. It counts requests as they are answered. */
final class ServerPages implements Pages {
    private static final long MEGABYTE = 1_000_000;
    private static final double GIGABYTE = 1e9;

    private final Database database;
    private final List<Supplier<HealthPart>> parts;
    private final Aside backups;
    private final WorkStore work;
    private final OperationRoom.Sends sends;
    private final RequestFigures figures;
    private final Clock clock;
    private final Instant started;

    ServerPages(
            Database database,
            List<Supplier<HealthPart>> parts,
            Aside backups,
            OperationRoom.Sends sends,
            RequestFigures figures,
            Clock clock) {
        this.database = database;
        this.parts = parts;
        this.backups = backups;
        this.work = new WorkStore(database);
        this.sends = sends;
        this.figures = figures;
        this.clock = clock;
        this.started = clock.instant();
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/server", this::show, Role.COORDINATOR);
    }

    @Override
    public void answered(String method, String route, int status, Duration took) {
        figures.answered(method, route, status, took);
    }

    private void show(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Respond.page(ctx, "operation/server.peb", page(visitor.zone()), backups.model(visitor));
    }

    private ServerPage page(ZoneId zone) {
        Instant now = clock.instant();
        Runtime java = Runtime.getRuntime();
        @Nullable DiskRoom room = database.room().orElse(null);
        return new ServerPage(
                parts.stream().flatMap(part -> part.get().problems().stream()).toList(),
                HealthPages.version(),
                minute(started, zone),
                DayWords.ago(Duration.between(started, now)),
                System.getProperty("java.version") + ", " + System.getProperty("java.vm.name"),
                (java.totalMemory() - java.freeMemory()) / MEGABYTE,
                java.maxMemory() / MEGABYTE,
                database.product(),
                database.folder().isEmpty()
                        ? null
                        : Numbers.oneDecimal((double) OperationRoom.bytes(database) / MEGABYTE),
                room == null ? null : Numbers.oneDecimal(room.free() / GIGABYTE),
                room == null ? -1 : room.daysLeft().orElse(-1),
                sends.letters() ? work.letters(now, zone) : null,
                sends.notices() ? work.notices(now, zone) : null,
                work.plans(),
                work.files(),
                database.programs().stream()
                        .map(each -> new ServerPage.Node(
                                each.name(), minute(each.since().toInstant(), zone), each.thisOne()))
                        .toList(),
                database.pool(),
                database.slowQueries(),
                figures.requests(),
                figures.faults(),
                WorkStore.DAYS);
    }

    private static LocalDateTime minute(Instant moment, ZoneId zone) {
        return LocalDateTime.ofInstant(moment, zone).truncatedTo(ChronoUnit.MINUTES);
    }
}
