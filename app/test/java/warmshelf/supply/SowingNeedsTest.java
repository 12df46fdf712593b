package warmshelf.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import warmshelf.ReferenceTable;
import warmshelf.crop.Crop;
import warmshelf.crop.Method;
import warmshelf.crop.SeedLight;
import warmshelf.testing.Crops;
import warmshelf.words.Units;

/** Against the sizes of {@code containers.csv} (university extension pages; cell volumes from memory) and NIST's quart. */
class SowingNeedsTest {
    private static final double TENTH_MORE = 1.1;

    @Test
    void a_full_tray_of_72_cells_takes_what_the_table_says_and_a_tenth_more() {
        CSVRecord row = row("72 cells in a 10 x 20 inch footprint");
        double litres = Double.parseDouble(row.get("tray_media_litres"));

        Supplies needs = cells(Crops.PEPPER, 72, 72).supplies();

        assertThat(needs.of(SupplyItem.SOWING_COMPOST) / 1000).isCloseTo(litres * TENTH_MORE, within(0.05));
        assertThat(needs.of(SupplyItem.CELL_TRAYS)).isEqualTo(1);
    }

    @Test
    void every_cell_tray_of_the_table_is_known_and_holds_its_cells_times_their_volume() {
        int compared = 0;
        for (CSVRecord row : ReferenceTable.rows("containers.csv")) {
            if (row.get("kind").startsWith("cell insert")) {
                CellTray tray = CellTray.of(Integer.parseInt(row.get("cells")));
                double litres = Double.parseDouble(row.get("tray_media_litres"));
                assertThat(tray.cells() * tray.cellMl() / 1000)
                        .as(row.get("name"))
                        .isCloseTo(litres, within(0.06));
                compared++;
            }
        }
        assertThat(compared).isEqualTo(10);
    }

    @Test
    void peppers_are_covered_a_quarter_of_an_inch_over_the_cells_used() {
        // Common practice: a quarter of an inch. Half a tray of 20 by 10 inches is 100 square inches: 25 cubic inches,
        // each 16.387 ml (NIST Handbook 44).
        double covering = cells(Crops.PEPPER, 36, 72).supplies().of(SupplyItem.COVERING);

        assertThat(covering).isCloseTo(25 * 16.387, within(25.0));
    }

    @Test
    void seed_that_needs_light_gets_a_dusting_and_seed_of_unknown_depth_the_usual_cover() {
        Crop onTheSurface = Crops.of("petunia");
        assertThat(onTheSurface.light()).isEqualTo(SeedLight.NEEDED);

        assertThat(cells(onTheSurface, 36, 72).supplies().of(SupplyItem.COVERING))
                .isLessThan(cells(Crops.PEPPER, 36, 72).supplies().of(SupplyItem.COVERING) / 2);
    }

    @Test
    void deep_seed_is_covered_no_deeper_than_is_usual_because_it_lies_in_its_compost() {
        Crop deep = Crops.of("spinach");
        assertThat(deep.depthMm()).isGreaterThan(6);

        assertThat(cells(deep, 36, 72).supplies().of(SupplyItem.COVERING))
                .isEqualTo(cells(Crops.PEPPER, 36, 72).supplies().of(SupplyItem.COVERING));
    }

    /** A quarter up and down (containers.csv); a step of five quarts of 0.946353 litres (NIST Handbook 44, appendix C). */
    @Test
    void what_is_missing_is_told_as_a_range_and_looked_for_in_steps_of_the_readers_measure() {
        ShoppingList.Line line = new ShoppingList.Line(SupplyItem.SOWING_COMPOST, 41_300, 0, List.of());

        assertThat(line.atLeast()).isEqualTo(30_975);
        assertThat(line.atMost()).isEqualTo(51_625);
        assertThat(line.toLookFor(Units.METRIC)).isEqualTo(45_000);
        assertThat(line.toLookFor(Units.AMERICAN)).isCloseTo(45 * 946.353, within(1.0));
        assertThat(new ShoppingList.Line(SupplyItem.SOWING_COMPOST, 40_000, 0, List.of()).toLookFor(Units.METRIC))
                .isEqualTo(40_000);
        assertThat(new ShoppingList.Line(SupplyItem.LABELS, 12, 0, List.of()).atMost())
                .isEqualTo(12);
    }

