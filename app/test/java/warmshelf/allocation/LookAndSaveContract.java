package warmshelf.allocation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MAT_OUT;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;
import static warmshelf.testing.Decided.done;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.jooq.Condition;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.crop.CropCatalogue;
import warmshelf.decision.Declined;
import warmshelf.decision.Reach;
import warmshelf.placing.LyingStay;
import warmshelf.placing.LyingStore;
import warmshelf.placing.MoveJudge;
import warmshelf.placing.MoveOutlook;
import warmshelf.placing.MoveStore;
import warmshelf.placing.StayMove;
import warmshelf.testing.Decided;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;
import warmshelf.words.Units;

/**
 * What a page says of a place is what saving does, walked through many rooms: trays of every size, mats that are turned and that
 * go out of service for some days or are retired, moves to every place and day, and offers for what waits.
 */
abstract class LookAndSaveContract extends StoreContract {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final int STEPS = 260;
    private static final List<Band> BANDS = List.of(new Band(24, 30), new Band(20, 25), new Band(18, 22));

    private Random random = new Random();
    private final List<UUID> laid = new ArrayList<>();
    private GrowRoom room;
    private StayStore stays;
    private MoveStore moves;
    private SpaceStore space;
    private LyingStore lying;

    @BeforeEach
    void moveIn() {
        random = new Random(20270301);
        laid.clear();
        room = new GrowRoom(database(), audit());
        stays = new StayStore(audit(), new ClashStore(CropCatalogue.bundled()));
        space = new SpaceStore(database());
        moves = new MoveStore(database(), audit(), stays, new RequestStore(database(), audit()));
        lying = new LyingStore(database(), CropCatalogue.bundled(), space);
    }

    @Test
    void what_looking_says_is_what_saving_does() {
        database()
                .sql()
                .update(MAT)
                .set(MAT.LIGHT, "none")
                .where(MAT.ID.eq(room.m2()))
                .execute();
        int fitted = 0;
        int refused = 0;
        for (int step = 0; step < STEPS; step++) {
            switch (random.nextInt(13)) {
                case 0 -> layAsOffered();
                case 1 -> turn();
                case 2 -> takeOut();
                case 3 -> retireOrBringBack();
                default -> {
                    if (laid.isEmpty()) {
                        layAsOffered();
                    } else if (move(step)) {
                        fitted++;
                    } else {
                        refused++;
                    }
                }
            }
        }
        assertThat(fitted).as("moves that fit must occur often").isGreaterThan(20);
        assertThat(refused).as("moves that clash must occur often").isGreaterThan(20);
    }

    /** Whether it fits; saving must say the same. */
    private boolean move(int step) {
        LyingStay stay = lying.find(laid.get(random.nextInt(laid.size()))).orElseThrow();
        List<CandidatePlace> places = lying.places();
        // Now and then under a light, where nothing from a mat may go.
        int among = random.nextInt(6) == 0 ? places.size() : 3;
        CandidatePlace place = places.get(random.nextInt(among));
        List<Slot> slots = Slot.of(stay.stay().slot().quarters());
        LocalDate from = stay.isBegunBy(TODAY) ? TODAY : TODAY.plusDays(random.nextInt(30));
        Double wished = random.nextBoolean() ? null : Double.valueOf((170 + random.nextInt(160)) / 10.0);
        StayMove move = new StayMove(
                stay.stay().id(),
                stay.stay().version(),
                place.id(),
                slots.get(random.nextInt(slots.size())),
                from,
                wished);
        Surroundings around = lying.around(stay.stay().id(), List.of(place), TODAY, TODAY.plusDays(120));
        MoveOutlook outlook = new MoveJudge(around, TODAY).judge(stay, move, place, LookAndSaveContract::days);

        String saved = save(stay, outlook);

        assertThat(saved.isEmpty())
                .as("step %d: looking said %s, saving said '%s'", step, outlook.clashes(Units.METRIC), saved)
                .isEqualTo(outlook.fits());
        return outlook.fits();
    }

    /** Empty: saved. */
    private String save(LyingStay stay, MoveOutlook outlook) {
        try {
            UUID now = done(moves.move(stay, outlook.spot(), outlook.warm(), TODAY, room.priya()));
            laid.set(laid.indexOf(stay.stay().id()), now);
            LyingStay there = lying.find(now).orElseThrow();
            assertThat(there.warm()).as("it lies as warm as was shown").isEqualTo(outlook.warm());
            assertThat(there.stay().to()).isEqualTo(outlook.spot().to());
            return "";
        } catch (Decided.NotDone clash) {
            return String.valueOf(clash.getMessage());
        }
    }

