package warmshelf.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.FixedStay;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.SetPointSpan;

/** The set-point of each mat by days. Days on which nothing lies on a mat need none and have none. */
final class SetPointDays {
    private final DayRange days;
    private final Map<String, TreeMap<LocalDate, Integer>> setPoints = new TreeMap<>();

    SetPointDays(PlanQuestion question, List<SetPointSpan> spans) {
        days = question.days();
        spans.forEach(span -> within(span.days()).forEach(day -> put(span.mat(), day, span.celsius())));
    }

    private void put(String mat, LocalDate day, int celsius) {
        setPoints.computeIfAbsent(mat, none -> new TreeMap<>()).put(day, celsius);
    }

    @Nullable
    Integer on(String mat, LocalDate day) {
        TreeMap<LocalDate, Integer> of = setPoints.get(mat);
        return of == null ? null : of.get(day);
    }

    /** Sets a mat on those days that have no set-point yet. */
    void fill(String mat, DayRange range, int celsius) {
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
