package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.testing.Decided.done;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Slot;
import warmshelf.decision.Decision;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.NoPlaceReason;
import warmshelf.plan.engine.PlaceChange;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.Refused;
import warmshelf.plan.engine.SeasonPlan;
import warmshelf.plan.engine.SetPointSpan;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

abstract class PlanStoreContract extends StoreContract {
    private static final DayRange DAYS = new DayRange(LocalDate.of(2027, 3, 1), LocalDate.of(2027, 6, 1));
    private static final SeasonPlan BEST = new SeasonPlan(
            List.of(new PlacedStay("one", "M1", 2, new Slot(3, 2), DAYS, null)),
            List.of(new SetPointSpan("M1", DAYS, 26)),
            List.of(new Refused(
                    "two",
                    new NoPlaceReason.MatsTaken(DAYS.from(), DAYS.to()),
                    new PlaceChange.StartLater(DAYS.from().plusDays(4), 4))));

    private PlanStore plans;
    private GrowRoom room;
    private SeasonQuestion question;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        plans = new PlanStore(database(), audit());
        question = new SeasonQuestion(
                new PlanQuestion(DAYS, List.of(), List.of(), List.of(), List.of(), List.of()),
                Map.of(),
                Map.of(),
                Map.of(),
                List.of(),
                Map.of(),
                Map.of());
    }

    @Test
    void a_finished_run_is_proposed_as_it_was_found() {
        UUID id = done(begin());

        plans.finish(id, new SeasonPlanner.Found(BEST, 2, false), 7);

        KeptPlan kept = plans.find(id).orElseThrow();
        assertThat(kept.state()).isEqualTo(KeptPlan.State.PROPOSED);
        assertThat(kept.plan()).isEqualTo(BEST);
        assertThat(kept.spentSeconds()).isEqualTo(7);
        assertThat(kept.startingNumber()).isEqualTo(5);
        assertThat(kept.questionHash()).isEqualTo(question.hash()).hasSize(64);
    }

    @Test
    void of_many_who_ask_at_once_one_gets_the_run() throws Exception {
        int askers = 6;
        CyclicBarrier together = new CyclicBarrier(askers);
        ExecutorService all = Executors.newFixedThreadPool(askers);
        try {
            List<Callable<Decision<UUID>>> asks = new ArrayList<>();
            for (int i = 0; i < askers; i++) {
                asks.add(() -> {
                    together.await(20, TimeUnit.SECONDS);
                    return begin();
                });
            }
            int begun = 0;
            for (Future<Decision<UUID>> answer : all.invokeAll(asks)) {
                begun += answer.get() instanceof Decision.Done ? 1 : 0;
            }
            assertThat(begun).isEqualTo(1);
        } finally {
            all.shutdownNow();
        }
    }

    @Test
    void a_silent_run_is_lost_with_its_best_plan_and_its_turn_goes_to_the_next() {
        UUID silent = done(begin());
        plans.keepBest(silent, new SeasonPlanner.Progress(BEST, 2, 1));
        clock.advance(Duration.ofSeconds(59));
        assertThat(begin().refusal()).contains(new PlanRefusal.AnotherRuns());

        clock.advance(Duration.ofSeconds(2));

        assertThat(plans.find(silent).orElseThrow().state()).isEqualTo(KeptPlan.State.LOST);
        UUID next = done(begin());
        assertThat(plans.beat(silent, 62)).isFalse();
        plans.finish(silent, new SeasonPlanner.Found(PlanJson.NOTHING, 0, false), 62);
        assertThat(plans.find(silent).orElseThrow().plan()).isEqualTo(BEST);
        assertThat(plans.find(next).orElseThrow().isRunning()).isTrue();
    }

    @Test
    void a_beating_run_keeps_its_turn_until_it_is_asked_to_stop() {
        UUID id = done(begin());
        clock.advance(Duration.ofSeconds(50));
        assertThat(plans.beat(id, 50)).isTrue();
        clock.advance(Duration.ofSeconds(50));

        assertThat(plans.find(id).orElseThrow().isRunning()).isTrue();
        done(plans.askToStop(id, room.tom()));
        assertThat(plans.beat(id, 100)).isFalse();
    }

    @Test
    void a_plan_that_is_not_worked_on_cannot_be_stopped() {
        UUID id = done(begin());
        plans.finish(id, new SeasonPlanner.Found(BEST, 2, false), 7);

        assertThat(plans.askToStop(id, room.tom()).refusal())
                .contains(new PlanRefusal.DoesNotRun(KeptPlan.State.PROPOSED));
        assertThat(plans.askToStop(UUID.randomUUID(), room.tom())).isInstanceOf(Decision.Missing.class);
    }

    @Test
    void of_two_changes_to_one_version_the_first_counts() {
        UUID id = done(begin());
        plans.finish(id, new SeasonPlanner.Found(BEST, 2, false), 7);

        assertThat(done(plans.change(id, 1, PlanJson.NOTHING, "all taken out", room.tom())))
                .isEqualTo(2);
        assertThat(plans.change(id, 1, BEST, "put back", room.priya()).refusal())
                .contains(new PlanRefusal.EditNotKept("put back"));

        assertThat(plans.find(id).orElseThrow().plan()).isEqualTo(PlanJson.NOTHING);
        assertThat(plans.editsSince(id, 1)).containsExactly(new PlanStore.Edit(2, "all taken out", "Tom"));
        assertThat(plans.editsSince(id, 2)).isEmpty();
    }

    @Test
    void a_cancelled_job_keeps_the_best_it_had() throws Exception {
        UUID id = done(begin());
        CountDownLatch improved = new CountDownLatch(1);
        SeasonPlanner patient = (asked, startingNumber, seconds, listener, cancelled) -> {
            listener.accept(new SeasonPlanner.Progress(BEST, 2, 0));
            improved.countDown();
            while (!cancelled.getAsBoolean()) {
                Thread.onSpinWait();
            }
            return new SeasonPlanner.Found(BEST, 2, false);
        };
        Thread run = new PlanJob(plans, patient, Duration.ofMillis(50)).start(id, question.question(), 5, 300);
        assertThat(improved.await(20, TimeUnit.SECONDS)).isTrue();

        plans.askToStop(id, room.tom());
        run.join(20_000);

        KeptPlan kept = plans.find(id).orElseThrow();
        assertThat(kept.state()).isEqualTo(KeptPlan.State.PROPOSED);
        assertThat(kept.plan()).isEqualTo(BEST);
        assertThat(kept.placedAtMost()).isEqualTo(2);
    }

    @Test
    void a_planner_that_breaks_leaves_a_failed_plan_and_a_free_turn() throws Exception {
        UUID id = done(begin());
        SeasonPlanner broken = (asked, startingNumber, seconds, listener, cancelled) -> {
            throw new IllegalStateException("for a test");
        };

        new PlanJob(plans, broken, Duration.ofSeconds(5))
                .start(id, question.question(), 5, 300)
                .join(20_000);

        assertThat(plans.find(id).orElseThrow().state()).isEqualTo(KeptPlan.State.FAILED);
        assertThat(plans.find(done(begin()))).isPresent();
    }

    private Decision<UUID> begin() {
        return plans.begin(question, List.of(), new PlanStore.Manner(5, 30, false), room.tom());
    }
}
