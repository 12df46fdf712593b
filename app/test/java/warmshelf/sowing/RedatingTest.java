package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Method;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.testing.Crops;
import warmshelf.timeline.SeasonPart;
import warmshelf.timeline.Seen;
import warmshelf.timeline.Step;
import warmshelf.timeline.Timeline;

class RedatingTest {
    private static final LocalDate ASKED = LocalDate.of(2027, 2, 1);
    private static final UUID TOM = new UUID(4, 4);

    private final SowingPlanner planner =
            new SowingPlanner(CropCatalogue.bundled(), new GrowerFrost(FrostSource.bundledOnly()));
    private final Sowing sowing = new Sowing(
            new UUID(3, 3),
            new Sowing.Grower(TOM, "Tom", "US", "55804"),
            2027,
            SeasonPart.SPRING,
            Crops.PEPPER,
            new UUID(5, 5),
            "Lantern Row",
            false,
            6,
            Method.CELLS,
            true,
            Container.HALF_TRAY,
            12,
            1,
            12,
            0.1,
            null,
            SowingStage.PLANNED,
            "",
            1,
            null);
    private final List<Entry> entries = new ArrayList<>();
    private final LocalDate ideal =
            on(ASKED, Seen.nothing()).step(Step.SOW).orElseThrow().ideal();

    @Test
    void what_happens_as_planned_moves_nothing() {
        enter(EntryStep.SOWN, ideal, null);

        assertThat(moves(ideal)).isEmpty();
    }

    @Test
    void a_late_sowing_moves_what_follows_and_says_by_how_much() {
        LocalDate late = ideal.plusDays(5);
        enter(EntryStep.SOWN, late, null);

        List<Redating.Move> moves = moves(late);

        assertThat(moves).hasSize(1);
        assertThat(moves.get(0).because()).startsWith("Sown on ").endsWith(", 5 days later than expected");
        assertThat(shift(moves.get(0), Step.LIGHT))
                .isEqualTo(new Redating.Shift(Step.LIGHT, lightWhenSownOn(ideal), lightWhenSownOn(late)));
        assertThat(shift(moves.get(0), Step.LIGHT).words())
                .startsWith("Under the light: ")
                .endsWith(", 5 days later");
    }

    @Test
    void seed_that_keeps_waiting_moves_its_dates_without_an_entry() {
        enter(EntryStep.SOWN, ideal, null);
        LocalDate expected = lightWhenSownOn(ideal);

        List<Redating.Move> moves = moves(expected.plusDays(4));

        assertThat(moves).hasSize(1);
        assertThat(moves.get(0).because()).startsWith("Nothing more was seen by ");
        assertThat(shift(moves.get(0), Step.LIGHT).to()).isEqualTo(expected.plusDays(4));
    }

    @Test
    void seedlings_that_come_early_move_light_and_feed_but_not_planting_out() {
        enter(EntryStep.SOWN, ideal, null);
        LocalDate early = lightWhenSownOn(ideal).minusDays(3);
        enter(EntryStep.LOOK, early, 4);

        List<Redating.Move> moves = moves(early);

        assertThat(moves).hasSize(1);
        assertThat(moves.get(0).because()).startsWith("First sprouts seen on ").endsWith("3 days sooner than expected");
        assertThat(moves.get(0).shifts())
                .extracting(Redating.Shift::step)
                .contains(Step.FIRST_FEED)
                .doesNotContain(Step.PLANT_OUT);
        assertThat(shift(moves.get(0), Step.FIRST_FEED).words()).endsWith(", 3 days sooner");
    }

    @Test
    void an_entry_that_was_corrected_moves_nothing() {
        enter(EntryStep.SOWN, ideal.plusDays(9), null);
        Entry wrong = entries.get(0);
        entries.add(entry(EntryStep.SOWN, ideal, null, wrong.id()));

        assertThat(moves(ideal)).isEmpty();
    }

    private Timeline on(LocalDate day, Seen seen) {
        return planner.timeline(Asking.of(sowing), 26, day, seen).orElseThrow();
    }

    private LocalDate lightWhenSownOn(LocalDate day) {
        return on(day, Seen.sownOn(day)).step(Step.LIGHT).orElseThrow().ideal();
    }

    private List<Redating.Move> moves(LocalDate today) {
        return new Redating(sowing, (day, seen) -> planner.timeline(Asking.of(sowing), 26, day, seen))
                .moves(entries, ASKED, today);
    }

    private static Redating.Shift shift(Redating.Move move, Step step) {
        return move.shifts().stream()
                .filter(shift -> shift.step() == step)
                .findFirst()
                .orElseThrow();
    }

    private void enter(EntryStep step, LocalDate on, @Nullable Integer sprouted) {
        entries.add(entry(step, on, sprouted, null));
    }

    private static Entry entry(EntryStep step, LocalDate on, @Nullable Integer sprouted, @Nullable UUID supersedes) {
        return new Entry(
                UUID.randomUUID(),
                new UUID(3, 3),
                step,
                on,
                on.atTime(9, 0).atOffset(ZoneOffset.UTC),
                sprouted,
                null,
                null,
                false,
                null,
                "",
                supersedes,
                TOM,
                "Tom");
    }
}
