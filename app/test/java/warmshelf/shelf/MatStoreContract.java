package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.testing.Decided.done;

import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Decision;
import warmshelf.testing.StoreContract;
import warmshelf.testing.TestGroup;

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
        shelf = done(new ShelfStore(database().sql(), audit()).add(cast.rack(), new ShelfDraft(1, 0, 0), cast.ilse()));
    }

    @Test
    void a_mat_name_is_used_once_in_the_group() {
        mats.add(shelf, MAT, cast.ilse());

        assertThat(mats.add(shelf, MAT, cast.ilse()).refusal()).contains(new ShelfRefusal.MatNameTaken("M1"));
    }

    @Test
    void a_change_over_a_newer_one_is_not_made() {
        UUID mat = done(mats.add(shelf, MAT, cast.ilse()));

        assertThat(mats.change(mat, 9, MAT, cast.ilse(), TestGroup.TODAY)).isInstanceOf(Decision.Overtaken.class);
    }

    @Test
    void more_places_are_added_and_unused_ones_taken_away() {
        UUID mat = done(mats.add(shelf, MAT, cast.ilse()));

        mats.change(mat, 1, new MatDraft("M1", 1, 6, 18, 32, 107, 25), cast.ilse(), TestGroup.TODAY);
        assertThat(shelving.mat(mat).orElseThrow().places())
                .extracting(Place::number)
                .containsExactly(1, 2, 3, 4, 5, 6);
        mats.change(mat, 2, new MatDraft("M1", 1, 1, 18, 32, 107, 25), cast.ilse(), TestGroup.TODAY);
        assertThat(shelving.mat(mat).orElseThrow().places())
                .extracting(Place::number)
                .containsExactly(1);
    }

    @Test
    void a_place_that_a_tray_lies_or_lay_on_is_not_taken_away() {
        UUID mat = done(mats.add(shelf, MAT, cast.ilse()));
        cast.stay(shelving.mat(mat).orElseThrow().places().get(3).id(), 1, 4, TestGroup.TODAY.minusDays(30), 14);

        Decision<UUID> fewer =
                mats.change(mat, 1, new MatDraft("M1", 1, 3, 18, 32, 107, 25), cast.ilse(), TestGroup.TODAY);

        assertThat(fewer.refusal()).contains(new ShelfRefusal.PlacesUsed(3));
        assertThat(shelving.mat(mat).orElseThrow().places()).hasSize(4);
    }

    @Test
    void a_thermostat_range_cannot_leave_out_a_set_point_that_is_still_to_come() {
        UUID mat = done(mats.add(shelf, MAT, cast.ilse()));
        cast.setPoint(mat, TestGroup.TODAY, 30);
        MatDraft cooler = new MatDraft("M1", 1, 4, 18, 28, 107, 25);

        Decision<UUID> today = mats.change(mat, 1, cooler, cast.ilse(), TestGroup.TODAY);
        Decision<UUID> tomorrow = mats.change(mat, 1, cooler, cast.ilse(), TestGroup.TODAY.plusDays(1));

        assertThat(today.refusal())
                .contains(new ShelfRefusal.SetPointOutside(new Thermostat(18, 28), 30, TestGroup.TODAY));
        assertThat(tomorrow).isInstanceOf(Decision.Done.class);
        assertThat(database().sql().fetchCount(MAT_DAY)).isEqualTo(1);
    }

    @Test
    void the_light_that_reaches_a_mat_is_kept_and_is_not_known_until_somebody_says() {
        for (LightAbove light : LightAbove.values()) {
            MatDraft draft = new MatDraft("L " + light.word(), 1, 1, 18, 32, 45, 25, light);
            UUID mat = done(mats.add(shelf, draft, cast.ilse()));

            assertThat(new ShelvingStore(database().sql())
                            .mat(mat)
                            .orElseThrow()
                            .light())
                    .isEqualTo(light);
        }
    }
}
