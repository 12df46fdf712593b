package warmshelf.allocation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.util.UUID;
import org.jooq.exception.DataAccessException;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.crop.CropCatalogue;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

/**
 * What the database refuses by itself, whatever the code believes. The states are those of the SQL standard and of the two
 * engines' manuals: 23505 a key twice, 23503 and (H2) 23506 a reference to nothing, 23514 and (H2) 23513 a broken check.
 */
abstract class StayJudgeContract extends StoreContract {
    private static final LocalDate DAY = LocalDate.of(2027, 3, 10);
    private static final String[] NO_REFERENCE = {"23503", "23506"};
    private static final String[] CHECK_BROKEN = {"23514", "23513"};

    private GrowRoom room;
    private UUID pepper;

    @BeforeEach
    void layPeppersOnTheLeftHalf() {
        room = new GrowRoom(database(), audit());
        StayStore stays = new StayStore(audit(), new ClashStore(CropCatalogue.bundled()));
        PlaceAndDays spot = new PlaceAndDays(room.m1Place1(), new Slot(1, 2), DAY, DAY.plusDays(2));
        UUID sowing = room.tomsPeppers();
        pepper = database()
                .sql()
                .transactionResult(tx -> stays.layOnMat(tx.dsl(), sowing, spot, 26, new Band(24, 30), room.tom()));
    }

    @Test
    void a_quarter_taken_on_a_day_cannot_be_taken_again() {
        assertThat(refusal(() -> insert(row(2, DAY)))).isEqualTo("23505");
        assertThat(refusal(() -> insert(row(3, DAY)))).isEqualTo("accepted");
        assertThat(refusal(() -> insert(row(3, DAY)))).isEqualTo("23505");
    }

    @Test
    void a_temperature_outside_the_band_cannot_be_kept() {
        assertThat(refusal(() -> insert(row(3, DAY).band(27, 30)))).isIn((Object[]) CHECK_BROKEN);
        assertThat(refusal(() -> insert(row(3, DAY).band(20, 25)))).isIn((Object[]) CHECK_BROKEN);
        assertThat(refusal(() -> insert(row(3, DAY).band(26, 26)))).isEqualTo("accepted");
    }

    @Test
    void a_temperature_other_than_the_mats_on_that_day_cannot_be_kept() {
        assertThat(refusal(() -> insert(row(3, DAY).celsius(27.0)))).isIn((Object[]) NO_REFERENCE);
        assertThat(refusal(() -> insert(row(3, DAY.plusDays(2)))))
                .as("a day on which the mat has no set-point")
                .isIn((Object[]) NO_REFERENCE);
    }

    @Test
    void a_mat_cannot_be_turned_to_what_a_tray_on_it_cannot_bear() {
        assertThat(refusal(() -> turn(room.m1(), 23))).isIn((Object[]) CHECK_BROKEN);
        assertThat(refusal(() -> turn(room.m1(), 31))).isIn((Object[]) CHECK_BROKEN);
        assertThat(refusal(() -> turn(room.m1(), 30))).isEqualTo("accepted");
        assertThat(database()
                        .sql()
                        .selectDistinct(QUARTER_DAY.CELSIUS)
                        .from(QUARTER_DAY)
                        .where(QUARTER_DAY.ON_DAY.eq(DAY))
                        .fetch(QUARTER_DAY.CELSIUS))
                .containsExactly(30.0);
    }

    @Test
    void the_database_and_the_band_say_the_same_of_every_tenth_of_a_degree() {
        Band band = new Band(24, 30);
        for (int tenths = 220; tenths <= 320; tenths++) {
            double celsius = tenths / 10.0;

            assertThat(refusal(() -> turn(room.m1(), celsius)).equals("accepted"))
                    .as("%s °C", celsius)
                    .isEqualTo(band.contains(celsius));
        }
    }

    @Test
    void a_set_point_that_something_lies_by_cannot_be_taken_away() {
        assertThat(refusal(() -> database().sql().deleteFrom(MAT_DAY).execute()))
                .isIn((Object[]) NO_REFERENCE);
    }

    @Test
    void a_place_cannot_pass_as_part_of_another_mat() {
        database()
                .sql()
                .insertInto(MAT_DAY)
                .set(MAT_DAY.MAT_ID, room.m2())
                .set(MAT_DAY.ON_DAY, DAY)
                .set(MAT_DAY.CELSIUS, 26.0)
                .execute();

        assertThat(refusal(() -> insert(row(3, DAY).mat(room.m2())))).isIn((Object[]) NO_REFERENCE);
    }

    @Test
    void a_place_on_a_mat_cannot_pass_as_lit_and_so_escape_the_temperature() {
        assertThat(refusal(() -> insert(row(3, DAY).lit()))).isIn((Object[]) NO_REFERENCE);
        assertThat(refusal(() -> insert(row(3, DAY).lit().place(room.lit1())))).isEqualTo("accepted");
    }

