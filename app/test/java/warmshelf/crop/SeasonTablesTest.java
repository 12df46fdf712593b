package warmshelf.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.ReferenceTable;
import warmshelf.crop.Crop.DaysToMaturity;

/**
 * The tables of a season's ends. The first list of hardiness is Purdue HO-203 (after University of Illinois VC 14), the second
 * University of Minnesota Extension M1227 for vegetables and University of Illinois or Minnesota Extension for flowers; both
 * were read on the pages that the rows name.
 */
class SeasonTablesTest {
    /** Where the class of a crop is not that of the first list: Illinois counts it with the hardy, Purdue with the tender. */
    private static final Set<String> OTHERWISE = Set.of("sweet-alyssum");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "cold-limits.csv",
                "quick-kinds.csv",
                "autumn-crops.csv",
                "overwintering.csv",
                "sow-again.csv",
                "life-cycles.csv",
                "bolting.csv"
            })
    void each_row_is_of_a_crop_of_ours_once_and_says_where_it_comes_from(String file) {
        List<String> ids = new ArrayList<>();
        for (CSVRecord row : ReferenceTable.rows(file)) {
            String id = row.get("crop_id");
            if (!id.isEmpty()) {
                assertThat(CropCatalogue.bundled().find(id)).as(id).isPresent();
                ids.add(id);
            }
            Standing standing = Standing.named(row.get("standing"));
            assertThat(row.get("source_title")).as(id).isNotBlank();
            if (standing == Standing.PUBLISHED || standing == Standing.LOW_AUTHORITY) {
                assertThat(row.get("source_url")).as(id).startsWith("http");
            }
        }

        assertThat(ids).isNotEmpty().doesNotHaveDuplicates();
    }

    @Test
    void the_class_of_a_crop_is_that_of_the_first_list_where_it_names_it() {
        int compared = 0;
        for (CSVRecord row : ReferenceTable.rows("cold-limits.csv")) {
            String listed = row.get("purdue_list");
            String id = row.get("crop_id");
            if (!listed.isEmpty() && !OTHERWISE.contains(id)) {
                compared++;
                assertThat(CropCatalogue.bundled().get(id).hardiness().words())
                        .as(id)
                        .isEqualTo(listed);
            }
        }

        assertThat(compared).isGreaterThan(45);
    }

    // University of Minnesota Extension M1227: 'killed by frost' at 30 to 32 °F, 'survives light frost', 'survives high
    // 20s', 'down to 20'; University of Illinois Extension: hardy annuals bear light frosts, the others are damaged by
    // frost.
    @Test
    void no_crop_is_said_to_bear_less_than_the_second_list_vouches_for() {
        Map<String, Double> borne = Map.of(
                "killed-by-frost", 0.0,
                "light-frost", -2.2,
                "high-20s", -2.2,
                "20-f", -6.7,
                "hardy-annual", -2.2);
        int compared = 0;
        for (CSVRecord row : ReferenceTable.rows("cold-limits.csv")) {
            Double vouched = borne.get(row.get("second_list"));
            if (vouched != null) {
                compared++;
                Crop crop = CropCatalogue.bundled().get(row.get("crop_id"));
                assertThat(ColdLimit.of(crop).bearsC()).as(crop.id()).isLessThanOrEqualTo(vouched);
            }
        }

        assertThat(compared).isGreaterThan(15);
    }

    @Test
    void degrees_celsius_are_those_of_degrees_fahrenheit() {
        for (String file : List.of("cold-limits.csv", "bolting.csv")) {
            String column = file.startsWith("cold") ? "bears_" : "below_";
            for (CSVRecord row : ReferenceTable.rows(file)) {
                double fahrenheit = Double.parseDouble(row.get(column + "f"));
                assertThat(Double.parseDouble(row.get(column + "c")))
                        .as(row.get("crop_id"))
                        .isCloseTo((fahrenheit - 32) / 1.8, within(0.051));
            }
        }
    }

    // Half-hardy by the lists of spring planting, and yet 28 °F (-2.2 °C) kills none of them: Minnesota has cabbage and
    // Brussels sprouts stand to 20 °F, Iowa's Reiman Gardens broccoli to 25 °F, W. Reeves (Georgia) chard and onions to
    // 26 °F.
    @ParameterizedTest
    @CsvSource({"cabbage, -6.7", "brussels-sprouts, -6.7", "broccoli, -3.9", "chard, -3.3", "onion, -3.3", "leek, -6.7"
    })
    void what_is_called_half_hardy_may_bear_far_more_than_a_light_frost(String id, double celsius) {
        Crop crop = CropCatalogue.bundled().get(id);

        assertThat(crop.hardiness()).isEqualTo(Hardiness.HALF_HARDY);
        assertThat(ColdLimit.of(crop).bearsC()).isEqualTo(celsius);
    }

    @Test
    void a_crop_that_no_table_names_bears_what_its_class_does() {
        assertThat(ColdLimit.of(Crop.unlisted("a crop of our own")).frostKills())
                .isTrue();
        for (Hardiness hardiness : Hardiness.values()) {
            assertThat(ColdLimit.of(hardiness).frostKills()).isEqualTo(hardiness.frostKills());
        }
    }

    @Test
    void quick_kinds_are_quicker_than_the_crops_own_days() {
        int compared = 0;
        for (CSVRecord row : ReferenceTable.rows("quick-kinds.csv")) {
            DaysToMaturity quick = QuickKinds.of(row.get("crop_id")).orElseThrow();
            DaysToMaturity usual =
                    CropCatalogue.bundled().get(row.get("crop_id")).maturity().orElseThrow();
            assertThat(quick.min()).as(row.get("crop_id")).isLessThanOrEqualTo(quick.max());
            if (quick.basis() == usual.basis()) {
                compared++;
                assertThat(quick.min()).as(row.get("crop_id")).isLessThan(usual.min());
            }
        }

        assertThat(compared).isGreaterThan(20);
    }

    // Iowa State University Extension 1993, The biggest and the earliest vegetable varieties.
    @ParameterizedTest
    @CsvSource({"pepper, 58", "pepper-very-hot, 85", "sweet-corn, 53"})
    void the_quickest_kinds_are_those_of_the_published_list(String id, int days) {
        assertThat(QuickKinds.of(id).orElseThrow().min()).isEqualTo(days);
    }

    @Test
    void cold_that_makes_a_crop_flower_is_not_the_cold_that_it_bears() {
        for (CSVRecord row : ReferenceTable.rows("bolting.csv")) {
            Crop crop = CropCatalogue.bundled().get(row.get("crop_id"));
            assertThat(BoltingLimit.of(crop).orElseThrow().belowC())
                    .as(crop.id())
                    .isGreaterThan(ColdLimit.of(crop).bearsC() + 5);
        }
        assertThat(CropCatalogue.bundled().get("celery").nightMinimumC())
                .as("its 55 °F are against bolting")
                .isNull();
    }

    // eXtension 2007 lists them: beets, Brussels sprouts, cabbage, cauliflower, celery, chard, collard, endive, kale,
    // kohlrabi,
    // leek, onion, parsley.
    @ParameterizedTest
    @ValueSource(
            strings = {
                "beet",
                "brussels-sprouts",
                "cabbage",
                "cauliflower",
                "celery",
                "chard",
                "collards",
                "endive",
                "kale",
                "kohlrabi",
                "leek",
                "onion",
                "parsley"
            })
    void biennial_vegetables_are_gathered_in_their_first_year(String id) {
        LifeCycle cycle = LifeCycle.of(CropCatalogue.bundled().get(id)).orElseThrow();

        assertThat(cycle.life()).isEqualTo(LifeCycle.Life.BIENNIAL);
        assertThat(cycle.cropInYear()).isEqualTo(1);
        assertThat(cycle.flowersInYear()).isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource({"foxglove, 2, 2", "hollyhock, 2, 2", "asparagus, 3, "})
    void what_gives_nothing_in_its_first_year_says_when(String id, int crop, Integer flowers) {
        LifeCycle cycle = LifeCycle.of(CropCatalogue.bundled().get(id)).orElseThrow();

        assertThat(cycle.cropInYear()).isEqualTo(crop);
        assertThat(cycle.flowersInYear()).isEqualTo(flowers);
    }
}
