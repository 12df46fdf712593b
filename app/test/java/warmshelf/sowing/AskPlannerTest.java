package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.testing.Decided.done;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.SpaceWish;
import warmshelf.crop.BagFit;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Method;
import warmshelf.decision.Decision;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.seed.SeedSource;
import warmshelf.seed.Storage;
import warmshelf.shelf.LightAbove;
import warmshelf.shelf.Thermostat;
import warmshelf.testing.Crops;
import warmshelf.timeline.Verdict;
import warmshelf.words.Units;

class AskPlannerTest {
    private static final LocalDate MARCH = LocalDate.of(2027, 3, 1);
    private static final MatSpace MAT = new MatSpace(
            new UUID(0, 1), "M1", "Hall cellar", new Thermostat(20, 32), 26, List.of(new UUID(1, 1), new UUID(1, 2)));
    private static final SowingPlanner PLANNER =
            new SowingPlanner(CropCatalogue.bundled(), new GrowerFrost(FrostSource.bundledOnly()));

    @Test
    void in_time_the_plan_has_seeds_dates_and_free_places() {
        AskPlan plan = plan(Crops.PEPPER, Method.CELLS, true, null, MARCH, MAT);

        assertThat(plan.canBeSent()).isTrue();
        assertThat(plan.celsius()).isEqualTo(26);
        assertThat(plan.seeds().problem()).isNull();
        assertThat(plan.offers()).isNotEmpty();
        assertThat(plan.noSpace()).isNull();
    }

    @Test
    void too_late_is_said_and_cannot_be_sent() {
        AskPlan plan = plan(Crops.PEPPER, Method.CELLS, true, null, LocalDate.of(2027, 9, 1), MAT);

        assertThat(plan.timeline().verdict()).isEqualTo(Verdict.TOO_LATE);
        assertThat(plan.canBeSent()).isFalse();
        assertThat(plan.wish()).isNull();
        assertThat(AskPlanner.request(plan, new UUID(8, 8))).isEmpty();
    }

    @Test
    void where_no_frost_is_known_a_day_under_cover_is_asked_for() {
        Decision<AskPlan> outcome = outcome("00000", Crops.PEPPER, ask(Method.CELLS, true, null), MARCH, MAT);

        assertThat(no(outcome).field()).isEqualTo("where");
        assertThat(no(outcome).words(Units.METRIC))
                .isEqualTo("No frost dates are known for postcode 00000 (US), so nothing can be counted back from them."
                        + " Frost, in the menu, says how to make them known; or choose 'under cover' and name the"
                        + " day the plants go out.");
        assertThat(outcome("00000", Crops.PEPPER, ask(Method.CELLS, true, LocalDate.of(2027, 5, 20)), MARCH, MAT))
                .isInstanceOf(Decision.Done.class);
    }

    @Test
    void what_is_raised_from_slips_is_refused_at_the_crop_with_what_to_do_instead() {
        Crop sweetPotato = Crops.of("sweet-potato");

        Decision<AskPlan> outcome = outcome("55804", sweetPotato, ask(Method.CELLS, true, null), MARCH, MAT);

        assertThat(no(outcome).field()).isEqualTo("crop");
        assertThat(no(outcome).words(Units.METRIC))
                .startsWith("Sweet potato is raised from slips, the shoots of its roots, not from seed")
                .contains("Buy slips", "6 to 8 weeks", "In your garden: lay roots about ");
        assertThat(CropCatalogue.bundled().fromSeed())
                .doesNotContain(sweetPotato)
                .hasSize(CropCatalogue.bundled().all().size() - 1);
    }

    @Test
    void seed_that_does_not_come_up_at_room_temperature_is_refused_with_what_it_likes() {
        int refused = 0;
        for (Crop crop : CropCatalogue.bundled().fromSeed()) {
            Decision<AskPlan> outcome = outcome("55804", crop, ask(Method.CELLS, false, null), MARCH, MAT);
            boolean comesUp = CropCatalogue.bundled().responseOf(crop).at(20).isPresent();

            boolean tooCold =
                    outcome instanceof Decision.Refused && no(outcome).field().equals("heat");
            assertThat(tooCold).as(crop.id()).isEqualTo(!comesUp);
            if (!comesUp) {
                refused++;
                assertThat(no(outcome).words(Units.METRIC)).contains(crop.name(), "20 °C; its seed likes ");
            }
        }
        assertThat(refused).as("some crop needs more than a room").isPositive();
    }

