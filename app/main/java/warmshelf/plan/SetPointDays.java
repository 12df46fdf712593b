package warmshelf.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.FixedStay;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.SetPointSpan;
import warmshelf.shelf.WholeDegree;

/** The set-point of each mat by days. Days on which nothing lies on a mat need none and have none. */
final class SetPointDays {
    private final DayRange days;
    private final Map<String, TreeMap<LocalDate, Double>> setPoints = new TreeMap<>();

    SetPointDays(PlanQuestion question, List<SetPointSpan> spans) {
        days = question.days();
        spans.forEach(span -> within(span.days()).forEach(day -> put(span.mat(), day, span.celsius())));
    }

    private void put(String mat, LocalDate day, double celsius) {
        setPoints.computeIfAbsent(mat, none -> new TreeMap<>()).put(day, celsius);
    }

    @Nullable
    Double on(String mat, LocalDate day) {
        TreeMap<LocalDate, Double> of = setPoints.get(mat);
        return of == null ? null : of.get(day);
    }

    /** Sets a mat on those days that have no set-point yet. */
    void fill(String mat, DayRange range, double celsius) {
        for (LocalDate day : within(range)) {
            if (on(mat, day) == null) {
                put(mat, day, celsius);
            }
        }
    }

    /** Keeps the days on which something lies; what is fixed gets its set-point where the plan has none. */
    void keepTo(List<FixedStay> fixed, List<PlacedStay> placed) {
        Map<String, Set<LocalDate>> used = new HashMap<>();
        for (FixedStay stay : fixed) {
            if (stay.band() != null) {
                fill(stay.surface(), stay.days(), stay.band().lowC());
                used.computeIfAbsent(stay.surface(), none -> new HashSet<>()).addAll(within(stay.days()));
            }
        }
        for (PlacedStay stay : placed) {
            used.computeIfAbsent(stay.mat(), none -> new HashSet<>()).addAll(within(stay.days()));
        }
        setPoints.forEach((mat, of) -> of.keySet().retainAll(used.getOrDefault(mat, Set.of())));
    }

    /**
     * Has mats stand, to a tenth of a degree, as they stand already on days on which the plan sets them to the degree that this
     * counts as: always where something fixed lies, and elsewhere unless somebody asked for a tenth. Days beside them at that
     * degree follow, so that nobody turns a mat by less than a degree.
     */
    void standAs(List<SetPointSpan> standing, List<FixedStay> fixed) {
        Map<String, Set<LocalDate>> bound = new HashMap<>();
        fixed.forEach(stay ->
                bound.computeIfAbsent(stay.surface(), none -> new HashSet<>()).addAll(within(stay.days())));
        Map<String, Set<LocalDate>> settled = new HashMap<>();
        for (SetPointSpan span : standing) {
            Set<LocalDate> fixedDays = bound.getOrDefault(span.mat(), Set.of());
            for (LocalDate day : within(span.days())) {
                Double planned = on(span.mat(), day);
                if (planned != null
                        && isOneDegree(planned, span.celsius())
                        && (isWhole(planned) || fixedDays.contains(day))) {
                    put(span.mat(), day, span.celsius());
                    settled.computeIfAbsent(span.mat(), none -> new HashSet<>()).add(day);
                }
            }
        }
        setPoints.forEach((mat, of) -> {
            Set<LocalDate> done = settled.computeIfAbsent(mat, none -> new HashSet<>());
            follow(of, of.keySet(), 1, done);
            follow(of, of.descendingKeySet(), -1, done);
        });
    }

    /** Each day that is not settled takes the set-point of the day before it, in this order, if both are at one degree. */
    private static void follow(
            TreeMap<LocalDate, Double> of, Set<LocalDate> inOrder, int step, Set<LocalDate> settled) {
        for (LocalDate day : inOrder) {
            LocalDate before = day.minusDays(step);
            Double there = of.get(before);
            double planned = Objects.requireNonNull(of.get(day));
            if (there == null || settled.contains(day) || !isWhole(planned) || !isOneDegree(planned, there)) {
                continue;
            }
            if (settled.contains(before) || !isWhole(there)) {
                of.put(day, there);
                settled.add(day);
            }
        }
    }

    private static boolean isWhole(double celsius) {
        return celsius == WholeDegree.of(celsius);
    }

    private static boolean isOneDegree(double one, double other) {
        return WholeDegree.of(one) == WholeDegree.of(other);
    }

    /** Equal days in a row as one span. */
    List<SetPointSpan> spans() {
        List<SetPointSpan> spans = new ArrayList<>();
        setPoints.forEach((mat, of) -> of.forEach((day, celsius) -> {
            SetPointSpan last = spans.isEmpty() ? null : spans.get(spans.size() - 1);
            if (last != null
                    && last.mat().equals(mat)
                    && last.celsius() == celsius
                    && last.days().to().equals(day)) {
                DayRange longer = new DayRange(last.days().from(), day.plusDays(1));
                spans.set(spans.size() - 1, new SetPointSpan(mat, longer, celsius));
            } else {
                spans.add(new SetPointSpan(mat, new DayRange(day, day.plusDays(1)), celsius));
            }
        }));
        return spans;
    }

    private List<LocalDate> within(DayRange range) {
        LocalDate from = range.from().isBefore(days.from()) ? days.from() : range.from();
        LocalDate to = range.to().isAfter(days.to()) ? days.to() : range.to();
        return from.isBefore(to) ? from.datesUntil(to).toList() : List.of();
    }
}
