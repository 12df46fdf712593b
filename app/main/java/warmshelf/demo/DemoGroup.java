package warmshelf.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.frost.evidence.EvidenceStore;
import warmshelf.group.GroupProfile;
import warmshelf.group.GroupStore;
import warmshelf.group.NewMember;
import warmshelf.sowing.SowingStores;
import warmshelf.words.Units;

/** Fills an empty database with the demo group, as it stands on the day given. */
final class DemoGroup {
    static final String NAME = "Hill and Shore Seed Starters";
    /** Everyone's, so that signing in by name can be tried too. */
    static final String PASSPHRASE = "warm shelf in winter";

    /** Its hash, made once, because it costs the better part of a second at the start and hides nothing. */
    static final String PASSPHRASE_HASH =
            "$argon2id$v=19$m=19456,t=2,p=1$zVx69EThdRo+vBjLBAVSmg$" + "UNlpoNb0P3M1KgRfDSYTuTkPftN2NpjHAVPRobEmbvw";

    static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final String COUNTRY = "US";
    private static final String HOME_POSTCODE = "55806";
    private static final int DAYS_SINCE_OPENED = 60;

    private DemoGroup() {}

    /** Whether a database holds the demo group. */
    static boolean livesIn(GroupStore group) {
        return group.find().filter(found -> found.profile().name().equals(NAME)).isPresent();
    }

    /**
     * Fills an empty database.
     *
     * @param now about the day of the year that {@link DemoDay} names, for which its sowings are written
     */
    static void fill(Database database, Instant now) {
        DemoClock clock = new DemoClock(now, ZONE);
        DemoHouse house = DemoHouse.on(database, clock);
        LocalDate today = clock.today();
        int season = today.getYear();
        clock.goTo(today.minusDays(DAYS_SINCE_OPENED), LocalTime.of(18, 0));
        Map<String, UUID> members = moveIn(house, season);
        UUID coordinator = members.values().iterator().next();
        new DemoFrost(house, members, today).tell();
        new DemoFurniture(house, coordinator).putUp();
        DemoNotes notes = new DemoNotes(house, members, coordinator);
        notes.writeCrops();
        notes.promiseSupplies(season);
        Map<String, DemoSeedBox.BoxedLot> lots = new DemoSeedBox(house, members, today).fill(coordinator);
        DemoRota rota = new DemoRota(members, today);
        rota.write(house, coordinator);
        DemoSeason sowings = new DemoSeason(house, lots, today, season);
        new DemoDiary(house, clock, sowings, rota, coordinator).live();
        house.writes().seeNews(today.minusDays(1).atStartOfDay(ZONE).toInstant());
        rota.askForSwap(house);
        Audit audit = new Audit(clock);
        SowingStores stores = SowingStores.over(database, audit, EvidenceStore.over(database, audit));
        new DemoSurplus(stores, today, season).offer(members);
    }

    private static Map<String, UUID> moveIn(DemoHouse house, int season) {
        List<DemoStore.Person> people = DemoTable.rows("members.csv").stream()
                .map(row -> new DemoStore.Person(
                        new NewMember(row.get("name"), COUNTRY, row.get("postcode"), PASSPHRASE_HASH),
                        row.get("role").equals("coordinator")))
                .toList();
        GroupProfile profile = new GroupProfile(NAME, ZONE, Units.AMERICAN, COUNTRY, HOME_POSTCODE, season);
        return house.writes().moveIn(profile, people);
    }
}