    @Test
    void the_days_of_a_request_stand_in_order_and_never_before_today() {
        int asked = 0;
        for (Crop crop : CropCatalogue.bundled().all()) {
            for (LocalDate today = LocalDate.of(2027, 1, 4);
                    today.isBefore(LocalDate.of(2027, 9, 1));
                    today = today.plusDays(17)) {
                Decision<AskPlan> outcome = outcome("55804", crop, ask(Method.BAG, true, null), today, MAT);
                AskPlan plan = outcome instanceof Decision.Done<AskPlan> planned ? planned.value() : null;
                SpaceWish wish = plan == null ? null : plan.wish();
                if (plan == null || wish == null) {
                    continue;
                }
                asked++;
                assertThat(List.of(today, wish.earliest(), wish.ideal(), wish.latest()))
                        .as("%s on %s", crop.id(), today)
                        .isSorted();
                SpaceRequest request = AskPlanner.request(plan, new UUID(8, 8)).orElseThrow();
                assertThat(request.days()).isPositive();
                assertThat(request.quarters()).isEqualTo(1);
                assertThat(request.isWaiting()).isTrue();
            }
        }
        assertThat(asked).isGreaterThan(100);
    }

    // Two seeds to a cell: common practice, the row 'seeds per cell' of the table of practice, which the how-to quotes.
    @Test
    void as_many_seeds_go_to_a_cell_as_the_how_to_advises_and_one_where_there_are_too_few() {
        AskForm.Ask asked = ask(Method.CELLS, true, null).withSeedsPerCell(AskForm.AS_ADVISED);

        AskPlan enough = planOf(asked, null);
        AskPlan scarce = planOf(asked, 12);

        assertThat(enough.ask().seedsPerCell()).isEqualTo(2);
        assertThat(enough.perCellWords()).isEqualTo("2 to a cell: a safety margin (common practice)");
        assertThat(enough.seeds().seeds()).isEqualTo(2 * enough.seeds().cells()).isGreaterThan(12);
        assertThat(scarce.ask().seedsPerCell()).isEqualTo(1);
        assertThat(scarce.perCellWords()).startsWith("1 to a cell, which saves seed");
        assertThat(scarce.seeds().seeds()).isLessThanOrEqualTo(12);
        assertThat(planOf(asked.withSeedsPerCell(3), null).perCellWords()).startsWith("3 to a cell; 2 are advised");
    }

    private static AskPlan planOf(AskForm.Ask ask, @Nullable Integer seedsInPacket) {
        AskForm.Ask asked = withPacket(ask, Crops.PEPPER, seedsInPacket);
        return done(new AskPlanner(
                        PLANNER,
                        new Sowing.Grower(new UUID(1, 1), "Tom", "US", "55804"),
                        MARCH,
                        2027,
                        Map.of(),
                        Survival.COMMON_PRACTICE)
                .plan(
                        asked,
                        Crops.PEPPER,
                        List.of(),
                        null,
                        new SpaceCalendar(MARCH, MARCH.plusDays(400), List.of(MAT))));
    }

    @Test
    void dust_and_seed_whose_roots_stay_are_not_asked_for_in_a_bag() {
        for (Crop crop : CropCatalogue.bundled().fromSeed()) {
            Decision<AskPlan> outcome = outcome("55804", crop, ask(Method.BAG, true, null), MARCH, MAT);

            boolean refused =
                    outcome instanceof Decision.Refused && no(outcome).field().equals("method");
            assertThat(refused).as(crop.id()).isEqualTo(BagFit.of(crop) != BagFit.FITS);
        }
        assertThat(no(outcome("55804", Crops.of("petunia"), ask(Method.BAG, true, null), MARCH, MAT))
                        .words(Units.METRIC))
                .contains("fine as dust", "Sow it in cells");
    }

    @Test
    void lettuce_and_spinach_are_not_sent_to_a_mat_but_told_to_be_sown_at_room_temperature() {
        for (String id : List.of("lettuce", "leaf-lettuce", "spinach")) {
            AskRefusal no = no(outcome("55804", Crops.of(id), ask(Method.CELLS, true, null), MARCH, MAT));
            assertThat(no.field()).as(id).isEqualTo("heat");
            assertThat(no.words(Units.METRIC)).contains("needs no mat: sow it at room temperature, about 20 °C");
            assertThat(plan(Crops.of(id), Method.CELLS, false, null, MARCH, MAT).canBeSent())
                    .isTrue();
        }
    }

