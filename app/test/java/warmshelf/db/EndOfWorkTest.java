package warmshelf.db;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class EndOfWorkTest {
    @Test
    void what_is_at_work_is_done_to_its_end_and_nothing_is_begun_after_it() throws InterruptedException {
        ScheduledExecutorService work = Executors.newSingleThreadScheduledExecutor();
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        AtomicInteger rounds = new AtomicInteger();
        AtomicInteger interrupted = new AtomicInteger();
        var unused = work.scheduleWithFixedDelay(
                () -> {
                    begun.countDown();
                    try {
                        goOn.await();
                    } catch (InterruptedException closedTheFile) {
                        interrupted.incrementAndGet();
                    }
                    rounds.incrementAndGet();
                },
                0,
                1,
                TimeUnit.MILLISECONDS);
        begun.await();
        Thread stop = new Thread(() -> EndOfWork.await(work));
        stop.start();
        while (!work.isShutdown()) {
            Thread.onSpinWait();
        }

        goOn.countDown();
        stop.join();

        assertThat(work.isTerminated()).isTrue();
        assertThat(interrupted).hasValue(0);
        assertThat(rounds).hasValue(1);
    }
}
