package warmshelf.browser;

import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.SITE;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.options.Cookie;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.Server;
import warmshelf.Settings;
import warmshelf.allocation.ClashStore;
import warmshelf.allocation.StayStore;
import warmshelf.check.Tick;
import warmshelf.check.TickStore;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Method;
import warmshelf.db.Audit;
import warmshelf.group.SessionStore;
import warmshelf.seed.LotStore;
import warmshelf.seed.NewLot;
import warmshelf.sowing.Container;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStage;
import warmshelf.sowing.SowingStore;
import warmshelf.testing.Crops;
import warmshelf.testing.Person;
import warmshelf.testing.TestGroup;
import warmshelf.timeline.SeasonPart;

/**
 * A member with trays to look at today, on a server that can be stopped and started again at the same address, as a cellar
 * takes a phone's signal away. Its clock is the machine's, because a browser's worker has no other.
 */
final class PhoneRound implements AutoCloseable {
    private static final Clock CLOCK = Clock.systemUTC();
    private static final ZoneId DULUTH = ZoneId.of("America/Chicago");

    private final TestGroup group = TestGroup.open();
    private final List<UUID> sowings = new ArrayList<>();
    private final LotStore lots;
    private final SowingStore sowingStore;
    private final TickStore ticks;
    private @Nullable Server server;
    private int port;

    private PhoneRound(int trays) {
        group.clock().set(Instant.now(CLOCK));
        Audit audit = new Audit(CLOCK);
        lots = new LotStore(group.database(), audit);
        sowingStore = new SowingStore(group.database(), CropCatalogue.bundled(), audit);
        ticks = new TickStore(
                group.database(),
                audit,
                sowingStore,
                new EntryStore(audit),
                new StayStore(audit, new ClashStore(CropCatalogue.bundled())),
                lots);
        for (int tray = 1; tray <= trays; tray++) {
            sowings.add(sown("Row %02d".formatted(tray)));
        }
        start();
    }

    /** Pepper trays 'Row 01', 'Row 02' and so on, sown three days ago. */
    static PhoneRound of(int trays) {
        return new PhoneRound(trays);
    }

    private UUID sown(String variety) {
        Person tom = group.member();
        UUID id = UUID.randomUUID();
        UUID lot = lots.add(new NewLot("pepper", variety, 2026, 40, tom.id(), false, ""), tom.id());
        Sowing sowing = new Sowing(
                id,
                new Sowing.Grower(tom.id(), tom.name(), "US", tom.postcode()),
                today().getYear(),
                SeasonPart.SPRING,
                Crops.PEPPER,
                lot,
                variety,
                false,
                8,
                Method.CELLS,
                true,
                Container.HALF_TRAY,
                12,
                1,
                12,
                0.1,
                null,
                SowingStage.PLANNED,
                "",
                1,
                null);
        sowingStore.add(group.database().sql(), sowing, tom.id());
        Tick sownThen = new Tick(
                UUID.randomUUID(), EntryStep.SOWN, today().minusDays(3), null, null, null, false, null, "", null, null);
        ticks.keep(id, sownThen, today().plusDays(40), tom.id());
        return id;
    }

    static LocalDate today() {
        return LocalDate.now(CLOCK.withZone(DULUTH));
    }

    void start() {
        Settings settings = new Settings(
                "127.0.0.1", port, null, Path.of("unused"), null, null, null, Set.of(), ZoneId.of("UTC"), null, null);
        server = Server.start(settings, group.database(), CLOCK);
        port = server.port();
    }

    /** No page, no worker and no script reaches the server after this. */
    void stop() {
        if (server != null) {
            server.close();
            server = null;
        }
    }

    String address() {
        return "http://127.0.0.1:" + port;
    }

    /** A phone on which somebody is signed in. */
    BrowserContext phone(Chromium chromium, Person person) {
        BrowserContext context = chromium.on(Screen.PHONE, true);
        signIn(context, person);
        return context;
    }

    void signIn(BrowserContext context, Person person) {
        String session = Objects.requireNonNull(new SessionStore(group.database(), CLOCK).open(person.id()));
        context.addCookies(List.of(new Cookie("warmshelf", session).setUrl(address())));
    }

    Person tom() {
        return group.member();
    }

    Person priya() {
        return group.onDuty();
    }

    TestGroup group() {
        return group;
    }

    UUID sowing(int number) {
        return sowings.get(number - 1);
    }

    /** What was kept beside the sowing of each tray. */
    int looks() {
        return group.database().sql().fetchCount(ENTRY, ENTRY.STEP.ne("sown"));
    }

    List<Integer> counts(int number) {
        return group.database()
                .sql()
                .select(ENTRY.SPROUTED)
                .from(ENTRY)
                .where(ENTRY.SOWING_ID.eq(sowing(number)), ENTRY.STEP.ne("sown"))
                .orderBy(ENTRY.SEEN_AT)
                .fetch(ENTRY.SPROUTED);
    }

    /** Puts somebody on duty today, at a site of its own. */
    void look(Person person) {
        UUID site = UUID.randomUUID();
        group.database()
                .sql()
                .insertInto(SITE)
                .set(SITE.ID, site)
                .set(SITE.NAME, "Hall cellar")
                .set(SITE.WALK_ORDER, 1)
                .set(SITE.CIRCUIT_AMPS, BigDecimal.valueOf(15))
                .set(SITE.CIRCUIT_VOLTS, 120)
                .set(SITE.NOTE, "")
                .set(SITE.VERSION, 1)
                .execute();
        group.database()
                .sql()
                .insertInto(DUTY)
                .set(DUTY.SITE_ID, site)
                .set(DUTY.ON_DAY, today())
                .set(DUTY.MEMBER_ID, person.id())
                .set(DUTY.MADE_BY, person.id())
                .set(DUTY.MADE_AT, new Audit(CLOCK).now())
                .execute();
    }

    @Override
    public void close() {
        stop();
        group.close();
    }
}
