package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.shelf.ShelfCast.saved;

import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.StoreContract;
import warmshelf.testing.TestGroup;
import warmshelf.words.Units;

/** Mats and their places, kept and read again. */
abstract class MatStoreContract extends StoreContract {
    private static final MatDraft MAT = new MatDraft("M1", 1, 4, 18, 32, 107, 25);

    private ShelvingStore shelving;
    private MatStore mats;
    private ShelfCast cast;
    private UUID shelf;

    @BeforeEach
    void prepare() {
        shelving = new ShelvingStore(database().sql());
        mats = new MatStore(database().sql(), audit());
        cast = new ShelfCast(database(), audit());
        shelf = saved(new ShelfStore(database().sql(), audit()).add(cast.rack(), new ShelfDraft(1, 0, 0), cast.ilse()));
    }

    @Test
    void a_mat_name_is_used_once_in_the_group() {
        mats.add(shelf, MAT, cast.ilse());

        assertThat(mats.add(shelf, MAT, cast.ilse()))
                .isInstanceOfSatisfying(
                        EditOutcome.Refused.class,
                        refused -> assertThat(refused.field()).isEqualTo("name"));
    }

    @Test
    void a_change_over_a_newer_one_is_not_made() {
        UUID mat = saved(mats.add(shelf, MAT, cast.ilse()));

        assertThat(mats.change(mat, 9, MAT, cast.ilse(), TestGroup.TODAY, Units.METRIC))
                .isInstanceOf(EditOutcome.ChangedMeanwhile.class);
    }

    @Test
    void more_places_are_added_and_unused_ones_taken_away() {
        UUID mat = saved(mats.add(shelf, MAT, cast.ilse()));

        mats.change(mat, 1, new MatDraft("M1", 1, 6, 18, 32, 107, 25), cast.ilse(), TestGroup.TODAY, Units.METRIC);
        assertThat(shelving.mat(mat).orElseThrow().places())
                .extracting(Place::number)
                .containsExactly(1, 2, 3, 4, 5, 6);
        mats.change(mat, 2, new MatDraft("M1", 1, 1, 18, 32, 107, 25), cast.ilse(), TestGroup.TODAY, Units.METRIC);
        assertThat(shelving.mat(mat).orElseThrow().places())
                .extracting(Place::number)
                .containsExactly(1);
    }

    @Test
    void a_place_that_a_tray_lies_or_lay_on_is_not_taken_away() {
        UUID mat = saved(mats.add(shelf, MAT, cast.ilse()));
        cast.stay(shelving.mat(mat).orElseThrow().places().get(3).id(), 1, 4, TestGroup.TODAY.minusDays(30), 14);

        EditOutcome fewer = mats.change(
                mat, 1, new MatDraft("M1", 1, 3, 18, 32, 107, 25), cast.ilse(), TestGroup.TODAY, Units.METRIC);

        assertThat(fewer)
                .isInstanceOfSatisfying(
                        EditOutcome.Refused.class,
                        refused -> assertThat(refused.field()).isEqualTo("places"));
        assertThat(shelving.mat(mat).orElseThrow().places()).hasSize(4);
    }

    @Test
    void a_thermostat_range_cannot_leave_out_a_set_point_that_is_still_to_come() {
        UUID mat = saved(mats.add(shelf, MAT, cast.ilse()));
        cast.setPoint(mat, TestGroup.TODAY, 30);
        MatDraft cooler = new MatDraft("M1", 1, 4, 18, 28, 107, 25);

        EditOutcome today = mats.change(mat, 1, cooler, cast.ilse(), TestGroup.TODAY, Units.METRIC);
        EditOutcome tomorrow = mats.change(mat, 1, cooler, cast.ilse(), TestGroup.TODAY.plusDays(1), Units.METRIC);

        assertThat(today)
                .isInstanceOfSatisfying(
                        EditOutcome.Refused.class,
                        refused -> assertThat(refused.sentence()).contains("30 °C", "2027-03-01"));
        assertThat(tomorrow).isInstanceOf(EditOutcome.Saved.class);
        assertThat(database().sql().fetchCount(MAT_DAY)).isEqualTo(1);
    }
}
