package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.check.Cases.SOWN;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import warmshelf.crop.Method;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.SowingStage;
import warmshelf.words.Units;

class TickRulesTest {
    private static final String GROWING =
            "look taken-home first-feed potted-on trimmed hardening-off planted-out gave-up";

    @ParameterizedTest
    @CsvSource({
        "PLANNED, CELLS, look chilled soaked sown",
        "PLANNED, BAG, look chilled soaked sown",
        "CHILLED, CELLS, look soaked sown",
        "SOAKED, CELLS, look sown",
        "SOWN, CELLS, look off-heat under-light taken-home gave-up",
        "SOWN, BAG, look moved-to-cells gave-up",
        "SPROUTING, BAG, look moved-to-cells gave-up",
        "IN_CELLS, BAG, look off-heat under-light taken-home gave-up",
        "EMERGED, CELLS, look off-heat under-light taken-home gave-up",
        "UNDER_LIGHT, CELLS, " + GROWING,
        "FED, CELLS, look taken-home potted-on trimmed hardening-off planted-out gave-up",
        "POTTED_ON, CELLS, look taken-home trimmed hardening-off planted-out gave-up",
        "HARDENING_OFF, CELLS, look planted-out gave-up",
        "PLANTED_OUT, CELLS, ''",
        "GIVEN_UP, BAG, ''",
        "WITHDRAWN, CELLS, ''"
    })
    void each_stage_takes_just_these_steps(SowingStage stage, Method method, String steps) {
        Set<String> wanted = new TreeSet<>(Arrays.asList(steps.split(" ")));
        wanted.remove("");

        assertThat(TickRules.open(method, stage).stream().map(EntryStep::word).collect(Collectors.toSet()))
                .isEqualTo(wanted);
    }

    @ParameterizedTest
    @EnumSource(SowingStage.class)
    void a_thermometer_is_never_read_at_a_sowing(SowingStage stage) {
        for (Method method : Method.values()) {
            assertThat(TickRules.open(method, stage)).doesNotContain(EntryStep.READING);
        }
    }

    @Test
    void a_step_that_cannot_follow_is_refused_with_both_words() {
        assertThat(refusal(Cases.cells().sown(), tick(EntryStep.PLANTED_OUT, null, null)))
                .contains("Pepper, sweet and mild hot · Lantern Row is sown; 'planted out' cannot follow that.");
    }

    @ParameterizedTest
    @CsvSource({"4,false", "5,true", "12,true", "0,false"})
    void counts_of_roots_are_so_far(int sprouted, boolean taken) {
        Cases bag = Cases.bag().sown().looked(SOWN.plusDays(7), 5);

        assertThat(refusal(bag, tick(EntryStep.LOOK, sprouted, null)).isEmpty()).isEqualTo(taken);
    }

    @Test
    void after_the_bag_the_count_of_seedlings_begins_at_nothing() {
        Cases bag = Cases.bag()
                .sown()
                .looked(SOWN.plusDays(7), 9)
                .entered(SOWN.plusDays(8), EntryStep.MOVED_TO_CELLS, null, 9, true);

        assertThat(refusal(bag, tick(EntryStep.LOOK, 2, null))).isEmpty();
        bag.looked(SOWN.plusDays(10), 4);
        assertThat(refusal(bag, tick(EntryStep.LOOK, 3, null))).isPresent();
    }

    @Test
    void no_more_can_have_moved_than_have_sprouted() {
        Cases bag = Cases.bag().sown().looked(SOWN.plusDays(7), 5);

        assertThat(refusal(bag, tick(EntryStep.MOVED_TO_CELLS, null, 6)))
                .contains("Moved so far was 6, but only 5 have sprouted.");
        assertThat(refusal(bag, tick(EntryStep.MOVED_TO_CELLS, 6, 6))).isEmpty();
    }

    @Test
    void what_has_moved_does_not_move_back() {
        Cases bag = Cases.bag()
                .sown()
                .looked(SOWN.plusDays(7), 5)
                .entered(SOWN.plusDays(7), EntryStep.MOVED_TO_CELLS, null, 4, false);

        assertThat(refusal(bag, tick(EntryStep.MOVED_TO_CELLS, null, 3)))
                .contains("Moved so far was 3, but 4 had been moved before; counts are 'so far'.");
    }

    private static Optional<String> refusal(Cases cases, Tick tick) {
        return TickRules.refusal(cases.sowing(), cases.history().progress(), tick)
                .map(reason -> reason.words(Units.METRIC));
    }

    private static Tick tick(EntryStep step, @Nullable Integer sprouted, @Nullable Integer moved) {
        return new Tick(
                new UUID(8, 8), step, LocalDate.of(2027, 3, 20), sprouted, moved, null, false, null, "", null, null);
    }
}
