package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.RACK_HOLD;
import static warmshelf.db.generated.Tables.SHELF;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.ClashStore;
import warmshelf.allocation.LitPlace;
import warmshelf.allocation.Obstacle;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.RackHoldStore;
import warmshelf.allocation.Slot;
import warmshelf.allocation.SpaceRefusal;
import warmshelf.allocation.SpaceStore;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.allocation.StayStore;
import warmshelf.crop.CropCatalogue;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.shelf.QuarantineStore;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.Problem;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;
import warmshelf.testing.TestGroup;

/** What spreads holds the rack on which it was found, until a coordinator clears it. */
abstract class HeldRackContract extends StoreContract {
    private static final LocalDate TODAY = TestGroup.TODAY;
    private static final Slot LEFT = new Slot(1, 2);

    private GrowRoom room;
    private StayStore stays;
    private TickStore ticks;
    private HeldRackStore held;
    private RackHoldStore holds;
    private UUID otherRack = UUID.randomUUID();
    private UUID otherShelf = UUID.randomUUID();
    private UUID otherLight = UUID.randomUUID();
    private UUID peppers = UUID.randomUUID();

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        stays = new StayStore(audit(), new ClashStore(CropCatalogue.bundled()));
        ticks = new TickStore(database(), audit(), room.sowings(), new EntryStore(audit()), stays, room.lots());
        held = new HeldRackStore(database(), CropCatalogue.bundled());
        holds = new RackHoldStore(database(), audit());
        buildAnotherRack();
        peppers = upOnTheMat();
    }

    @Test
    void pests_hold_the_rack_and_tell_of_whom_it_concerns() {
        note(Problem.PESTS, null);

        assertThat(held.on(TODAY)).singleElement().satisfies(rack -> {
            assertThat(rack.rack()).isEqualTo("North rack");
            assertThat(rack.first().problem()).isEqualTo(Problem.PESTS);
            assertThat(rack.first().byName()).isEqualTo("Priya");
            assertThat(rack.concerned()).containsExactly(room.tom());
        });
    }

    @Test
    void what_does_not_spread_holds_nothing() {
        note(Problem.DRY, null);

        assertThat(held.on(TODAY)).isEmpty();
    }

    @Test
    void from_a_held_rack_no_tray_goes_under_the_light_of_another() {
        note(Problem.VIRUS, null);

        Decision<TickOutcome> refused = offHeat(otherLight, false);

        assertThat(refused.refusal()).containsInstanceOf(TickRefusal.RackIsHeld.class);
        assertThat(lyingOn()).containsExactly(room.m1Place1());
    }

    @Test
    void within_its_rack_home_and_to_a_quarantine_shelf_it_goes() {
        note(Problem.PESTS, null);
        new QuarantineStore(database().sql(), audit()).name(otherShelf, true, room.priya());

        assertThat(offHeat(otherLight, false)).isInstanceOf(Decision.Done.class);
        assertThat(lyingOn()).contains(otherLight);
    }

    @Test
    void to_a_held_rack_nothing_goes_from_another_and_what_went_before_went() {
        UUID tomatoes = room.priyasTomatoes();
        keep(tomatoes, step(EntryStep.SOWN, TODAY.minusDays(9), null));
        note(Problem.PESTS, null);
        Tick.LightPlace light = new Tick.LightPlace(room.lit1(), LEFT);

        assertThat(ticks.keep(tomatoes, step(EntryStep.OFF_HEAT, TODAY, light), TODAY.plusDays(40), room.priya())
                        .refusal())
                .containsInstanceOf(TickRefusal.RackTakesNothing.class);
        keep(tomatoes, step(EntryStep.OFF_HEAT, TODAY.minusDays(1), light));
    }

    @Test
    void on_a_held_rack_nothing_new_is_laid_and_what_lies_there_may_stay_longer() {
        note(Problem.PESTS, null);
        UUID tomatoes = room.priyasTomatoes();

        assertThatThrownBy(() -> lay(tomatoes, new PlaceAndDays(room.m1Place2(), LEFT, TODAY, TODAY.plusDays(9))))
                .isInstanceOfSatisfying(
                        Declined.class,
                        no -> assertThat(no.reason())
                                .isInstanceOfSatisfying(
                                        SpaceRefusal.InTheWay.class,
                                        way -> assertThat(way.obstacles())
                                                .singleElement()
                                                .isInstanceOf(Obstacle.RackTakesNothing.class)));
        Stay lies = StayBookStore.ofSowing(database().sql(), peppers).get(0);
        database()
                .sql()
                .transaction(tx -> stays.extend(tx.dsl(), lies, lies.to().plusDays(3), room.priya()));
        assertThat(new SpaceStore(database()).litPlaces(TODAY, TODAY.plusDays(9), 2))
                .extracting(LitPlace::placeId)
                .containsExactly(otherLight);

        holds.clear(held.on(TODAY).get(0).rackId(), room.priya());
        lay(tomatoes, new PlaceAndDays(room.m1Place2(), LEFT, TODAY, TODAY.plusDays(9)));
    }

    @Test
    void the_booked_light_of_another_rack_does_not_take_in_what_comes_from_a_held_one_on_its_day_either() {
        note(Problem.PESTS, null);
        Stay lies = StayBookStore.ofSowing(database().sql(), peppers).get(0);
        database().sql().transaction(tx -> {
            stays.layUnderLight(
                    tx.dsl(), peppers, new PlaceAndDays(otherLight, LEFT, TODAY, TODAY.plusDays(20)), room.priya());
            stays.end(tx.dsl(), lies, TODAY, room.priya());
        });

        assertThat(offHeat(null, false).refusal()).containsInstanceOf(TickRefusal.RackIsHeld.class);
    }

    @Test
    void home_with_its_grower_it_always_goes() {
        note(Problem.PESTS, null);

        assertThat(offHeat(null, true)).isInstanceOf(Decision.Done.class);
    }

    @Test
    void into_the_bin_it_goes_and_the_rack_stays_held() {
        note(Problem.PESTS, null);

        keep(tick(EntryStep.GAVE_UP, null, null, null, false));

        assertThat(held.on(TODAY)).hasSize(1);
    }

    @Test
    void a_coordinator_clears_it_and_who_did_and_when_is_kept() {
        note(Problem.PESTS, null);
        UUID rack = held.on(TODAY).get(0).rackId();

        assertThat(holds.clear(rack, room.priya())).isTrue();

        assertThat(held.on(TODAY)).isEmpty();
        assertThat(offHeat(otherLight, false)).isInstanceOf(Decision.Done.class);
        assertThat(database().sql().selectFrom(RACK_HOLD).fetchSingle()).satisfies(row -> {
            assertThat(row.getClearedBy()).isEqualTo(room.priya());
            assertThat(row.getClearedAt()).isNotNull();
        });
        assertThat(holds.clear(rack, room.priya())).as("it counts once").isFalse();
    }

    @Test
    void a_note_taken_back_holds_nothing_any_more() {
        UUID noted = note(Problem.PESTS, null);

        keep(tick(EntryStep.UNDONE, null, noted, null, false));

        assertThat(held.on(TODAY)).isEmpty();
    }

    @Test
    void a_correction_that_still_tells_of_it_holds_the_same_rack() {
        UUID noted = note(Problem.PESTS, null);

        note(Problem.VIRUS, noted);

        assertThat(held.on(TODAY))
                .singleElement()
                .satisfies(rack -> assertThat(rack.notes())
                        .extracting(HeldRack.Note::problem)
                        .containsExactly(Problem.VIRUS));
    }

    private UUID note(Problem problem, @Nullable UUID corrects) {
        Tick noted = tick(EntryStep.LOOK, problem, corrects, null, false);
        keep(noted);
        return noted.id();
    }

    private Decision<TickOutcome> offHeat(@Nullable UUID light, boolean home) {
        return ticks.keep(
                peppers,
                tick(EntryStep.OFF_HEAT, null, null, light == null ? null : new Tick.LightPlace(light, LEFT), home),
                TODAY.plusDays(40),
                room.priya());
    }

    private void keep(Tick tick) {
        keep(peppers, tick);
    }

    private void keep(UUID sowing, Tick tick) {
        assertThat(ticks.keep(sowing, tick, TODAY.plusDays(40), room.priya())).isInstanceOf(Decision.Done.class);
    }

    private static Tick step(EntryStep step, LocalDate day, Tick.@Nullable LightPlace light) {
        return new Tick(UUID.randomUUID(), step, day, null, null, null, false, null, "", light, null);
    }

    private void lay(UUID sowing, PlaceAndDays spot) {
        database().sql().transaction(tx -> stays.layOnMat(tx.dsl(), sowing, spot, 26, new Band(24, 30), room.priya()));
    }

    private static Tick tick(
            EntryStep step,
            @Nullable Problem problem,
            @Nullable UUID corrects,
            Tick.@Nullable LightPlace light,
            boolean home) {
        Integer up = step == EntryStep.LOOK ? 9 : null;
        return new Tick(
                UUID.randomUUID(), step, TODAY, up, null, null, false, problem, "", light, corrects, home, null, "");
    }

    private List<UUID> lyingOn() {
        return StayBookStore.ofSowing(database().sql(), peppers).stream()
                .filter(stay -> stay.covers(TODAY))
                .map(stay -> stay.placeId())
                .toList();
    }

    private UUID upOnTheMat() {
        UUID sowing = room.tomsPeppers();
        PlaceAndDays spot = new PlaceAndDays(room.m1Place1(), LEFT, TODAY.minusDays(9), TODAY.plusDays(5));
        lay(sowing, spot);
        keep(sowing, step(EntryStep.SOWN, TODAY.minusDays(9), null));
        return sowing;
    }

    private void buildAnotherRack() {
        UUID site = database().sql().select(RACK.SITE_ID).from(RACK).fetchSingle(RACK.SITE_ID);
        database()
                .sql()
                .insertInto(RACK)
                .set(RACK.ID, otherRack)
                .set(RACK.SITE_ID, site)
                .set(RACK.NAME, "South rack")
                .set(RACK.WALK_ORDER, 2)
                .set(RACK.VERSION, 1)
                .execute();
        database()
                .sql()
                .insertInto(SHELF)
                .set(SHELF.ID, otherShelf)
                .set(SHELF.RACK_ID, otherRack)
                .set(SHELF.FROM_TOP, 1)
                .set(SHELF.LIT_PLACES, 1)
                .set(SHELF.LIGHT_WATTS, 40)
                .set(SHELF.VERSION, 1)
                .execute();
        database()
                .sql()
                .insertInto(PLACE)
                .set(PLACE.ID, otherLight)
                .set(PLACE.KIND, "lit")
                .set(PLACE.LIT_SHELF_ID, otherShelf)
                .set(PLACE.NUMBER, 1)
                .execute();
    }
}
