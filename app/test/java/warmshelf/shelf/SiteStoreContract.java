package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.MAT_DAY;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.StoreContract;
import warmshelf.testing.TestGroup;
import warmshelf.words.Units;

/** Sites, racks, shelves and mats, kept and read again. */
abstract class SiteStoreContract extends StoreContract {
    private static final SiteDraft CELLAR = new SiteDraft("Hall cellar", 2, new Circuit(15, 120), "Key with Ilse");
    private static final MatDraft MAT = new MatDraft("M1", 1, 4, 18, 32, 107, 25);

    private SiteStore sites;
    private StandStore stands;
    private MatStore mats;
    private ShelfCast cast;

    @BeforeEach
    void prepare() {
        sites = new SiteStore(database().sql());
        stands = new StandStore(database().sql(), audit());
        mats = new MatStore(database().sql(), audit());
        cast = new ShelfCast(database(), audit());
    }

    @Test
    void sites_are_read_in_walking_order_with_everything_that_stands_there() {
        UUID cellar = saved(stands.addSite(CELLAR, cast.ilse()));
        stands.addSite(new SiteDraft("Garage", 1, new Circuit(10, 230), ""), cast.ilse());
        UUID second = saved(stands.addRack(cellar, new RackDraft("B", 2), cast.ilse()));
        stands.addRack(cellar, new RackDraft("A", 1), cast.ilse());
        UUID lower = saved(mats.addShelf(second, new ShelfDraft(2, 0, 0), cast.ilse()));
        mats.addShelf(second, new ShelfDraft(1, 3, 160), cast.ilse());
        mats.addMat(lower, new MatDraft("M2", 2, 2, 18, 32, 45, 22), cast.ilse());
        mats.addMat(lower, MAT, cast.ilse());

        List<Site> all = sites.all();

        assertThat(all).extracting(Site::name).containsExactly("Garage", "Hall cellar");
        assertThat(all.get(1).racks()).extracting(Rack::name).containsExactly("A", "B");
        List<Shelf> shelves = all.get(1).racks().get(1).shelves();
        assertThat(shelves).extracting(Shelf::fromTop).containsExactly(1, 2);
        assertThat(shelves.get(0).litPlaces()).extracting(Place::number).containsExactly(1, 2, 3);
        assertThat(shelves.get(1).mats()).extracting(Mat::name).containsExactly("M1", "M2");
        assertThat(shelves.get(1).mats().get(0).places())
                .extracting(Place::number)
                .containsExactly(1, 2, 3, 4);
        assertThat(all.get(1).connectedWatts()).isEqualTo(160 + 45 + 107);
    }

    @Test
    void a_site_cannot_have_the_name_of_another() {
        stands.addSite(CELLAR, cast.ilse());

        EditOutcome again = stands.addSite(CELLAR, cast.ilse());

        assertThat(again).isInstanceOfSatisfying(EditOutcome.Refused.class, refused -> {
            assertThat(refused.field()).isEqualTo("name");
            assertThat(refused.sentence()).contains("Hall cellar");
        });
        assertThat(sites.all()).hasSize(1);
    }

    @Test
    void two_sites_may_each_have_a_rack_a_but_one_site_only_one() {
        UUID cellar = saved(stands.addSite(CELLAR, cast.ilse()));
        UUID garage = saved(stands.addSite(new SiteDraft("Garage", 1, new Circuit(10, 230), ""), cast.ilse()));
        RackDraft a = new RackDraft("A", 1);

        assertThat(stands.addRack(cellar, a, cast.ilse())).isInstanceOf(EditOutcome.Saved.class);
        assertThat(stands.addRack(garage, a, cast.ilse())).isInstanceOf(EditOutcome.Saved.class);
        assertThat(stands.addRack(cellar, a, cast.ilse())).isInstanceOf(EditOutcome.Refused.class);
    }

    @Test
    void a_level_holds_one_shelf_and_a_mat_name_is_used_once_in_the_group() {
        UUID rack = cast.rack();
        UUID shelf = saved(mats.addShelf(rack, new ShelfDraft(1, 0, 0), cast.ilse()));
        mats.addMat(shelf, MAT, cast.ilse());

        assertThat(mats.addShelf(rack, new ShelfDraft(1, 2, 40), cast.ilse()))
                .isInstanceOfSatisfying(
                        EditOutcome.Refused.class,
                        refused -> assertThat(refused.field()).isEqualTo("fromTop"));
        assertThat(mats.addMat(shelf, MAT, cast.ilse()))
                .isInstanceOfSatisfying(
                        EditOutcome.Refused.class,
                        refused -> assertThat(refused.field()).isEqualTo("name"));
    }

    @Test
    void a_change_over_a_newer_one_is_not_made() {
        UUID cellar = saved(stands.addSite(CELLAR, cast.ilse()));
        stands.changeSite(cellar, 1, new SiteDraft("Cellar", 1, new Circuit(20, 120), ""), cast.ilse());

        EditOutcome late = stands.changeSite(cellar, 1, CELLAR, cast.ilse());

        assertThat(late).isInstanceOf(EditOutcome.ChangedMeanwhile.class);
        assertThat(sites.site(cellar).orElseThrow().name()).isEqualTo("Cellar");
        assertThat(sites.site(cellar).orElseThrow().version()).isEqualTo(2);
    }