    @Test
    void a_crop_of_the_cool_season_on_a_mat_is_told_what_the_mat_would_gain() {
        // Harrington and Minges: cabbage 6 days at 20 C, 5 at 25
        assertThat(plan(Crops.of("cabbage"), Method.CELLS, true, null, MARCH, MAT)
                        .roomIsEnough())
                .isEqualTo(new AskPlan.RoomIsEnough(20, 6, 5));
        assertThat(plan(Crops.of("cabbage"), Method.CELLS, false, null, MARCH, MAT)
                        .roomIsEnough())
                .isNull();
        assertThat(plan(Crops.PEPPER, Method.CELLS, true, null, MARCH, MAT).roomIsEnough())
                .isNull();
    }

    @Test
    void seed_that_needs_light_asks_for_a_mat_that_is_not_dark() {
        AskPlan petunia = plan(Crops.of("petunia"), Method.CELLS, true, null, MARCH, mat(LightAbove.NONE));
        AskPlan lit = plan(Crops.of("petunia"), Method.CELLS, true, null, MARCH, mat(LightAbove.LAMP));
        AskPlan pepper = plan(Crops.PEPPER, Method.CELLS, true, null, MARCH, mat(LightAbove.NONE));

        assertThat(java.util.Objects.requireNonNull(petunia.wish()).needsLight())
                .isTrue();
        assertThat(petunia.offers()).isEmpty();
        assertThat(petunia.noSpace()).contains("needs light to come up", "lies in the dark");
        assertThat(petunia.canBeSent()).isTrue();
        assertThat(AskPlanner.request(petunia, new UUID(5, 5)).orElseThrow().needsLight())
                .isTrue();
        assertThat(lit.offers()).isNotEmpty();
        assertThat(pepper.offers()).isNotEmpty();
    }

    private static MatSpace mat(LightAbove light) {
        return new MatSpace(new UUID(0, 3), "M3", "Garage", new Thermostat(18, 34), 26, light, List.of(new UUID(3, 1)));
    }

    @Test
    void without_warmth_no_mat_is_asked_for() {
        AskPlan plan = plan(Crops.LETTUCE, Method.CELLS, false, null, MARCH, MAT);

        assertThat(plan.wish()).isNull();
        assertThat(plan.offers()).isEmpty();
        assertThat(plan.noSpace()).isNull();
        assertThat(plan.canBeSent()).isTrue();
    }

    @Test
    void without_a_fitting_mat_the_reason_is_said_and_the_request_can_be_sent_all_the_same() {
        MatSpace cool =
                new MatSpace(new UUID(0, 2), "M2", "Garage", new Thermostat(10, 18), 15, List.of(new UUID(2, 1)));

        AskPlan plan = plan(Crops.PEPPER, Method.CELLS, true, null, MARCH, cool);

        assertThat(plan.noSpace())
                .isEqualTo("No mat of the group holds " + plan.band().words(Units.METRIC) + ".");
        assertThat(plan.canBeSent()).isTrue();
    }

    @Test
    void too_many_cells_for_the_tray_are_laid_to_the_tray_and_too_many_for_a_bag_to_the_plants() {
        AskForm.Ask halfTray = ask(60, Method.CELLS, true, null);
        AskForm.Ask bag = ask(300, Method.BAG, true, null);

        AskRefusal tray = no(outcome("55804", Crops.PEPPER, halfTray, MARCH, MAT));
        assertThat(tray.field()).isEqualTo("container");
        assertThat(tray.words(Units.METRIC)).contains("this tray has 36");
        AskRefusal full = no(outcome("55804", Crops.PEPPER, bag, MARCH, MAT));
        assertThat(full.field()).isEqualTo("plants");
        assertThat(full.words(Units.METRIC)).contains("a bag holds 200").doesNotContain("tray");
    }

    @Test
    void old_seed_is_told_to_be_tested_first_and_not_that_its_bag_is_too_small() {
        AskForm.Packet old = new AskForm.Packet(
                Crops.of("onion"), "Lantern Row", 2023, null, null, null, false, SeedSource.PACKET, Storage.UNKNOWN);

        AskPlan plan =
                done(outcome("55804", Crops.of("onion"), withPacket(ask(60, Method.BAG, true, null), old), MARCH, MAT));

        assertThat(plan.seeds().testFirst()).isTrue();
        assertThat(plan.howToTest()).isNotNull();
        assertThat(plan.seeds().seeds()).isBetween(60, 200);
    }

