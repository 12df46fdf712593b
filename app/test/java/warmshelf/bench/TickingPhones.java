package warmshelf.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Queue;
import java.util.UUID;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/** Phones that send one tick after the other, each when the one before was acknowledged, and people who read beside them. */
final class TickingPhones {
    private static final List<String> READ = List.of("/today", "/sowings", "/racks");

    private final String session;
    private final List<String> sowings;
    private final Queue<UUID> acknowledged = new ConcurrentLinkedQueue<>();

    /** @param session of the person on duty */
    TickingPhones(String session, List<String> sowings) {
        this.session = session;
        this.sowings = sowings;
    }

    /**
     * What ticking came to; times in milliseconds.
     *
     * @param pages that others read meanwhile
     */
    record Result(int ticks, double seconds, double half, double most, double longest, int pages) {
        double perSecond() {
            return ticks / seconds;
        }

        String words() {
            return "%,d ticks, %.0f a second, half within %.1f ms, 99 of 100 within %.1f ms, longest %.0f ms, %d pages read"
                    .formatted(ticks, perSecond(), half, most, longest, pages);
        }
    }

    /** The entries that were acknowledged so far. */
    List<UUID> acknowledged() {
        return List.copyOf(acknowledged);
    }

    /** Sends so many ticks. */
    Result send(int port, int phones, int ticks, int readers) throws InterruptedException {
        AtomicInteger left = new AtomicInteger(ticks);
        AtomicBoolean goesOn = new AtomicBoolean(true);
        AtomicInteger pages = new AtomicInteger();
        List<Thread> reading = IntStream.range(0, readers)
                .mapToObj(reader -> begin(() -> read(port, goesOn, pages)))
                .toList();
        List<long[]> waits = new ArrayList<>();
        for (int phone = 0; phone < phones; phone++) {
            waits.add(new long[ticks]);
        }
        int[] sent = new int[phones];
        long begun = System.nanoTime();
        List<Thread> ticking = IntStream.range(0, phones)
                .mapToObj(phone -> begin(() -> sent[phone] = tick(port, phone, phones, left, waits.get(phone))))
                .toList();
        for (Thread each : ticking) {
            each.join();
        }
        double seconds = (System.nanoTime() - begun) / 1e9;
        goesOn.set(false);
        for (Thread each : reading) {
            each.join();
        }
        long[] all = IntStream.range(0, phones)
                .boxed()
                .flatMapToLong(phone -> Arrays.stream(waits.get(phone), 0, sent[phone]))
                .sorted()
                .toArray();
        return new Result(all.length, seconds, millis(all, 0.5), millis(all, 0.99), millis(all, 1), pages.get());
    }

    private static double millis(long[] sorted, double share) {
        return sorted.length == 0 ? 0 : sorted[(int) ((sorted.length - 1) * share)] / 1e6;
    }

    private int tick(int port, int phone, int phones, AtomicInteger left, long[] waits) {
        int own = 0;
        try (Wire wire = new Wire(port)) {
            for (int number = phone; left.getAndDecrement() > 0; number += phones) {
                UUID id = UUID.randomUUID();
                String tick = tick(id, sowings.get(number % sowings.size()));
                long asked = System.nanoTime();
                String answer = wire.post("/round/entries", session, tick).text();
                waits[own++] = System.nanoTime() - asked;
                if (!answer.contains("\"answer\":\"kept\"")) {
                    throw new IllegalStateException("not kept: " + answer);
                }
                acknowledged.add(id);
            }
        } catch (IOException cut) {
            return own;
        }
        return own;
    }

    private static String tick(UUID id, String sowing) {
        String now = Instant.now().toString();
        // a look that says nothing new would not be kept
        return "{\"sentAt\":\"%s\",\"entries\":[{\"id\":\"%s\",\"sowing\":\"%s\",\"step\":\"look\",\"seenAt\":\"%s\",\"pageAt\":\"%s\",\"note\":\"look %s\"}]}"
                .formatted(now, id, sowing, now, now, id);
    }

    private void read(int port, AtomicBoolean goesOn, AtomicInteger pages) {
        try (Wire wire = new Wire(port)) {
            for (int number = 0; goesOn.get(); number++) {
                wire.get(new Load.Ask(READ.get(number % READ.size()), session, true));
                pages.incrementAndGet();
            }
        } catch (IOException cut) {
            if (goesOn.get()) {
                throw new UncheckedIOException(cut);
            }
        }
    }

    private static Thread begin(Runnable work) {
        Thread thread = new Thread(work);
        thread.setDaemon(true);
        thread.start();
        return thread;
    }
}
