package warmshelf.bench;

import static warmshelf.db.generated.Tables.DUTY;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.group.GroupProfile;
import warmshelf.group.GroupStore;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;
import warmshelf.group.SessionStore;
import warmshelf.seed.LotStore;
import warmshelf.seed.NewLot;
import warmshelf.words.Units;

/**
 * A large group in the middle of its season, the same each time: 200 members around Duluth, 600 sowings of twenty crops that
 * begin over fourteen weeks, each with a look for every day it has lain with the group.
 */
final class BenchGroup {
    static final ZoneId ZONE = ZoneId.of("America/Chicago");

    private static final int MEMBERS = 200;
    private static final int SOWINGS = 600;
    private static final List<String> POSTCODES =
            List.of("55802", "55803", "55804", "55805", "55806", "55807", "55808", "55810", "55811", "55812");
    private static final List<String> CROPS = List.of(
            "tomato",
            "pepper",
            "pepper-very-hot",
            "eggplant",
            "tomatillo",
            "okra",
            "cucumber",
            "muskmelon",
            "summer-squash",
            "basil",
            "broccoli",
            "cabbage",
            "kale",
            "lettuce",
            "onion",
            "celery",
            "parsley",
            "zinnia",
            "marigold",
            "snapdragon");

    private final String memberSession;
    private final String onDutySession;
    private final String coordinatorSession;
    private final BenchSowings sowings;

    private BenchGroup(String memberSession, String onDutySession, String coordinatorSession, BenchSowings sowings) {
        this.memberSession = memberSession;
        this.onDutySession = onDutySession;
        this.coordinatorSession = coordinatorSession;
        this.sowings = sowings;
    }

    /** Makes the group, with twenty-four mats, in a data folder and closes the folder again. */
    static BenchGroup moveInto(Path folder, LocalDate today) {
        return moveInto(folder, today, 2);
    }

    /** The same with so many mats on each of the twelve racks. */
    static BenchGroup moveInto(Path folder, LocalDate today, int matsOnRack) {
        try (Database database = Database.inFolder(folder)) {
            return fill(database, today, matsOnRack);
        }
    }

    /** Makes the group in an empty database, which stays open. */
    static BenchGroup fill(Database database, LocalDate today, int matsOnRack) {
        Clock morning =
                Clock.fixed(today.atTime(LocalTime.of(9, 0)).atZone(ZONE).toInstant(), ZONE);
        Audit audit = new Audit(morning);
        List<UUID> members = members(database, audit, today);
        BenchSpace space = BenchSpace.build(database, audit, members.get(0), today, matsOnRack);
        onDuty(database, audit, space.sites(), members, today);
        BenchSowings sowings = new BenchSowings(database, audit, space, members.get(1), today);
        sow(database, audit, sowings, members, today);
        SessionStore sessions = new SessionStore(database, morning);
        return new BenchGroup(
                sessions.open(members.get(7)), sessions.open(members.get(1)), sessions.open(members.get(0)), sowings);
    }

    /** The session of a member with sowings of her own. */
    String memberSession() {
        return memberSession;
    }

    /** The session of the person who looks today. */
    String onDutySession() {
        return onDutySession;
    }

    /** The session of the coordinator. */
    String coordinatorSession() {
        return coordinatorSession;
    }

    String words() {
        return "%d members, %d sowings (%d under way on a mat or under a light today), %d entries"
                .formatted(MEMBERS, SOWINGS, sowings.lyingToday(), sowings.entries());
    }

    private static List<UUID> members(Database database, Audit audit, LocalDate today) {
        MemberStore store = new MemberStore(database, audit);
        return database.sql().transactionResult(inside -> {
            List<UUID> members = new ArrayList<>();
            for (int number = 1; number <= MEMBERS; number++) {
                String postcode = POSTCODES.get(number % POSTCODES.size());
                NewMember member = new NewMember("Member Number " + number, "US", postcode, "none");
                members.add(store.add(inside.dsl(), member, number == 1, "for the benchmark"));
            }
            GroupProfile profile =
                    new GroupProfile("Bench Seed Starters", ZONE, Units.AMERICAN, "US", "55806", season(today));
            new GroupStore(database, audit).open(inside.dsl(), profile, members.get(0));
            return members;
        });
    }

    private static int season(LocalDate today) {
        return today.getYear() + (today.getMonthValue() >= 7 ? 1 : 0);
    }

    private static void onDuty(Database database, Audit audit, List<UUID> sites, List<UUID> members, LocalDate today) {
        for (UUID site : sites) {
            database.sql()
                    .insertInto(DUTY)
                    .set(DUTY.SITE_ID, site)
                    .set(DUTY.ON_DAY, today)
                    .set(DUTY.MEMBER_ID, members.get(1))
                    .set(DUTY.MADE_BY, members.get(0))
                    .set(DUTY.MADE_AT, audit.now())
                    .execute();
        }
    }

    private static void sow(Database database, Audit audit, BenchSowings sowings, List<UUID> members, LocalDate today) {
        LotStore lots = new LotStore(database, audit);
        Random random = new Random(20270301);
        database.sql().transaction(inside -> {
            DSLContext tx = inside.dsl();
            List<Crop> crops = CROPS.stream().map(CropCatalogue.bundled()::get).toList();
            List<UUID> lotOf = new ArrayList<>();
            for (Crop crop : crops) {
                NewLot lot = new NewLot(crop.id(), "Bench row", season(today), 10_000, null, false, "");
                lotOf.add(lots.add(tx, lot, members.get(0)));
            }
            for (int number = 0; number < SOWINGS; number++) {
                int crop = random.nextInt(crops.size());
                int member = number % MEMBERS;
                String postcode = POSTCODES.get((member + 1) % POSTCODES.size());
                sowings.add(
                        tx,
                        new BenchSowings.Intent(
                                members.get(member),
                                postcode,
                                crops.get(crop),
                                lotOf.get(crop),
                                season(today),
                                today.plusDays(random.nextInt(98) - 63),
                                random.nextInt(10)));
            }
        });
    }
}