    @Test
    void a_late_change_of_a_rack_shelf_or_mat_is_not_made_either() {
        UUID rack = cast.rack();
        UUID shelf = saved(mats.addShelf(rack, new ShelfDraft(1, 0, 0), cast.ilse()));
        UUID mat = saved(mats.addMat(shelf, MAT, cast.ilse()));

        assertThat(stands.changeRack(rack, 9, new RackDraft("Z", 1), cast.ilse()))
                .isInstanceOf(EditOutcome.ChangedMeanwhile.class);
        assertThat(mats.changeShelf(shelf, 9, new ShelfDraft(3, 0, 0), cast.ilse()))
                .isInstanceOf(EditOutcome.ChangedMeanwhile.class);
        assertThat(mats.changeMat(mat, 9, MAT, cast.ilse(), TestGroup.TODAY, Units.METRIC))
                .isInstanceOf(EditOutcome.ChangedMeanwhile.class);
    }

    @Test
    void more_places_are_added_and_unused_ones_taken_away() {
        UUID shelf = saved(mats.addShelf(cast.rack(), new ShelfDraft(1, 2, 40), cast.ilse()));
        UUID mat = saved(mats.addMat(shelf, MAT, cast.ilse()));

        mats.changeMat(mat, 1, new MatDraft("M1", 1, 6, 18, 32, 107, 25), cast.ilse(), TestGroup.TODAY, Units.METRIC);
        assertThat(sites.mat(mat).orElseThrow().places())
                .extracting(Place::number)
                .containsExactly(1, 2, 3, 4, 5, 6);
        mats.changeMat(mat, 2, new MatDraft("M1", 1, 1, 18, 32, 107, 25), cast.ilse(), TestGroup.TODAY, Units.METRIC);
        assertThat(sites.mat(mat).orElseThrow().places())
                .extracting(Place::number)
                .containsExactly(1);
        mats.changeShelf(shelf, 1, new ShelfDraft(1, 0, 0), cast.ilse());
        assertThat(sites.shelf(shelf).orElseThrow().isLit()).isFalse();
    }

    @Test
    void a_place_that_a_tray_lies_or_lay_on_is_not_taken_away() {
        UUID shelf = saved(mats.addShelf(cast.rack(), new ShelfDraft(1, 2, 40), cast.ilse()));
        UUID mat = saved(mats.addMat(shelf, MAT, cast.ilse()));
        cast.stay(sites.mat(mat).orElseThrow().places().get(3).id(), 1, 4, TestGroup.TODAY.minusDays(30), 14);
        cast.stay(sites.shelf(shelf).orElseThrow().litPlaces().get(1).id(), 1, 4, TestGroup.TODAY, 14);

        EditOutcome fewer = mats.changeMat(
                mat, 1, new MatDraft("M1", 1, 3, 18, 32, 107, 25), cast.ilse(), TestGroup.TODAY, Units.METRIC);
        EditOutcome dark = mats.changeShelf(shelf, 1, new ShelfDraft(1, 1, 40), cast.ilse());

        assertThat(fewer)
                .isInstanceOfSatisfying(
                        EditOutcome.Refused.class,
                        refused -> assertThat(refused.field()).isEqualTo("places"));
        assertThat(dark)
                .isInstanceOfSatisfying(
                        EditOutcome.Refused.class,
                        refused -> assertThat(refused.field()).isEqualTo("litPlaces"));
        assertThat(sites.mat(mat).orElseThrow().places()).hasSize(4);
    }

    @Test
    void a_thermostat_range_cannot_leave_out_a_set_point_that_is_still_to_come() {
        UUID shelf = saved(mats.addShelf(cast.rack(), new ShelfDraft(1, 0, 0), cast.ilse()));
        UUID mat = saved(mats.addMat(shelf, MAT, cast.ilse()));
        cast.setPoint(mat, TestGroup.TODAY, 30);
        MatDraft cooler = new MatDraft("M1", 1, 4, 18, 28, 107, 25);

        EditOutcome today = mats.changeMat(mat, 1, cooler, cast.ilse(), TestGroup.TODAY, Units.METRIC);
        EditOutcome tomorrow = mats.changeMat(mat, 1, cooler, cast.ilse(), TestGroup.TODAY.plusDays(1), Units.METRIC);

        assertThat(today)
                .isInstanceOfSatisfying(
                        EditOutcome.Refused.class,
                        refused -> assertThat(refused.sentence()).contains("30 °C", "2027-03-01"));
        assertThat(tomorrow).isInstanceOf(EditOutcome.Saved.class);
        assertThat(database().sql().fetchCount(MAT_DAY)).isEqualTo(1);
    }

    @Test
    void every_change_leaves_a_line_with_who_did_it_and_a_refused_one_none() {
        UUID cellar = saved(stands.addSite(CELLAR, cast.ilse()));
        stands.changeSite(cellar, 1, CELLAR, cast.ilse());
        stands.addSite(CELLAR, cast.ilse());

        assertThat(database()
                        .sql()
                        .selectFrom(AUDIT_LINE)
                        .where(AUDIT_LINE.SUBJECT.eq("site"))
                        .fetch())
                .hasSize(2)
                .allSatisfy(line -> {
                    assertThat(line.getMemberId()).isEqualTo(cast.ilse());
                    assertThat(line.getSubjectId()).isEqualTo(cellar.toString());
                });
    }

    private static UUID saved(EditOutcome outcome) {
        assertThat(outcome).isInstanceOf(EditOutcome.Saved.class);
        return ((EditOutcome.Saved) outcome).id();
    }
}
