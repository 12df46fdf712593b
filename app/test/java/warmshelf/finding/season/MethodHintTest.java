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
import warmshelf.finding.Doubt;
import warmshelf.sowing.Container;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.TrialPart;
import warmshelf.testing.Crops;
import warmshelf.timeline.SeasonPart;

class MethodHintTest {
    private static final LocalDate SOWN = LocalDate.of(2027, 3, 1);
    private static final int SEEDS = 12;
    private static final UUID TOM = new UUID(1, 1);

    @Test
    void one_lot_in_a_tray_and_in_a_bag_is_a_hint_that_nobody_planned() {
        List<MethodHint> hints = MethodHint.of(List.of(sowing(Method.CELLS, null), sowing(Method.BAG, null)));

        assertThat(hints).hasSize(1);
        assertThat(hints.get(0).compared().doubts()).contains(Doubt.NOT_PLANNED);
    }

    @Test
    void what_is_of_a_trial_was_planned_and_is_no_hint() {
        TrialPart trial = new TrialPart(new UUID(9, 9), 1, 1, "A", false, SOWN);

        assertThat(MethodHint.of(List.of(sowing(Method.CELLS, trial), sowing(Method.BAG, trial))))
                .isEmpty();
        assertThat(MethodHint.of(List.of(sowing(Method.CELLS, null), sowing(Method.BAG, trial))))
                .isEmpty();
    }

    private static SeasonSowing sowing(Method method, @Nullable TrialPart trial) {
        UUID id = UUID.randomUUID();
        List<Entry> entries = new ArrayList<>();
        entries.add(entry(id, 0, EntryStep.SOWN, null, null));
        if (method == Method.BAG) {
            entries.add(entry(id, 6, EntryStep.MOVED_TO_CELLS, null, SEEDS));
        }
        entries.add(entry(id, 9, EntryStep.LOOK, 8, null));
        entries.add(entry(id, 12, EntryStep.UNDER_LIGHT, 10, null));
        Sowing sowing = new Sowing(
                id,
                new Sowing.Grower(TOM, "Tom", "US", "55804"),
                2027,
                SeasonPart.SPRING,
                Crops.PEPPER,
                new UUID(2, 2),
                "Lantern Row",
                false,
                8,
                method,
                true,
                Container.HALF_TRAY,
                SEEDS,
                1,
                SEEDS,
                0.1,
                null,
                Progress.of(method, SEEDS, entries).stage(),
                "",
                1,
                trial);
        return SeasonSowing.of(sowing, entries, "Lantern Row 2026 of Tom", null, null, null);
    }

    private static Entry entry(UUID sowing, int day, EntryStep step, @Nullable Integer soFar, @Nullable Integer moved) {
        LocalDate on = SOWN.plusDays(day);
        return new Entry(
                UUID.randomUUID(),
                sowing,
                step,
                on,
                on.atTime(18, 0).atOffset(ZoneOffset.UTC),
                soFar,
                moved,
                null,
                moved != null,
                null,
                "",
                null,
                TOM,
                "Tom");
    }
}
