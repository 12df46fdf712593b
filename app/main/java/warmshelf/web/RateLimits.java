package warmshelf.web;

import static warmshelf.web.WebSentences.SAY;

import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import io.github.bucket4j.TimeMeter;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Slows down guessing: each address and each name has a bucket of tries that refills with time. Kept in memory, for the last
 * few thousand that tried, since a restart forgiving them does no harm.
 */
public final class RateLimits {
    private static final int REMEMBERED = 10_000;

    private final TimeMeter time;
    private final Map<String, Bucket> buckets = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
            return size() > REMEMBERED;
        }
    };

    public RateLimits(Clock clock) {
        this.time = new ClockTime(clock);
    }

    /**
     * Takes one try from a bucket of so many, which gets one back each so often.
     *
     * @throws Refusal with status 429, saying how long to wait, when none is left
     */
    public void take(String key, int tries, Duration oneBackEach) {
        ConsumptionProbe probe = bucket(key, tries, oneBackEach).tryConsumeAndReturnRemaining(1);
        if (!probe.isConsumed()) {
            long seconds = Math.max(
                    1,
                    Duration.ofNanos(probe.getNanosToWaitForRefill())
                            .plusMillis(999)
                            .toSeconds());
            throw Refusal.of(HttpStatus.TOO_MANY_REQUESTS, SAY.waitThenTry(inWords(seconds)))
                    .with("Retry-After", String.valueOf(seconds));
        }
    }

    private Bucket bucket(String key, int tries, Duration oneBackEach) {
        synchronized (buckets) {
            return buckets.computeIfAbsent(
                    key,
                    absent -> Bucket.builder()
                            .addLimit(limit -> limit.capacity(tries).refillGreedy(1, oneBackEach))
                            .withCustomTimePrecision(time)
                            .build());
        }
    }

    private static String inWords(long seconds) {
        if (seconds < 90) {
            return seconds == 1 ? "a second" : seconds + " seconds";
        }
        return (seconds + 59) / 60 + " minutes";
    }

    private record ClockTime(Clock clock) implements TimeMeter {
        @Override
        public long currentTimeNanos() {
            return Duration.ofMillis(clock.millis()).toNanos();
        }

        @Override
        public boolean isWallClockBased() {
            return true;
        }
    }
}