    @Test
    void a_place_on_a_mat_cannot_be_taken_without_band_and_temperature() {
        assertThat(refusal(() -> insert(row(3, DAY).band(null, null)))).isIn((Object[]) CHECK_BROKEN);
        assertThat(refusal(() -> insert(row(3, DAY).celsius(null)))).isIn((Object[]) CHECK_BROKEN);
    }

    @Test
    void a_place_has_four_quarters_and_no_fifth() {
        assertThat(refusal(() -> insert(row(5, DAY)))).isIn((Object[]) CHECK_BROKEN);
        assertThat(refusal(() -> insert(row(0, DAY)))).isIn((Object[]) CHECK_BROKEN);
    }

    @ParameterizedTest
    @CsvSource({
        "1,4,yes", "1,2,yes", "3,2,yes", "4,1,yes", "2,4,no", "2,2,no", "4,2,no", "5,1,no", "0,1,no", "1,3,no", "1,8,no"
    })
    void a_stay_lies_within_one_place_or_is_not_kept(int first, int quarters, String fits) {
        String answer = refusal(() -> stay(first, quarters, DAY, DAY.plusDays(1)));

        if (fits.equals("yes")) {
            assertThat(answer).isEqualTo("accepted");
        } else {
            assertThat(answer).isIn((Object[]) CHECK_BROKEN);
        }
    }

    @Test
    void a_stay_cannot_end_before_it_begins() {
        assertThat(refusal(() -> stay(1, 1, DAY, DAY.minusDays(1)))).isIn((Object[]) CHECK_BROKEN);
    }

    /** The state with which the database refused, or 'accepted'. */
    private static String refusal(Runnable write) {
        DataAccessException refused = catchThrowableOfType(DataAccessException.class, write::run);
        return refused == null ? "accepted" : refused.sqlState();
    }

    private Row row(int quarter, LocalDate day) {
        return new Row(room.m1Place1(), quarter, day, "mat", room.m1(), 26.0, 24, 30);
    }

    private void insert(Row row) {
        database()
                .sql()
                .insertInto(QUARTER_DAY)
                .set(QUARTER_DAY.PLACE_ID, row.place())
                .set(QUARTER_DAY.QUARTER, row.quarter())
                .set(QUARTER_DAY.ON_DAY, row.day())
                .set(QUARTER_DAY.STAY_ID, pepper)
                .set(QUARTER_DAY.KIND, row.kind())
                .set(QUARTER_DAY.MAT_ID, row.mat())
                .set(QUARTER_DAY.CELSIUS, row.celsius())
                .set(QUARTER_DAY.LOW_C, row.lowC())
                .set(QUARTER_DAY.HIGH_C, row.highC())
                .execute();
    }

    private void turn(UUID mat, double celsius) {
        database()
                .sql()
                .update(MAT_DAY)
                .set(MAT_DAY.CELSIUS, celsius)
                .where(MAT_DAY.MAT_ID.eq(mat), MAT_DAY.ON_DAY.eq(DAY))
                .execute();
    }

    private void stay(int first, int quarters, LocalDate from, LocalDate to) {
        UUID sowing = room.priyasTomatoes();
        database()
                .sql()
                .insertInto(STAY)
                .set(STAY.ID, UUID.randomUUID())
                .set(STAY.SOWING_ID, sowing)
                .set(STAY.PLACE_ID, room.m1Place2())
                .set(STAY.FIRST_QUARTER, first)
                .set(STAY.QUARTERS, quarters)
                .set(STAY.FROM_DAY, from)
                .set(STAY.TO_DAY, to)
                .set(STAY.MADE_BY, room.priya())
                .set(STAY.MADE_AT, audit().now())
                .set(STAY.VERSION, 1)
                .execute();
    }

    /** A row of quarter_day as someone might try to write it past the stores. */
    private record Row(
            UUID place,
            int quarter,
            LocalDate day,
            String kind,
            @Nullable UUID mat,
            @Nullable Double celsius,
            @Nullable Integer lowC,
            @Nullable Integer highC) {
        Row celsius(@Nullable Double other) {
            return new Row(place, quarter, day, kind, mat, other, lowC, highC);
        }

        Row band(@Nullable Integer low, @Nullable Integer high) {
            return new Row(place, quarter, day, kind, mat, celsius, low, high);
        }

        Row mat(UUID other) {
            return new Row(place, quarter, day, kind, other, celsius, lowC, highC);
        }

        Row place(UUID other) {
            return new Row(other, quarter, day, kind, mat, celsius, lowC, highC);
        }

        Row lit() {
            return new Row(place, quarter, day, "lit", null, null, null, null);
        }
    }
}