    /** Every offer can be laid, whatever was turned or taken out before; laying it on the counter's board keeps it true. */
    private void layAsOffered() {
        if (laid.size() > 4) {
            takeOff(laid.remove(random.nextInt(laid.size())));
        }
        Band band = BANDS.get(random.nextInt(BANDS.size()));
        int quarters = 1 << random.nextInt(3);
        LocalDate ideal = TODAY.plusDays(random.nextInt(20));
        UUID sowing = random.nextBoolean() ? room.tomsPeppers() : room.priyasTomatoes();
        boolean needsLight = random.nextBoolean();
        ask(sowing, band, needsLight);
        SpaceWish wish = new SpaceWish(
                sowing, quarters, TODAY, ideal, ideal.plusDays(10), band, needsLight, LookAndSaveContract::days);
        SpaceCalendar board = space.board(TODAY, TODAY.plusDays(120));
        for (SpaceOffer offer : new FirstFit(board, TODAY).offers(wish, 1)) {
            laid.add(database()
                    .sql()
                    .transactionResult(
                            tx -> stays.layOnMat(tx.dsl(), sowing, offer.spot(), offer.warm(), band, room.priya())));
            if (offer.from().equals(TODAY) && random.nextBoolean()) {
                database()
                        .sql()
                        .update(SOWING)
                        .set(SOWING.STAGE, "sown")
                        .where(SOWING.ID.eq(sowing))
                        .execute();
            }
        }
    }

    private void ask(UUID sowing, Band band, boolean needsLight) {
        SpaceRequest request = new SpaceRequest(
                sowing, SpaceRequest.State.WAITING, TODAY, TODAY, TODAY, 9, 1, band, false, needsLight, "", 1);
        RequestStore requests = new RequestStore(database(), audit());
        database().sql().transaction(tx -> requests.add(tx.dsl(), request));
    }

    private void takeOff(UUID stay) {
        Stay gone = lying.find(stay).orElseThrow().stay();
        database().sql().transaction(tx -> stays.end(tx.dsl(), gone, gone.from(), room.priya()));
    }

    private void turn() {
        UUID mat = random.nextInt(3) == 0 ? room.m2() : room.m1();
        LocalDate first = TODAY.plusDays(random.nextInt(30));
        LocalDate afterLast = first.plusDays(1 + random.nextInt(10));
        double celsius = (180 + random.nextInt(140)) / 10.0;
        try {
            database()
                    .sql()
                    .transaction(tx -> new MatDayStore(audit(), new ClashStore(CropCatalogue.bundled()))
                            .turnByHand(tx.dsl(), mat, first, afterLast, celsius, room.priya()));
        } catch (Declined whatLiesThereCannotBearIt) {
            assertThat(whatLiesThereCannotBearIt.reason().words(Units.METRIC)).isNotEmpty();
        }
    }

    /** A few days now and then, as they happen; most lie ahead, so that they begin in the middle of a stay. */
    private void takeOut() {
        if (random.nextInt(2) > 0) {
            return;
        }
        LocalDate first = TODAY.plusDays(random.nextInt(40));
        takeOut(random.nextBoolean() ? room.m1() : room.m2(), first, first.plusDays(1 + random.nextInt(3)));
    }

    private void takeOut(UUID mat, LocalDate first, LocalDate afterLast) {
        database()
                .sql()
                .insertInto(MAT_OUT)
                .set(MAT_OUT.ID, UUID.randomUUID())
                .set(MAT_OUT.MAT_ID, mat)
                .set(MAT_OUT.FROM_DAY, first)
                .set(MAT_OUT.TO_DAY, afterLast)
                .set(MAT_OUT.REASON, "the thermostat is broken")
                .set(MAT_OUT.MADE_BY, room.priya())
                .set(MAT_OUT.MADE_AT, audit().now())
                .execute();
    }

    /** A mat or the lit shelf, from a day on which it is empty. */
    private void retireOrBringBack() {
        boolean lit = random.nextInt(3) == 0;
        LocalDate from = random.nextBoolean() ? null : TODAY.plusDays(15 + random.nextInt(40));
        Condition there = lit ? PLACE.LIT_SHELF_ID.isNotNull() : PLACE.MAT_ID.eq(room.m1());
        boolean empty = from == null
                || !database()
                        .sql()
                        .fetchExists(STAY.join(PLACE).on(PLACE.ID.eq(STAY.PLACE_ID)), there.and(STAY.TO_DAY.gt(from)));
        if (empty && lit) {
            database()
                    .sql()
                    .update(SHELF)
                    .set(SHELF.RETIRED_FROM, from)
                    .where(SHELF.LIT_PLACES.gt(0))
                    .execute();
        } else if (empty) {
            retire(room.m1(), from);
        }
    }

