package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Emergence;
import warmshelf.crop.Method;
import warmshelf.crop.SeenEmergence;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.testing.Crops;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.SeenSowings;
import warmshelf.testing.StoreContract;
import warmshelf.timeline.SeasonPart;
import warmshelf.timeline.Seen;
import warmshelf.timeline.Step;
import warmshelf.timeline.Timeline;
import warmshelf.words.Units;

/** What the group's own sowings teach of a crop. */
abstract class EmergenceStoreContract extends StoreContract {
    private static final CropCatalogue CROPS = CropCatalogue.bundled();
    private static final Emergence TABLE = CROPS.responseOf(Crops.PEPPER).at(26).orElseThrow();
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

    private GrowRoom room;
    private SeenSowings sowings;
    private EmergenceStore emergence;
    private SowingPlanner planner;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        sowings = new SeenSowings(database(), audit(), room);
        emergence = new EmergenceStore(database(), CROPS);
        planner = new SowingPlanner(CROPS, new GrowerFrost(FrostSource.bundledOnly()), emergence);
    }

    @Test
    void a_sowing_on_a_mat_is_read_with_its_temperature_lot_and_looks() {
        UUID lot = sowings.lot();
        UUID sowing = sowings.upOnDay(11, lot);

        assertThat(emergence.seen().get("pepper"))
                .containsExactly(new SeenEmergence(sowing, lot, Method.CELLS, 26, 10, 11));
    }

    @Test
    void what_is_waited_for_or_lay_on_no_mat_is_not_read() {
        UUID waitedFor = sowings.onMat(room.peppersOf(sowings.lot()));
        sowings.look(waitedFor, 11, 5);
        UUID onAWindowSill = room.peppersOf(sowings.lot());
        sowings.sownOn(onAWindowSill, SeenSowings.FIRST);
        sowings.look(onAWindowSill, 19, 0);
        sowings.look(onAWindowSill, 20, 12);

        assertThat(emergence.seen()).isEmpty();
    }

    @Test
    void without_sowings_or_with_one_the_planner_says_what_is_published() {
        assertThat(planner.emergence(Crops.PEPPER, 26)).contains(TABLE);

        sowings.upOnDay(13, sowings.lot());
        emergence.seen();

        assertThat(planner.emergence(Crops.PEPPER, 26)).contains(TABLE);
    }

    @Test
    void two_slow_sowings_make_the_planner_expect_that_crop_later_and_no_other() {
        sowings.upOnDay(13, sowings.lot());
        sowings.upOnDay(13, sowings.lot());

        Emergence here = planner.emergence(Crops.PEPPER, 26).orElseThrow();

        assertThat(here.days()).isBetween(1.05 * TABLE.days(), 1.4 * TABLE.days());
        assertThat(here.days95() / here.days()).isCloseTo(TABLE.days95() / TABLE.days(), within(1e-9));
        assertThat(planner.emergence(Crops.TOMATO, 26))
                .isEqualTo(CROPS.responseOf(Crops.TOMATO).at(26));
    }

    @Test
    void slow_seed_keeps_its_place_on_the_mat_for_longer() {
        Timeline before = timeline();
        for (int each = 0; each < 6; each++) {
            sowings.upOnDay(14, sowings.lot());
        }
        emergence.seen();

        assertThat(timeline().warmDays()).isGreaterThanOrEqualTo(before.warmDays() + 2);
    }

    @Test
    void seed_that_is_quick_here_is_looked_at_sooner() {
        Timeline before = timeline();
        for (int each = 0; each < 6; each++) {
            sowings.upOnDay(6, sowings.lot());
        }
        emergence.seen();

        assertThat(daysToFirstLook(timeline())).isLessThan(daysToFirstLook(before));
    }

    private Timeline timeline() {
        Sowing.Grower tom = new Sowing.Grower(room.tom(), "Tom", "US", "55804");
        Asking asking = new Asking(tom, Crops.PEPPER, null, Method.CELLS, true, 2027, SeasonPart.SPRING, 0.1, null);
        return planner.timeline(asking, 26, TODAY, Seen.nothing()).orElseThrow();
    }

    private static long daysToFirstLook(Timeline timeline) {
        return ChronoUnit.DAYS.between(
                timeline.step(Step.SOW).orElseThrow().ideal(),
                timeline.step(Step.FIRST_LOOK).orElseThrow().ideal());
    }

    @Test
    void a_lot_known_to_be_slow_is_expected_later_than_its_crop() {
        UUID slow = sowings.lot();
        UUID quick = sowings.lot();
        for (int each = 0; each < 3; each++) {
            sowings.upOnDay(15, slow);
            sowings.upOnDay(8, quick);
        }
        Sowing ofSlow = room.sowings().find(room.peppersOf(slow)).orElseThrow();

        double crop = planner.emergence(Crops.PEPPER, 26).orElseThrow().days();

        assertThat(planner.emergence(ofSlow, 26).orElseThrow().days()).isGreaterThan(crop);
        assertThat(planner.learnedOf(ofSlow, 26, Units.METRIC))
                .startsWith("From 3 sowings of this lot here: ")
                .contains(" later than the table, ");
    }
}
