package warmshelf.reminder;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a calendar tells of an event, with how often and when it changed (RFC 5545, SEQUENCE and LAST-MODIFIED). What is called
 * off is told as cancelled until its day is over, because programs that once took it in forget nothing by themselves.
 */
record ToldDay(
        String uid,
        FeedDay.Kind kind,
        LocalDate day,
        String summary,
        String fingerprint,
        int sequence,
        Instant changedAt,
        boolean cancelled) {

    /** An event as it is told for the first time. */
    private static ToldDay first(FeedDay event, Instant now) {
        return of(event, 0, now);
    }

    private static ToldDay of(FeedDay event, int sequence, Instant now) {
        return new ToldDay(
                event.uid(), event.kind(), event.day(), event.summary(), event.fingerprint(), sequence, now, false);
    }

    /**
     * What is told now, in the order of the events and those called off after them.
     *
     * @param before what was told last, by its name
     */
    static List<ToldDay> all(Map<String, ToldDay> before, List<FeedDay> events, Instant now, LocalDate today) {
        Map<String, ToldDay> told = new LinkedHashMap<>();
        events.forEach(event -> told.put(event.uid(), next(before.get(event.uid()), event, now)));
        List<ToldDay> all = new ArrayList<>(told.values());
        before.values().stream()
                .filter(last -> !told.containsKey(last.uid()))
                .flatMap(last -> last.calledOff(now, today).stream())
                .forEach(all::add);
        return all;
    }

    private static ToldDay next(@Nullable ToldDay last, FeedDay event, Instant now) {
        if (last == null) {
            return first(event, now);
        }
        boolean same = !last.cancelled && last.fingerprint.equals(event.fingerprint());
        return same ? last : of(event, last.sequence + 1, now);
    }

    private Optional<ToldDay> calledOff(Instant now, LocalDate today) {
        if (day.isBefore(today)) {
            return Optional.empty();
        }
        return Optional.of(
                cancelled ? this : new ToldDay(uid, kind, day, summary, fingerprint, sequence + 1, now, true));
    }
}
