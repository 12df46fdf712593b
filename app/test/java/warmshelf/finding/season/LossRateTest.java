package warmshelf.finding.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import warmshelf.crop.Method;
import warmshelf.finding.statistics.ObservedShare;
import warmshelf.sowing.Container;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.Problem;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStage;
import warmshelf.testing.Crops;
import warmshelf.timeline.SeasonPart;

class LossRateTest {
    private static final UUID WET = new UUID(1, 1);
    private static final UUID DRY = new UUID(2, 2);

    @Test
    void a_shelf_where_most_trays_damped_off_stands_out() {
        List<LossRate> rates = rates(sowings(WET, 8, 7), sowings(DRY, 12, 1));

        assertThat(rates.get(0).noted()).isEqualTo(new ObservedShare(7, 8));
        assertThat(rates.get(0).more())
                .get()
                .satisfies(more -> assertThat(more.low()).isGreaterThan(0.3));
        assertThat(rates.get(1).more()).isEmpty();
    }

    @Test
    void one_tray_more_is_chance() {
        assertThat(rates(sowings(WET, 8, 2), sowings(DRY, 12, 2)))
                .allSatisfy(rate -> assertThat(rate.more()).isEmpty());
    }

    @Test
    void of_four_trays_nothing_is_said() {
        assertThat(rates(sowings(WET, 4, 4), sowings(DRY, 12, 0)).get(0).more()).isEmpty();
    }

    @Test
    void a_quarter_of_the_seedlings_is_many_and_so_is_a_tray_given_up() {
        assertThat(with(8, 1).lostMany()).isFalse();
        assertThat(with(8, 2).lostMany()).isTrue();
        assertThat(with(0, 0).lostMany()).isFalse();
        assertThat(SeasonSowing.of(
                                peppers(),
                                List.of(entry(EntryStep.SOWN, null), entry(EntryStep.GAVE_UP, null)),
                                "",
                                WET,
                                null,
                                null)
                        .lostMany())
                .isTrue();
    }

    private static SeasonSowing with(int up, int lost) {
        Entry look = new Entry(
                UUID.randomUUID(),
                new UUID(3, 3),
                EntryStep.LOOK,
                LocalDate.of(2027, 3, 9),
                LocalDate.of(2027, 3, 9).atStartOfDay().atOffset(ZoneOffset.UTC),
                up,
                null,
                lost,
                false,
                null,
                "",
                null,
                new UUID(4, 4),
                "Tom");
        return SeasonSowing.of(peppers(), List.of(entry(EntryStep.SOWN, null), look), "", WET, null, null);
    }

    private static List<LossRate> rates(List<SeasonSowing> some, List<SeasonSowing> others) {
        List<SeasonSowing> all = new ArrayList<>(some);
        all.addAll(others);
        return LossRate.by(
                all,
                sowing -> Optional.of(WET.equals(sowing.placeId()) ? "a wet shelf" : "dry shelf"),
                sowing -> sowing.had(Problem.DAMPING_OFF));
    }

    private static List<SeasonSowing> sowings(UUID place, int count, int damped) {
        List<SeasonSowing> sowings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            List<Entry> entries = new ArrayList<>(List.of(entry(EntryStep.SOWN, null)));
            if (i < damped) {
                entries.add(entry(EntryStep.LOOK, Problem.DAMPING_OFF));
            }
            sowings.add(SeasonSowing.of(peppers(), entries, "Lantern Row 2026 of Tom", place, null, null));
        }
        return sowings;
    }

    private static Entry entry(EntryStep step, @Nullable Problem problem) {
        LocalDate day = LocalDate.of(2027, 3, 1);
        return new Entry(
                UUID.randomUUID(),
                new UUID(3, 3),
                step,
                day,
                day.atStartOfDay().atOffset(ZoneOffset.UTC),
                null,
                null,
                null,
                false,
                problem,
                "",
                null,
                new UUID(4, 4),
                "Tom");
    }

    private static Sowing peppers() {
        return new Sowing(
                UUID.randomUUID(),
                new Sowing.Grower(new UUID(4, 4), "Tom", "US", "55804"),
                2027,
                SeasonPart.SPRING,
                Crops.of("pepper"),
                new UUID(5, 5),
                "",
                false,
                8,
                Method.CELLS,
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
