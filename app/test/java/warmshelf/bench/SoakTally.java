package warmshelf.bench;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.AppenderBase;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.slf4j.LoggerFactory;
import warmshelf.testing.PageWalk;

/** What a soak run has seen: answers by kind and status, what was not expected of them, and every fault that was logged. */
final class SoakTally extends AppenderBase<ILoggingEvent> {
    /** Somebody else was quicker, or what was typed does not go with the day: told with a sentence, as it should be. */
    private static final Set<Integer> SAID_NO = Set.of(409, 422);

    private final Map<String, Integer> answers = new TreeMap<>();
    private final Map<String, Integer> unexpected = new TreeMap<>();
    private final List<Double> waits = new ArrayList<>();
    private int faults;

    SoakTally() {
        Logger root = (Logger) LoggerFactory.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
        setContext(root.getLoggerContext());
        start();
        root.addAppender(this);
    }

    synchronized void answered(String method, String path, int status, double millis) {
        String what = "%s %s %d".formatted(method, PageWalk.kind(path), status);
        answers.merge(what, 1, Integer::sum);
        waits.add(millis);
        if (status >= 400 && !(method.equals("POST") && SAID_NO.contains(status))) {
            unexpected.merge(what, 1, Integer::sum);
        }
    }

    synchronized void brokeOff(String doing, Throwable trouble) {
        unexpected.merge(doing + ": " + trouble, 1, Integer::sum);
    }

    @Override
    protected void append(ILoggingEvent line) {
        if (line.getLevel().isGreaterOrEqual(Level.WARN)) {
            synchronized (this) {
                faults++;
            }
        }
    }

    /** Prints it all; whether nothing was unexpected. */
    synchronized boolean print() {
        answers.forEach((what, times) -> System.out.printf("%7d  %s%n", times, what));
        Collections.sort(waits);
        System.out.printf(
                "%d answers, half of them within %.0f ms, 99 of 100 within %.0f ms%n",
                waits.size(), share(0.5), share(0.99));
        System.out.printf("%d faults or warnings logged; not expected: %s%n", faults, unexpected);
        return faults == 0 && unexpected.isEmpty();
    }

    private double share(double part) {
        return waits.isEmpty() ? 0 : waits.get((int) (part * (waits.size() - 1)));
    }
}
