package warmshelf.plan.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.plan.engine.PlanChecker;
import warmshelf.plan.engine.PlanInstances;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.search.Planner.Manner;
import warmshelf.plan.engine.search.Planner.Progress;
import warmshelf.words.Units;

class PlannerTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void the_search_is_never_worse_than_either_plain_way_by_the_aims_in_their_order(long startingNumber) {
        PlanQuestion question = PlanInstances.crowded(40, 1.3, startingNumber);

        Score search = Scores.of(question, plan(question, Manner.SEARCH, 1));
        Score firstCome = Scores.of(question, plan(question, Manner.FIRST_COME, 1));
        Score greedy = Scores.of(question, plan(question, Manner.GREEDY, 1));

        assertThat(search).isGreaterThanOrEqualTo(firstCome).isGreaterThanOrEqualTo(greedy);
        assertThat(search.placed()).isGreaterThan(firstCome.placed());
    }

    @ParameterizedTest
    @ValueSource(strings = {"SEARCH", "FIRST_COME", "GREEDY"})
    void every_plan_keeps_every_rule_and_no_plan_exceeds_the_bound(Manner manner) {
        PlanQuestion question = PlanInstances.crowded(50, 1.3, 7);

        RatedPlan outcome = plan(question, manner, 1);

        assertThat(PlanChecker.problems(question, outcome.plan())).isEmpty();
        assertThat(outcome.placed())
                .isEqualTo(outcome.plan().placed().size())
                .isLessThanOrEqualTo(outcome.placedAtMost());
        assertThat(outcome.plan().refused()).allSatisfy(refused -> {
            assertThat(refused.reason().words(Units.METRIC)).endsWith(".");
            assertThat(refused.change().words(Units.METRIC)).endsWith(".");
        });
    }

    @Test
    void the_same_starting_number_gives_the_same_plan() {
        PlanQuestion question = PlanInstances.crowded(12, 1.3, 3);

        RatedPlan once = plan(question, Manner.SEARCH, 60);
        RatedPlan again = plan(question, Manner.SEARCH, 60);

        assertThat(once.cutShort()).isFalse();
        assertThat(again.plan()).isEqualTo(once.plan());
    }

    @Test
    void cancelling_at_once_still_gives_a_plan_that_keeps_every_rule() {
        PlanQuestion question = PlanInstances.crowded(60, 1.3, 3);

        RatedPlan outcome = Planner.plan(question, Manner.SEARCH, 600, 1, progress -> {}, () -> true);

        assertThat(PlanChecker.problems(question, outcome.plan())).isEmpty();
        assertThat(outcome.cutShort()).isTrue();
        assertThat(outcome.seconds()).isLessThan(60);
    }

    @Test
    void progress_never_goes_back() {
        List<Progress> heard = new ArrayList<>();

        Planner.plan(PlanInstances.crowded(20, 1.3, 3), Manner.SEARCH, 2, 1, heard::add, () -> false);

        assertThat(heard).hasSizeGreaterThan(3);
        AtomicInteger placed = new AtomicInteger();
        AtomicInteger bound = new AtomicInteger(Integer.MAX_VALUE);
        assertThat(heard).allSatisfy(progress -> {
            assertThat(progress.placed()).isGreaterThanOrEqualTo(placed.getAndSet(progress.placed()));
            assertThat(progress.placedAtMost()).isLessThanOrEqualTo(bound.getAndSet(progress.placedAtMost()));
        });
    }

    @Test
    void of_a_season_known_to_fit_nearly_all_is_placed() {
        PlanQuestion question = PlanInstances.planted(2, 56, 1);

        RatedPlan outcome = plan(question, Manner.SEARCH, 20);

        assertThat(outcome.placed()).isGreaterThanOrEqualTo((int)
                Math.ceil(0.97 * question.requests().size()));
        assertThat(outcome.placedAtMost()).isEqualTo(question.requests().size());
    }

    private static RatedPlan plan(PlanQuestion question, Manner manner, int seconds) {
        return Steadily.plan(question, manner, seconds);
    }
}
