package warmshelf.testing;

import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SITE;

import java.math.BigDecimal;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Method;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;
import warmshelf.seed.LotBalanceStore;
import warmshelf.seed.LotStore;
import warmshelf.seed.NewLot;
import warmshelf.sowing.Container;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.LotUseStore;
import warmshelf.sowing.SeedClaimStore;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStage;
import warmshelf.sowing.SowingStore;
import warmshelf.timeline.SeasonPart;

/**
 * A small room for the tests of stores: one rack in the hall cellar. Its top shelf has the mats M1 (two places, 20 to 32 °C,
 * usually 26) and M2 (one place, 18 to 22 °C); the shelf below is lit and has two places. Tom and Priya sow in it.
 */
public final class GrowRoom {
    private final Database database;
    private final Audit audit;
    private final SowingStore sowings;
    private final LotStore lots;
    private final UUID tom;
    private final UUID priya;
    private final UUID site = UUID.randomUUID();
    private final UUID m1 = UUID.randomUUID();
    private final UUID m2 = UUID.randomUUID();
    private final UUID m1Place1 = UUID.randomUUID();
    private final UUID m1Place2 = UUID.randomUUID();
    private final UUID m2Place1 = UUID.randomUUID();
    private final UUID lit1 = UUID.randomUUID();
    private final UUID lit2 = UUID.randomUUID();

    public GrowRoom(Database database, Audit audit) {
        this(
                database,
                audit,
                member(database, audit, "Tom Okafor", "55804"),
                member(database, audit, "Priya Nair", "55811"));
    }

    private GrowRoom(Database database, Audit audit, UUID tom, UUID priya) {
        this.database = database;
        this.audit = audit;
        this.sowings = new SowingStore(database, CropCatalogue.bundled(), audit);
        this.lots = new LotStore(database, audit);
        this.tom = tom;
        this.priya = priya;
        build();
    }

    /** The room in a group that runs, whose Tom and Priya they are. */
    public static GrowRoom of(TestGroup group) {
        return new GrowRoom(
                group.database(),
                group.audit(),
                group.member().id(),
                group.onDuty().id());
    }

    private static UUID member(Database database, Audit audit, String name, String postcode) {
        return new MemberStore(database, audit)
                .add(database.sql(), new NewMember(name, "US", postcode, "none"), false, "for a test");
    }

    private void build() {
        UUID rack = UUID.randomUUID();
        UUID top = UUID.randomUUID();
        UUID below = UUID.randomUUID();
        database.sql()
                .insertInto(SITE)
                .set(SITE.ID, site)
                .set(SITE.NAME, "Hall cellar")
                .set(SITE.WALK_ORDER, 1)
                .set(SITE.CIRCUIT_AMPS, BigDecimal.valueOf(15))
                .set(SITE.CIRCUIT_VOLTS, 120)
                .set(SITE.NOTE, "")
                .set(SITE.VERSION, 1)
                .execute();
        database.sql()
                .insertInto(RACK)
                .set(RACK.ID, rack)
                .set(RACK.SITE_ID, site)
                .set(RACK.NAME, "North rack")
                .set(RACK.WALK_ORDER, 1)
                .set(RACK.VERSION, 1)
                .execute();
        shelf(top, rack, 1, 0);
        shelf(below, rack, 2, 2);
        mat(m1, top, "M1", 2, 20, 32, 26);
        mat(m2, top, "M2", 1, 18, 22, 20);
        place(m1Place1, "mat", m1, null, 1);
        place(m1Place2, "mat", m1, null, 2);
        place(m2Place1, "mat", m2, null, 1);
        place(lit1, "lit", null, below, 1);
        place(lit2, "lit", null, below, 2);
    }

    private void shelf(UUID id, UUID rack, int fromTop, int litPlaces) {
        database.sql()
                .insertInto(SHELF)
                .set(SHELF.ID, id)
                .set(SHELF.RACK_ID, rack)
                .set(SHELF.FROM_TOP, fromTop)
                .set(SHELF.LIT_PLACES, litPlaces)
                .set(SHELF.LIGHT_WATTS, litPlaces * 20)
                .set(SHELF.VERSION, 1)
                .execute();
    }