    @Test
    void a_bag_needs_paper_now_and_cells_for_its_sprouts() {
        Supplies needs =
                new SowingNeeds(Crops.PEPPER, Method.BAG, 6, 12, null, false, true, true, true, true).supplies();

        assertThat(needs.of(SupplyItem.BAGS)).isEqualTo(1);
        assertThat(needs.of(SupplyItem.CELL_TRAYS))
                .as("half a tray, bought whole")
                .isEqualTo(1);
        assertThat(needs.of(SupplyItem.LABELS)).as("bag, cells, six pots").isEqualTo(8);
        assertThat(needs.of(SupplyItem.PEROXIDE)).isEqualTo(5);
    }

    @Test
    void what_is_sown_needs_no_seed_compost_and_what_is_potted_no_pots() {
        Supplies sown =
                new SowingNeeds(Crops.PEPPER, Method.CELLS, 6, 12, 72, false, false, false, false, true).supplies();
        Supplies potted =
                new SowingNeeds(Crops.PEPPER, Method.CELLS, 6, 12, 72, false, false, false, false, false).supplies();

        assertThat(sown.amounts()).containsOnlyKeys(SupplyItem.POTS, SupplyItem.POTTING_COMPOST, SupplyItem.LABELS);
        assertThat(sown.of(SupplyItem.POTTING_COMPOST)).isCloseTo(6 * 400 * TENTH_MORE, within(1e-6));
        assertThat(potted.amounts()).isEmpty();
    }

    // An outside check of the volume is missing: what a pot that rots holds is from memory.
    @Test
    void crops_that_bear_no_moving_take_pots_that_rot_instead_of_cell_trays() {
        Supplies squash = cells(Crops.of("winter-squash"), 12, 72).supplies();

        assertThat(squash.amounts())
                .containsOnlyKeys(SupplyItem.ROTTING_POTS, SupplyItem.SOWING_COMPOST, SupplyItem.LABELS);
        assertThat(squash.of(SupplyItem.ROTTING_POTS)).isEqualTo(12);
    }

    @Test
    void treated_seed_is_never_soaked() {
        Supplies treated =
                new SowingNeeds(Crops.PEPPER, Method.CELLS, 6, 12, 72, true, true, true, true, true).supplies();

        assertThat(treated.amounts()).doesNotContainKey(SupplyItem.PEROXIDE);
    }

    @Test
    void half_trays_of_several_sowings_are_bought_as_whole_ones_together() {
        Supplies both = Supplies.sum(List.of(
                cells(Crops.PEPPER, 36, 72).supplies(),
                cells(Crops.TOMATO, 30, 72).supplies()));

        assertThat(both.of(SupplyItem.CELL_TRAYS)).isEqualTo(1);
        assertThat(both.of(SupplyItem.LABELS)).isEqualTo(2);
    }

    @Test
    void a_tray_that_is_not_known_is_reckoned_as_the_next_finer_one() {
        assertThat(CellTray.of(60).cells()).isEqualTo(72);
        assertThat(CellTray.of(1000).cells()).isEqualTo(288);
    }

    @Test
    void volumes_are_read_in_litres_or_us_quarts() {
        Units american = Units.AMERICAN;
        // NIST Handbook 44, Appendix C: 1 liquid quart = 0.946 352 9 L, 1 fluid ounce = 29.573 53 mL.
        assertThat(american.volume(946.3529)).isEqualTo("1 quart");
        assertThat(american.volume(295.7353)).isEqualTo("10 fl oz");
        assertThat(american.millilitresOf(4)).isCloseTo(3785.4, within(0.1));
        assertThat(Units.METRIC.volume(3240)).isEqualTo("3.2 litres");
        assertThat(Units.METRIC.volume(250)).isEqualTo("250 ml");
        assertThat(Units.METRIC.millilitresOf(2.5)).isEqualTo(2500);
    }

    private static SowingNeeds cells(Crop crop, int cells, @Nullable Integer cellsInTray) {
        return new SowingNeeds(crop, Method.CELLS, 6, cells, cellsInTray, false, false, true, true, false);
    }

    private static CSVRecord row(String name) {
        return ReferenceTable.rows("containers.csv").stream()
                .filter(row -> row.get("name").equals(name))
                .findFirst()
                .orElseThrow();
    }
}
