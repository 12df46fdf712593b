package warmshelf.bench;

import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.MEMBER;

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
import warmshelf.group.Member;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;
import warmshelf.group.SessionStore;
import warmshelf.seed.LotStore;
import warmshelf.seed.NewLot;
import warmshelf.words.Units;

/**
 * A large group in the middle of its season, the same each time: 200 members around Duluth or more, three sowings each of twenty
 * crops that begin over fourteen weeks, each with a look for every day it has lain with the group; with seasons before it or none.
 */
final class BenchGroup {
    static final ZoneId ZONE = ZoneId.of("America/Chicago");

    private static final int MEMBERS = 200;
    private static final int SOWINGS_EACH = 3;
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
    private final String words;

    BenchGroup(String memberSession, String onDutySession, String coordinatorSession, String words) {
        this.memberSession = memberSession;
        this.onDutySession = onDutySession;
        this.coordinatorSession = coordinatorSession;
        this.words = words;
    }

    /**
     * How large it is.
     *
     * @param seasons before this one
     * @param matsOnRack on each of the twelve racks
     * @param lotsOfCrop packets of each crop, each season anew
     */
    record Size(int members, int seasons, int matsOnRack, int lotsOfCrop) {
        int sowings() {
            return SOWINGS_EACH * members;
        }
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
        return fill(database, today, new Size(MEMBERS, 0, matsOnRack, 1));
    }

    /** The same of any size. */
    static BenchGroup fill(Database database, LocalDate today, Size size) {
        Clock morning =
                Clock.fixed(today.atTime(LocalTime.of(9, 0)).atZone(ZONE).toInstant(), ZONE);
        Audit audit = new Audit(morning);
        List<UUID> members = members(database, audit, today, size.members());
        BenchSpace space = BenchSpace.build(database, audit, members.get(0), today, size.matsOnRack());
        onDuty(database, audit, space.sites(), members, today);
        BenchSowings sowings = new BenchSowings(database, audit, space, members.get(1), today);
        sow(database, audit, sowings, members, today, size);
        SessionStore sessions = new SessionStore(database, morning);
        return new BenchGroup(
                sessions.open(members.get(7)),
                sessions.open(members.get(1)),
                sessions.open(members.get(0)),
                "%d members, %d seasons before, %d sowings (%d under way on a mat or under a light today), %d entries"
                        .formatted(
                                size.members(),
                                size.seasons(),
                                size.sowings() * (1 + size.seasons()),
                                sowings.lyingToday(),
                                sowings.entries()));
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
        return words;
    }

    private static List<UUID> members(Database database, Audit audit, LocalDate today, int count) {
        MemberStore store = new MemberStore(database, audit);
        return database.sql().transactionResult(inside -> {
            List<UUID> members = new ArrayList<>();
            for (int number = 1; number <= count; number++) {
                String postcode = POSTCODES.get(number % POSTCODES.size());
                NewMember member = new NewMember(name(number), "US", postcode, "none");
                members.add(
                        number <= MEMBERS
                                ? store.add(inside.dsl(), member, number == 1, "for the benchmark")
                                : addRow(inside.dsl(), member, audit));
            }
            GroupProfile profile =
                    new GroupProfile("Bench Seed Starters", ZONE, Units.AMERICAN, "US", "55806", season(today));
            new GroupStore(database, audit).open(inside.dsl(), profile, members.get(0));
            return members;
        });
    }

    /** In a large group not everybody has the same first name, of which the program would have to tell each from each. */
    private static String name(int number) {
        return number <= MEMBERS ? "Member Number " + number : "Member%d Number %d".formatted(number / 10, number);
    }

    /** The store finds for each who joins what everybody is called, which the program does here when it starts. */
    private static UUID addRow(DSLContext tx, NewMember person, Audit audit) {
        var row = tx.newRecord(MEMBER);
        row.setId(UUID.randomUUID());
        row.setName(person.name());
        row.setNameKey(Member.key(person.name()));
        row.setCalled(person.name());
        row.setRole("member");
        row.setCountry(person.country());
        row.setPostcode(person.postcode());
        row.setPassphraseHash(person.passphraseHash());
        row.setJoinedAt(audit.now());
        row.setVersion(1);
        row.insert();
        return row.getId();
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

    private static void sow(
            Database database, Audit audit, BenchSowings sowings, List<UUID> members, LocalDate today, Size size) {
        Random random = new Random(20270301);
        for (int back = size.seasons(); back >= 0; back--) {
            LocalDate day = today.minusYears(back);
            database.sql().transaction(inside -> {
                sowSeason(inside.dsl(), new LotStore(database, audit), sowings, members, day, size, random);
                sowings.writePast(inside.dsl());
            });
        }
    }

    private static void sowSeason(
            DSLContext tx,
            LotStore lots,
            BenchSowings sowings,
            List<UUID> members,
            LocalDate day,
            Size size,
            Random random) {
        List<Crop> crops = CROPS.stream().map(CropCatalogue.bundled()::get).toList();
        List<UUID> lotOf = new ArrayList<>();
        for (int number = 0; number < crops.size() * size.lotsOfCrop(); number++) {
            Crop crop = crops.get(number % crops.size());
            NewLot lot = new NewLot(crop.id(), "Bench row", season(day), 10_000, null, false, "");
            lotOf.add(lots.add(tx, lot, members.get(0)));
        }
        for (int number = 0; number < size.sowings(); number++) {
            int crop = random.nextInt(crops.size());
            int member = number % size.members();
            String postcode = POSTCODES.get((member + 1) % POSTCODES.size());
            sowings.add(
                    tx,
                    new BenchSowings.Intent(
                            members.get(member),
                            postcode,
                            crops.get(crop),
                            lotOf.get(
                                    size.lotsOfCrop() == 1
                                            ? crop
                                            : crop + crops.size() * random.nextInt(size.lotsOfCrop())),
                            season(day),
                            day.plusDays(random.nextInt(98) - 63),
                            random.nextInt(10)));
        }
    }
}