    @Test
    void what_frost_kills_is_planned_with_less_risk() {
        assertThat(plan(Crops.KALE, Method.CELLS, false, null, MARCH, MAT)
                        .asking()
                        .risk())
                .isEqualTo(0.5);
        assertThat(Crops.PEPPER.hardiness().usualRisk()).isEqualTo(0.1);
        assertThat(Crops.KALE.hardiness().usualRisk()).isEqualTo(0.5);
        assertThat(plan(Crops.PEPPER, Method.CELLS, true, null, MARCH, MAT)
                        .asking()
                        .risk())
                .isEqualTo(0.1);
    }

    @Test
    void the_risk_that_the_grower_accepts_counts_before_the_usual_one() {
        SpaceCalendar board = new SpaceCalendar(MARCH, MARCH.plusDays(400), List.of(MAT));
        AskPlanner planner = new AskPlanner(
                PLANNER,
                new Sowing.Grower(new UUID(1, 1), "Tom", "US", "55804"),
                MARCH,
                2027,
                Map.of(Crops.PEPPER.hardiness(), 0.3),
                Survival.COMMON_PRACTICE);
        AskForm.Ask asUsual = withPacket(ask(Method.CELLS, true, null), Crops.PEPPER);

        AskPlan plan = done(planner.plan(asUsual, Crops.PEPPER, List.of(), null, board));

        assertThat(plan.asking().risk()).isEqualTo(0.3);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-20, 2026-12-28", // the group has turned to the coming spring already
        "2027-03-01, 2027-04-20",
        "2027-08-10, 2027-10-01", // an autumn crop
        "2027-10-15, 2028-01-10" // a southern summer reaches into the next year
    })
    void what_goes_out_under_cover_belongs_to_the_season_it_was_asked_for(LocalDate today, LocalDate cover) {
        AskPlan plan = plan(Crops.TOMATO, Method.CELLS, true, cover, today, MAT);

        assertThat(plan.asking().season()).isEqualTo(2027);
        assertThat(plan.asking().underCoverOn()).isEqualTo(cover);
    }

    private static AskPlan plan(
            Crop crop, Method method, boolean warm, @Nullable LocalDate cover, LocalDate today, MatSpace mat) {
        Decision<AskPlan> outcome = outcome("55804", crop, ask(method, warm, cover), today, mat);
        return done(outcome);
    }

    private static AskRefusal no(Decision<AskPlan> decision) {
        return (AskRefusal) decision.refusal().orElseThrow();
    }

    private static Decision<AskPlan> outcome(
            String postcode, Crop crop, AskForm.Ask ask, LocalDate today, MatSpace mat) {
        SpaceCalendar board = new SpaceCalendar(today, today.plusDays(400), List.of(mat));
        AskForm.Ask asked = ask.packet() == null ? withPacket(ask, crop) : ask;
        return new AskPlanner(
                        PLANNER,
                        new Sowing.Grower(new UUID(1, 1), "Tom", "US", postcode),
                        today,
                        2027,
                        Map.of(),
                        Survival.COMMON_PRACTICE)
                .plan(asked, crop, List.of(), null, board);
    }

    private static AskForm.Ask ask(Method method, boolean warm, @Nullable LocalDate cover) {
        return ask(6, method, warm, cover);
    }

    private static AskForm.Ask ask(int plants, Method method, boolean warm, @Nullable LocalDate cover) {
        return new AskForm.Ask(
                null,
                null,
                plants,
                method,
                warm,
                false,
                method == Method.BAG ? Container.BAG : Container.HALF_TRAY,
                72,
                1,
                null,
                0,
                cover,
                false,
                "");
    }

    private static AskForm.Ask withPacket(AskForm.Ask ask, Crop crop) {
        return withPacket(ask, crop, null);
    }

    private static AskForm.Ask withPacket(AskForm.Ask ask, Crop crop, @Nullable Integer seeds) {
        return withPacket(
                ask,
                new AskForm.Packet(
                        crop, "Lantern Row", 2027, seeds, 19, 20, false, SeedSource.PACKET, Storage.UNKNOWN));
    }

    private static AskForm.Ask withPacket(AskForm.Ask ask, AskForm.Packet packet) {
        return new AskForm.Ask(
                null,
                packet,
                ask.plants(),
                ask.method(),
                ask.warm(),
                ask.underLight(),
                ask.container(),
                ask.cellsInATray(),
                ask.seedsPerCell(),
                ask.part(),
                ask.chosenRisk(),
                ask.underCoverOn(),
                ask.acceptFewer(),
                ask.note());
    }
}
