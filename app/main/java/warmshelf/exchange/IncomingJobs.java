package warmshelf.exchange;

import static warmshelf.exchange.ExchangeSentences.SAY;

import java.io.IOException;
import java.nio.file.Files;
import java.time.Clock;
import java.time.Duration;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import warmshelf.BadInput;
import warmshelf.decision.Decision;

/**
 * Reads what people bring in the background, one file at a time. All of it is in memory and in a temporary folder: what a stop or a
 * kill interrupts was never taken in, because its transaction ends with it.
 */
final class IncomingJobs implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(IncomingJobs.class);
    static final Duration KEPT = Duration.ofHours(2);
    private static final int MOST_OF_ONE = 5;
    private static final int SECONDS_TO_STOP = 10;

    private final IncomingStore store;
    private final Clock clock;
    /** The newest first. */
    private final Deque<IncomingJob> jobs = new ConcurrentLinkedDeque<>();

    private final ExecutorService thread = Executors.newSingleThreadExecutor(job -> {
        Thread made = new Thread(job, "incoming-table");
        made.setDaemon(true);
        return made;
    });

    IncomingJobs(IncomingStore store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** Has a file looked at as soon as it is its turn, and waits a moment, because most are small. */
    IncomingJob start(IncomingOrder order, Duration patience) {
        forgetOld();
        makeRoom(order.by());
        IncomingJob job = new IncomingJob(order, clock.instant());
        jobs.addFirst(job);
        await(thread.submit(() -> run(job, () -> job.ready(store.check(order, job::at)))), patience);
        return job;
    }

    /** Has a file taken in; false when it does not wait for that. */
    boolean take(IncomingJob job, Duration patience) {
        if (!job.beginTaking()) {
            return false;
        }
        await(thread.submit(() -> run(job, () -> take(job))), patience);
        return true;
    }

    /** Gives a file up; false when it is over already. */
    boolean giveUp(IncomingJob job) {
        boolean given = job.giveUp();
        if (job.standing().state().isOver()) {
            delete(job);
        }
        return given;
    }

    Optional<IncomingJob> find(UUID id) {
        forgetOld();
        return jobs.stream().filter(job -> job.id().equals(id)).findFirst();
    }

    private void take(IncomingJob job) {
        Decision<IncomingFindings> decision = store.take(job.id(), job.order(), job::at);
        if (decision instanceof Decision.Done<IncomingFindings> done) {
            job.taken(done.value());
        } else {
            decision.refusal()
                    .ifPresent(reason -> job.end(
                            IncomingState.REFUSED, reason.words(job.order().units())));
        }
    }

    private void run(IncomingJob job, Runnable work) {
        try {
            work.run();
        } catch (IncomingCancelled wanted) {
            job.end(IncomingState.CANCELLED, "");
        } catch (BadInput refused) {
            job.end(IncomingState.REFUSED, String.valueOf(refused.getMessage()));
        } catch (RuntimeException broken) {
            String reference = UUID.randomUUID().toString().substring(0, 8);
            LOG.error("fault {} in incoming table {}", reference, job.id(), broken);
            job.end(IncomingState.FAILED, SAY.fault(reference));
        } finally {
            if (job.standing().state().isOver()) {
                delete(job);
            }
        }
    }

    private static void await(Future<?> work, Duration patience) {
        try {
            work.get(patience.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException goesOn) {
            return;
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException broken) {
            throw new IllegalStateException(broken);
        }
    }

    /** Drops all but what is being taken in at this moment, with its file. */
    void forgetAll() {
        jobs.removeIf(job -> {
            giveUp(job);
            return job.standing().state().isOver();
        });
    }

    private void forgetOld() {
        jobs.removeIf(job -> {
            boolean old = job.startedAt().plus(KEPT).isBefore(clock.instant())
                    && !job.standing().state().isBusy();
            if (old) {
                delete(job);
            }
            return old;
        });
    }

    /** Files take room while they wait, so a person's oldest gives way to a new one. */
    private void makeRoom(UUID member) {
        List<IncomingJob> gone = jobs.stream()
                .filter(job -> job.order().by().equals(member)
                        && job.standing().state().isUndecided())
                .skip(MOST_OF_ONE - 1)
                .toList();
        gone.forEach(this::giveUp);
        jobs.removeAll(gone);
    }

    private static void delete(IncomingJob job) {
        try {
            Files.deleteIfExists(job.order().file());
            Files.deleteIfExists(job.order().file().getParent());
        } catch (IOException left) {
            LOG.warn("the file {} could not be deleted", job.order().file(), left);
        }
    }

    /** Ends what is being read. */
    @Override
    public void close() {
        jobs.forEach(this::giveUp);
        thread.shutdown();
        try {
            if (!thread.awaitTermination(SECONDS_TO_STOP, TimeUnit.SECONDS)) {
                LOG.warn("the reading of a table did not stop in time");
            }
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }
}
