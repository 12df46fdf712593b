package warmshelf.finding.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import warmshelf.crop.Method;
import warmshelf.finding.CountTrouble;
import warmshelf.sowing.Container;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStage;
import warmshelf.testing.Crops;
import warmshelf.timeline.SeasonPart;
import warmshelf.words.Units;

class CropCurvesTest {
    @Test
    void bags_and_cells_are_never_put_together() {
        CropCurves curves = CropCurves.of(
                List.of(sowing("Lantern Row", Method.BAG, 26, 5), sowing("Lantern Row", Method.CELLS, 26, 8)),
                CropCurves.By.LOT,
                Units.METRIC);

        assertThat(curves.groups())
                .extracting(CropCurves.Group::name)
                .containsExactly("Lantern Row 2026 of Tom (bags, roots)", "Lantern Row 2026 of Tom (cells, seedlings)");
    }

    @Test
    void warmth_is_told_in_the_readers_units() {
        List<SeasonSowing> sowings = List.of(
                sowing("a", Method.CELLS, 24, 8), sowing("b", Method.CELLS, 24, 9), sowing("c", Method.CELLS, 27, 7));

        assertThat(CropCurves.of(sowings, CropCurves.By.WARMTH, Units.AMERICAN).groups())
                .extracting(CropCurves.Group::name)
                .containsExactly("75 °F (cells, seedlings)", "80 °F (cells, seedlings)");
        assertThat(CropCurves.of(sowings, CropCurves.By.WARMTH, Units.METRIC).groups())
                .extracting(CropCurves.Group::sowings)
                .containsExactly(2, 1);
    }

    @Test
    void one_variety_under_two_names_is_pointed_out() {
        CropCurves curves = CropCurves.of(
                List.of(
                        sowing("Lantern Row", Method.CELLS, 26, 8),
                        sowing("Lanten Row", Method.CELLS, 26, 8),
                        sowing("Long Red", Method.CELLS, 26, 8)),
                CropCurves.By.METHOD,
                Units.METRIC);

        assertThat(curves.oneName()).containsExactly(new CropCurves.Pair("Lanten Row", "Lantern Row"));
    }

    @Test
    void counts_that_are_withheld_are_listed() {
        SeasonSowing uncounted = SeasonSowing.of(
                peppers("Lantern Row", Method.CELLS), List.of(entry(0, EntryStep.SOWN, null)), "lot", null, null, null);

        CropCurves curves = CropCurves.of(List.of(uncounted), CropCurves.By.METHOD, Units.METRIC);

        assertThat(curves.groups()).isEmpty();
        assertThat(curves.troubled())
                .singleElement()
                .satisfies(each -> assertThat(each.troubles()).containsExactly(CountTrouble.NOT_COUNTED));
    }

    private static SeasonSowing sowing(String variety, Method method, double celsius, int day) {
        List<Entry> entries = new ArrayList<>(List.of(
                entry(0, EntryStep.SOWN, null), entry(day - 1, EntryStep.LOOK, 0), entry(day, EntryStep.LOOK, 9)));
        return SeasonSowing.of(
                peppers(variety, method), entries, variety + " 2026 of Tom", new UUID(1, 1), celsius, null);
    }

    private static Entry entry(int day, EntryStep step, @Nullable Integer soFar) {
        LocalDate on = LocalDate.of(2027, 3, 1).plusDays(day);
        return new Entry(
                UUID.randomUUID(),
                new UUID(3, 3),
                step,
                on,
                on.atStartOfDay().atOffset(ZoneOffset.UTC),
                soFar,
                null,
                null,
                false,
                null,
                "",
                null,
                new UUID(4, 4),
                "Tom");
    }

    private static Sowing peppers(String variety, Method method) {
        return new Sowing(
                UUID.randomUUID(),
                new Sowing.Grower(new UUID(4, 4), "Tom", "US", "55804"),
                2027,
                SeasonPart.SPRING,
                Crops.of("pepper"),
                new UUID(5, 5),
                variety,
                false,
                8,
                method,
                true,
                Container.HALF_TRAY,
                12,
                1,
                12,
                0.1,
                null,
                SowingStage.SOWN,
                "",
                1,
                null);
    }
}
