package warmshelf.allocation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.QUARTER_DAY;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jooq.Record2;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.crop.CropCatalogue;
import warmshelf.decision.Declined;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;
import warmshelf.words.Units;

abstract class StayStoreContract extends StoreContract {
    private static final Band WARM = new Band(24, 30);
    private static final LocalDate DAY = LocalDate.of(2027, 3, 10);
    private static final Slot LEFT = new Slot(1, 2);
    private static final Slot RIGHT = new Slot(3, 2);

    private GrowRoom room;
    private StayStore stays;
    private SpaceStore space;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        stays = new StayStore(audit(), new ClashStore(CropCatalogue.bundled()));
        space = new SpaceStore(database());
    }

    @Test
    void a_stay_takes_each_of_its_quarters_on_each_of_its_days_and_not_on_the_day_after() {
        UUID sowing = room.tomsPeppers();

        UUID id = lay(sowing, spot(room.m1Place1(), RIGHT, 10, 13), 26);

        assertThat(taken(id))
                .extracting(Record2::value1, Record2::value2)
                .containsExactly(tuple(3, 10), tuple(4, 10), tuple(3, 11), tuple(4, 11), tuple(3, 12), tuple(4, 12));
        assertThat(StayBookStore.find(database().sql(), id))
                .contains(new Stay(
                        id,
                        sowing,
                        room.m1Place1(),
                        "mat",
                        "Hall cellar · North rack · shelf 1 · mat M1 · place 1, right half",
                        RIGHT,
                        DAY,
                        LocalDate.of(2027, 3, 13),
                        1));
    }

    @Test
    void a_bag_takes_one_quarter_and_a_tray_four() {
        UUID bag = lay(room.tomsBag(), spot(room.m1Place1(), new Slot(2, 1), 10, 11), 26);
        UUID tray = lay(room.tomsPeppers(), spot(room.m1Place2(), new Slot(1, 4), 10, 11), 26);

        assertThat(taken(bag)).extracting(Record2::value1).containsExactly(2);
        assertThat(taken(tray)).extracting(Record2::value1).containsExactly(1, 2, 3, 4);
    }

    @Test
    void the_next_tray_may_lie_from_the_day_on_which_the_last_one_ends() {
        lay(room.tomsPeppers(), spot(room.m1Place1(), LEFT, 10, 13), 26);

        UUID next = lay(room.priyasTomatoes(), spot(room.m1Place1(), LEFT, 13, 15), 26);

        assertThat(taken(next)).hasSize(4);
    }

    @Test
    void a_taken_quarter_is_refused_with_who_lies_there_and_until_when() {
        lay(room.tomsPeppers(), spot(room.m1Place1(), LEFT, 10, 13), 26);

        assertThatExceptionOfType(Declined.class)
                .isThrownBy(() -> lay(room.priyasTomatoes(), spot(room.m1Place1(), new Slot(1, 4), 12, 20), 26))
                .satisfies(clash -> assertThat(clash.reason().words(Units.METRIC))
                        .isEqualTo("Place 1 on mat M1 is taken by Tom's Lantern Row"
                                + " (Pepper, sweet and mild hot), Wed 10 Mar to Fri 12 Mar."));
        assertThat(database().sql().fetchCount(QUARTER_DAY)).isEqualTo(6);
    }

    @Test
    void a_mat_that_stands_at_another_temperature_is_refused_with_both() {
        lay(room.tomsPeppers(), spot(room.m1Place1(), LEFT, 10, 13), 26);

        Band cool = new Band(21, 25);
        assertThatThrownBy(() -> lay(room.priyasTomatoes(), spot(room.m1Place2(), LEFT, 12, 20), 25, cool))
                .isInstanceOf(Declined.class)
                .hasMessage("Mat M1 stands at 26 °C on 12 Mar for what already lies there;"
                        + " this crop's seed likes 21–25 °C.");
        assertThat(celsius(room.m1(), 12)).containsExactly(26.0, 26.0);
    }

    @Test
    void a_stay_follows_the_mats_days_and_asks_only_where_nothing_is_set() {
        lay(room.tomsPeppers(), spot(room.m1Place1(), LEFT, 10, 14), 26);
        setPoint(room.m1(), 12, 14, 28);

        lay(room.priyasTomatoes(), spot(room.m1Place2(), LEFT, 11, 16), 25);

        assertThat(List.of(11, 12, 13, 14, 15))
                .extracting(day -> celsius(room.m1(), day).get(0))
                .containsExactly(26.0, 28.0, 28.0, 25.0, 25.0);
    }

    @Test
    void a_set_point_outside_the_crops_band_or_the_thermostats_range_is_refused() {
        assertThatThrownBy(() -> lay(room.tomsPeppers(), spot(room.m1Place1(), LEFT, 10, 13), 23))
                .isInstanceOf(Declined.class)
                .hasMessage("23 °C is outside what this crop's seed likes: 24–30 °C.");
        assertThatThrownBy(() -> lay(room.tomsPeppers(), spot(room.m2Place1(), LEFT, 10, 13), 26))
                .isInstanceOf(Declined.class)
                .hasMessage("Mat M2 can hold 18–22 °C, not 26 °C.");
        assertThat(database().sql().fetchCount(QUARTER_DAY)).isZero();
    }

    @Test
    void an_empty_mat_may_be_turned_to_another_temperature() {
        UUID sowing = room.tomsPeppers();
        UUID first = lay(sowing, spot(room.m1Place1(), LEFT, 10, 13), 26);
        end(first, DAY);

        UUID second = lay(room.priyasTomatoes(), spot(room.m1Place1(), LEFT, 10, 13), 25);

        assertThat(taken(second)).hasSize(6);
        assertThat(celsius(room.m1(), 10)).containsExactly(25.0, 25.0);
    }

    @Test
    void an_ended_stay_frees_its_quarters_from_that_day_on() {
        UUID id = lay(room.tomsPeppers(), spot(room.m1Place1(), LEFT, 10, 15), 26);

        end(id, LocalDate.of(2027, 3, 12));

        assertThat(taken(id)).extracting(Record2::value2).containsExactly(10, 10, 11, 11);
        assertThat(find(id).to()).isEqualTo(LocalDate.of(2027, 3, 12));
        assertThat(lay(room.priyasTomatoes(), spot(room.m1Place1(), LEFT, 12, 15), 26))
                .isNotNull();
    }

    @Test
    void ending_never_makes_a_stay_longer() {
        UUID id = lay(room.tomsPeppers(), spot(room.m1Place1(), LEFT, 10, 15), 26);

        end(id, LocalDate.of(2027, 3, 20));

        assertThat(find(id).to()).isEqualTo(LocalDate.of(2027, 3, 15));
        assertThat(find(id).version()).isEqualTo(1);
    }

    @Test
    void a_stay_that_ends_before_it_begins_is_gone_from_the_book() {
        UUID sowing = room.tomsPeppers();
        UUID id = lay(sowing, spot(room.m1Place1(), LEFT, 10, 15), 26);

        end(id, LocalDate.of(2027, 3, 2));

        assertThat(taken(id)).isEmpty();
        assertThat(StayBookStore.ofSowing(database().sql(), sowing)).isEmpty();
    }

    @Test
    void a_stay_is_extended_at_its_place_and_set_point() {
        UUID id = lay(room.tomsPeppers(), spot(room.m1Place1(), LEFT, 10, 12), 27);

        extend(id, LocalDate.of(2027, 3, 14));

        assertThat(taken(id)).extracting(Record2::value2).containsExactly(10, 10, 11, 11, 12, 12, 13, 13);
        assertThat(celsius(room.m1(), 13)).containsExactly(27.0, 27.0);
        assertThat(find(id).to()).isEqualTo(LocalDate.of(2027, 3, 14));
    }

    @Test
    void a_stay_is_not_extended_into_someone_elses_or_another_temperature() {
        UUID id = lay(room.tomsPeppers(), spot(room.m1Place1(), LEFT, 10, 12), 27);
        lay(room.priyasTomatoes(), spot(room.m1Place1(), LEFT, 14, 16), 27);
        UUID neighbour = lay(room.tomsPeppers(), spot(room.m1Place2(), LEFT, 10, 12), 27);
        lay(room.priyasTomatoes(), spot(room.m1Place2(), RIGHT, 12, 14), 22, new Band(20, 23));

        assertThatThrownBy(() -> extend(id, LocalDate.of(2027, 3, 15)))
                .isInstanceOf(Declined.class)
                .hasMessageContaining("Priya's Harbour Light (Tomato), Sun 14 Mar to Mon 15 Mar");
        assertThatThrownBy(() -> extend(neighbour, LocalDate.of(2027, 3, 13)))
                .isInstanceOf(Declined.class)
                .hasMessageContaining("Mat M1 stands at 22 °C on 12 Mar");
        assertThat(taken(id)).hasSize(4);
        assertThat(taken(neighbour)).hasSize(4);
    }

    @Test
    void under_a_light_no_temperature_is_kept_but_the_quarters_are() {
        UUID id = database()
                .sql()
                .transactionResult(tx ->
                        stays.layUnderLight(tx.dsl(), room.tomsPeppers(), spot(room.lit1(), LEFT, 10, 12), room.tom()));

        assertThat(taken(id)).hasSize(4);
        assertThat(find(id).isOnMat()).isFalse();
        assertThatThrownBy(() -> database()
                        .sql()
                        .transaction(tx -> stays.layUnderLight(
                                tx.dsl(), room.priyasTomatoes(), spot(room.lit1(), LEFT, 11, 14), room.tom())))
                .isInstanceOf(Declined.class)
                .hasMessageContaining("Place 1 under the light is taken by Tom's Lantern Row");
    }

    @Test
    void what_lies_on_a_mat_follows_its_new_set_point() {
        UUID id = lay(room.tomsPeppers(), spot(room.m1Place1(), LEFT, 10, 12), 26);

        setPoint(room.m1(), 10, 13, 28);

        assertThat(taken(id)).hasSize(4);
        assertThat(celsius(room.m1(), 10)).containsExactly(28.0, 28.0);
        assertThat(celsius(room.m1(), 11)).containsExactly(28.0, 28.0);
    }

    @Test
    void a_set_point_that_a_tray_cannot_bear_is_refused_with_whose_tray_it_is() {
        lay(room.tomsPeppers(), spot(room.m1Place1(), LEFT, 10, 12), 26);

        assertThatThrownBy(() -> setPoint(room.m1(), 9, 13, 22))
                .isInstanceOf(Declined.class)
                .hasMessage(
                        "22 °C does not suit Tom's Lantern Row," + " which lies there on 10 Mar and likes 24–30 °C.");
        assertThatThrownBy(() -> setPoint(room.m1(), 9, 13, 33))
                .isInstanceOf(Declined.class)
                .hasMessage("Mat M1 can hold 20–32 °C, not 33 °C.");
        assertThat(celsius(room.m1(), 10)).containsExactly(26.0, 26.0);
    }

    @Test
    void the_board_shows_what_is_taken_and_which_set_points_bind() {
        UUID gone = lay(room.tomsPeppers(), spot(room.m1Place1(), LEFT, 10, 12), 26);
        lay(room.priyasTomatoes(), spot(room.m2Place1(), RIGHT, 10, 12), 22, new Band(20, 30));
        end(gone, DAY);

        SpaceCalendar board = space.board(DAY, LocalDate.of(2027, 4, 1));

        assertThat(board.takenQuarters(room.m1Place1(), DAY)).isZero();
        assertThat(board.takenQuarters(room.m2Place1(), LocalDate.of(2027, 3, 11)))
                .isEqualTo(2);
        assertThat(board.takenQuarters(room.m2Place1(), LocalDate.of(2027, 3, 12)))
                .isZero();
        assertThat(board.setPoint(room.m1(), DAY))
                .as("an empty mat is not bound")
                .isEmpty();
        assertThat(board.setPoint(room.m2(), DAY)).hasValue(22);
    }

    @Test
    void light_is_offered_where_it_is_free_and_says_until_when() {
        database()
                .sql()
                .transaction(tx ->
                        stays.layUnderLight(tx.dsl(), room.tomsPeppers(), spot(room.lit1(), LEFT, 10, 12), room.tom()));
        database()
                .sql()
                .transaction(tx ->
                        stays.layUnderLight(tx.dsl(), room.tomsPeppers(), spot(room.lit2(), LEFT, 14, 15), room.tom()));

        List<LitPlace> halves = space.litPlaces(DAY, LocalDate.of(2027, 4, 1), 2);
        List<LitPlace> wholes = space.litPlaces(DAY, LocalDate.of(2027, 4, 1), 4);

        assertThat(halves).extracting(LitPlace::placeId).containsExactly(room.lit1(), room.lit2());
        assertThat(halves.get(0).slot()).isEqualTo(RIGHT);
        assertThat(halves.get(0).freeUntil()).isEqualTo(LocalDate.of(2027, 4, 1));
        assertThat(halves.get(1).slot()).isEqualTo(LEFT);
        assertThat(halves.get(1).freeUntil()).isEqualTo(LocalDate.of(2027, 3, 14));
        assertThat(wholes).extracting(LitPlace::placeId).containsExactly(room.lit2());
    }

    @Test
    void every_change_leaves_a_line_that_says_who() {
        UUID id = lay(room.tomsPeppers(), spot(room.m1Place1(), LEFT, 10, 15), 26);
        extend(id, LocalDate.of(2027, 3, 16));
        setPoint(room.m1(), 10, 12, 27);
        end(id, LocalDate.of(2027, 3, 12));

        assertThat(database()
                        .sql()
                        .select(AUDIT_LINE.ACTION)
                        .from(AUDIT_LINE)
                        .where(
                                AUDIT_LINE.MEMBER_ID.eq(room.priya()),
                                AUDIT_LINE.SUBJECT_ID.in(
                                        id.toString(), room.m1().toString()))
                        .fetch(AUDIT_LINE.ACTION))
                .containsExactlyInAnyOrder("lay on mat", "extend stay", "set mat temperature", "end stay");
    }

    private UUID lay(UUID sowing, PlaceAndDays spot, int celsius) {
        return lay(sowing, spot, celsius, WARM);
    }

    private UUID lay(UUID sowing, PlaceAndDays spot, int celsius, Band band) {
        return database()
                .sql()
                .transactionResult(tx -> stays.layOnMat(tx.dsl(), sowing, spot, celsius, band, room.priya()));
    }

    private void end(UUID stay, LocalDate freeFrom) {
        database().sql().transaction(tx -> stays.end(tx.dsl(), find(stay), freeFrom, room.priya()));
    }

    private void extend(UUID stay, LocalDate to) {
        database().sql().transaction(tx -> stays.extend(tx.dsl(), find(stay), to, room.priya()));
    }

    private void setPoint(UUID mat, int first, int afterLast, int celsius) {
        database()
                .sql()
                .transaction(tx -> new MatDayStore(audit(), new ClashStore(CropCatalogue.bundled()))
                        .setPoint(
                                tx.dsl(),
                                mat,
                                LocalDate.of(2027, 3, first),
                                LocalDate.of(2027, 3, afterLast),
                                celsius,
                                room.priya()));
    }

    private Stay find(UUID stay) {
        return StayBookStore.find(database().sql(), stay).orElseThrow();
    }

    private static PlaceAndDays spot(UUID place, Slot slot, int first, int afterLast) {
        return new PlaceAndDays(place, slot, LocalDate.of(2027, 3, first), LocalDate.of(2027, 3, afterLast));
    }

    private List<Record2<Integer, Integer>> taken(UUID stay) {
        return database()
                .sql()
                .select(QUARTER_DAY.QUARTER, org.jooq.impl.DSL.day(QUARTER_DAY.ON_DAY))
                .from(QUARTER_DAY)
                .where(QUARTER_DAY.STAY_ID.eq(stay))
                .orderBy(QUARTER_DAY.ON_DAY, QUARTER_DAY.QUARTER)
                .fetch();
    }

    private List<Double> celsius(UUID mat, int day) {
        return database()
                .sql()
                .select(QUARTER_DAY.CELSIUS)
                .from(QUARTER_DAY)
                .where(QUARTER_DAY.MAT_ID.eq(mat), QUARTER_DAY.ON_DAY.eq(LocalDate.of(2027, 3, day)))
                .fetch(QUARTER_DAY.CELSIUS);
    }

    private static org.assertj.core.groups.Tuple tuple(int quarter, int day) {
        return org.assertj.core.groups.Tuple.tuple(quarter, day);
    }
}
