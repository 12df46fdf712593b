package warmshelf.plan;

import java.time.Duration;
import java.util.UUID;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import warmshelf.plan.engine.PlanQuestion;

/**
 * Runs the planner in the background. Every few seconds the run says that it is alive, keeps its best plan and looks whether it
 * is asked to stop; a run that has lost its turn stops by itself.
 */
final class PlanJob {
    private static final Logger LOG = LoggerFactory.getLogger(PlanJob.class);

    private final PlanStore plans;
    private final SeasonPlanner planner;
    private final Duration every;
    private final ScheduledExecutorService beats = Executors.newSingleThreadScheduledExecutor(PlanJob::thread);

    /** Beats each {@code every}. */
    PlanJob(PlanStore plans, SeasonPlanner planner, Duration every) {
        this.plans = plans;
        this.planner = planner;
        this.every = every;
    }

    /** Starts a run that has taken its turn. The thread ends with the program: such a run counts as lost. */
    Thread start(UUID plan, PlanQuestion question, long startingNumber, int seconds) {
        Thread thread = thread(() -> new Run(plan).work(question, startingNumber, seconds));
        thread.start();
        return thread;
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "season plan");
        thread.setDaemon(true);
        return thread;
    }

    private final class Run {
        private final UUID plan;
        private final long started = System.nanoTime();
        private final AtomicBoolean stopped = new AtomicBoolean();
        private final AtomicReference<SeasonPlanner.@Nullable Progress> unsaved = new AtomicReference<>();

        Run(UUID plan) {
            this.plan = plan;
        }

        void work(PlanQuestion question, long startingNumber, int seconds) {
            ScheduledFuture<?> beating =
                    beats.scheduleWithFixedDelay(this::beat, every.toMillis(), every.toMillis(), TimeUnit.MILLISECONDS);
            try {
                SeasonPlanner.Found found = planner.plan(question, startingNumber, seconds, unsaved::set, stopped::get);
                beating.cancel(false);
                plans.finish(plan, found, spentSeconds());
            } catch (RuntimeException fault) {
                beating.cancel(false);
                LOG.error("the season plan {} broke off", plan, fault);
                fail();
            }
        }

        private void fail() {
            try {
                plans.fail(plan);
            } catch (RuntimeException alsoNotKept) {
                LOG.error(
                        "that the season plan {} broke off could not be kept; it counts as lost soon",
                        plan,
                        alsoNotKept);
            }
        }

        private void beat() {
            try {
                if (!plans.beat(plan, spentSeconds())) {
                    stopped.set(true);
                }
                SeasonPlanner.Progress better = unsaved.getAndSet(null);
                if (better != null) {
                    plans.keepBest(plan, better);
                }
            } catch (RuntimeException notKept) {
                LOG.warn("the season plan {} could not be kept just now; it is tried again", plan, notKept);
            }
        }

        private int spentSeconds() {
            return (int) TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - started);
        }
    }
}