    private void mat(UUID id, UUID shelf, String name, int places, int lowC, int highC, int usualC) {
        database.sql()
                .insertInto(MAT)
                .set(MAT.ID, id)
                .set(MAT.SHELF_ID, shelf)
                .set(MAT.NAME, name)
                .set(MAT.WALK_ORDER, 1)
                .set(MAT.PLACES, places)
                .set(MAT.THERMOSTAT_LOW_C, (double) lowC)
                .set(MAT.THERMOSTAT_HIGH_C, (double) highC)
                .set(MAT.WATTS, 45)
                .set(MAT.USUAL_C, (double) usualC)
                .set(MAT.VERSION, 1)
                .execute();
    }

    private void place(UUID id, String kind, @Nullable UUID mat, @Nullable UUID litShelf, int number) {
        database.sql()
                .insertInto(PLACE)
                .set(PLACE.ID, id)
                .set(PLACE.KIND, kind)
                .set(PLACE.MAT_ID, mat)
                .set(PLACE.LIT_SHELF_ID, litShelf)
                .set(PLACE.NUMBER, number)
                .execute();
    }

    /** Tom's peppers 'Lantern Row' in half a tray: twelve seeds of a packet of forty. */
    public UUID tomsPeppers() {
        return sowing(tom, "Tom", "pepper", "Lantern Row", Method.CELLS, Container.HALF_TRAY);
    }

    /** Priya's tomatoes 'Harbour Light' in half a tray: twelve seeds of a packet of forty. */
    public UUID priyasTomatoes() {
        return sowing(priya, "Priya", "tomato", "Harbour Light", Method.CELLS, Container.HALF_TRAY);
    }

    /** Tom's peppers 'Lantern Row' in a bag: twelve seeds of a packet of forty. */
    public UUID tomsBag() {
        return sowing(tom, "Tom", "pepper", "Lantern Row", Method.BAG, Container.BAG);
    }

    private UUID sowing(UUID member, String name, String crop, String variety, Method method, Container container) {
        UUID lot = lots.add(new NewLot(crop, variety, 2026, 40, member, false, ""), member);
        return sowing(lot, member, name, crop, variety, method, container);
    }

    /** Twelve seeds of a lot of Tom's peppers in half a tray. */
    public UUID peppersOf(UUID lot) {
        return sowing(lot, tom, "Tom", "pepper", "Lantern Row", Method.CELLS, Container.HALF_TRAY);
    }

    private UUID sowing(
            UUID lot, UUID member, String name, String crop, String variety, Method method, Container container) {
        UUID id = UUID.randomUUID();
        Sowing sowing = new Sowing(
                id,
                new Sowing.Grower(member, name, "US", "55804"),
                2027,
                SeasonPart.SPRING,
                Crops.of(crop),
                lot,
                variety,
                false,
                8,
                method,
                true,
                container,
                12,
                1,
                12,
                0.1,
                null,
                SowingStage.PLANNED,
                "",
                1,
                null);
        sowings.add(database.sql(), sowing, member);
        return id;
    }

    /** What of the lots is whose. */
    public LotBalanceStore balances() {
        return new LotBalanceStore(database, audit, lots, new LotUseStore(database));
    }

    /** What holds seed for sowings. */
    public SeedClaimStore claims() {
        return SeedClaimStore.over(database, audit, sowings, new EntryStore(audit));
    }

    public UUID tom() {
        return tom;
    }

    public UUID priya() {
        return priya;
    }

    public UUID site() {
        return site;
    }

    public UUID m1() {
        return m1;
    }

    public UUID m2() {
        return m2;
    }

    public UUID m1Place1() {
        return m1Place1;
    }

    public UUID m1Place2() {
        return m1Place2;
    }

    public UUID m2Place1() {
        return m2Place1;
    }

    public UUID lit1() {
        return lit1;
    }

    public UUID lit2() {
        return lit2;
    }

    public SowingStore sowings() {
        return sowings;
    }

    public LotStore lots() {
        return lots;
    }
}