    private void retire(UUID mat, @Nullable LocalDate from) {
        database()
                .sql()
                .update(MAT)
                .set(MAT.RETIRED_FROM, from)
                .where(MAT.ID.eq(mat))
                .execute();
    }

    @Test
    void what_is_retired_is_offered_no_more_and_what_is_to_be_takes_nothing_that_would_lie_beyond() {
        Band band = new Band(24, 30);
        SpaceWish wish =
                new SpaceWish(room.tomsPeppers(), 2, TODAY, TODAY, TODAY.plusDays(10), band, false, celsius -> 10);
        retire(room.m1(), TODAY.plusDays(9));
        SpaceCalendar soon = space.board(TODAY, TODAY.plusDays(60));
        assertThat(soon.mats()).extracting(MatSpace::name).containsExactly("M1", "M2");
        assertThat(new FirstFit(soon, TODAY).offers(wish, 6)).isEmpty();

        retire(room.m1(), TODAY.plusDays(10));
        assertThat(new FirstFit(space.board(TODAY, TODAY.plusDays(60)), TODAY).offers(wish, 6))
                .isNotEmpty()
                .allSatisfy(offer -> assertThat(offer.to()).isEqualTo(TODAY.plusDays(10)));

        retire(room.m1(), TODAY);
        assertThat(space.board(TODAY, TODAY.plusDays(60)).mats())
                .extracting(MatSpace::name)
                .containsExactly("M2");
        PlaceAndDays spot = new PlaceAndDays(room.m1Place1(), new Slot(1, 2), TODAY, TODAY.plusDays(10));
        assertThatThrownBy(() -> database()
                        .sql()
                        .transaction(tx -> stays.layOnMat(tx.dsl(), wish.sowingId(), spot, 26, band, room.priya())))
                .isInstanceOfSatisfying(
                        Declined.class,
                        no -> assertThat(no.reason().words(Units.METRIC)).contains("retired from Mon 1 Mar on"));
    }

    @Test
    void a_rack_that_is_retired_takes_its_light_along() {
        assertThat(space.litPlaces(TODAY, TODAY.plusDays(60), 2)).hasSize(2);

        database().sql().update(RACK).set(RACK.RETIRED_FROM, TODAY.plusDays(20)).execute();

        assertThat(space.litPlaces(TODAY, TODAY.plusDays(60), 2))
                .hasSize(2)
                .allSatisfy(place -> assertThat(place.freeUntil()).isEqualTo(TODAY.plusDays(20)));
        assertThat(space.litPlaces(TODAY.plusDays(20), TODAY.plusDays(60), 2)).isEmpty();
        assertThat(space.litPlaceFor(TODAY.plusDays(15), TODAY.plusDays(21), 2, Reach.WHOLE_GROUP))
                .isEmpty();
        assertThat(space.litPlaceFor(TODAY.plusDays(15), TODAY.plusDays(20), 2, Reach.WHOLE_GROUP))
                .isPresent();
    }

    @Test
    void an_outage_that_begins_during_the_stay_is_told_when_looking_and_refused_when_saving() {
        layAsOfferedToday();
        LyingStay stay = lying.find(laid.get(0)).orElseThrow();
        takeOut(room.m1(), stay.stay().to().minusDays(1), stay.stay().to().plusDays(5));
        CandidatePlace place = lying.places().stream()
                .filter(each -> each.id().equals(room.m1Place2()))
                .findFirst()
                .orElseThrow();
        StayMove move =
                new StayMove(stay.stay().id(), 1, place.id(), stay.stay().slot(), TODAY, null);
        Surroundings around = lying.around(stay.stay().id(), List.of(place), TODAY, TODAY.plusDays(60));

        MoveOutlook outlook = new MoveJudge(around, TODAY).judge(stay, move, place, LookAndSaveContract::days);

        assertThat(outlook.obstacles()).singleElement().isInstanceOf(Obstacle.Out.class);
        assertThat(save(stay, outlook)).contains("Mat M1 is out of service").contains("the thermostat is broken");
    }

    private void layAsOfferedToday() {
        UUID sowing = room.tomsPeppers();
        PlaceAndDays spot = new PlaceAndDays(room.m1Place1(), new Slot(1, 2), TODAY, TODAY.plusDays(10));
        laid.add(database()
                .sql()
                .transactionResult(tx -> stays.layOnMat(tx.dsl(), sowing, spot, 26, new Band(24, 30), room.priya())));
    }

    /** The warmer, the sooner. */
    private static int days(double celsius) {
        return Math.max(3, 12 + 24 - (int) Math.floor(celsius));
    }
}
