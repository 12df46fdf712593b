package warmshelf.plan;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.DoubleToIntFunction;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.Stay;
import warmshelf.plan.SeasonQuestion.Asked;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.Request;
import warmshelf.sowing.Asking;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingPlanner;

/** Requests for space, as the question of a plan says them. */
final class RequestsAsked {
    private static final int SHORTEST_DAYS = 60;
    private static final int LONGEST_DAYS = 790;

    private final SowingPlanner planner;
    private final Map<UUID, Integer> choices;
    private final Collection<MatSpace> mats;
    private final LocalDate today;
    private final boolean withLight;

    /** With light: who asked for it gets a place under a light after the mat, or none on it either. */
    RequestsAsked(
            SowingPlanner planner,
            Map<UUID, Integer> choices,
            Collection<MatSpace> mats,
            LocalDate today,
            boolean withLight) {
        this.planner = planner;
        this.choices = choices;
        this.mats = mats;
        this.today = today;
        this.withLight = withLight;
    }

    Asked asked(Sowing sowing, SpaceRequest request, @Nullable Stay freed, @Nullable Stay freedLight) {
        LocalDate earliest = request.earliest();
        LocalDate ideal = request.ideal();
        // Days that have passed are no choice any more; a window that is over stays as it is and is refused for that.
        if (!request.latest().isBefore(today)) {
            earliest = later(earliest, today);
            ideal = later(ideal, earliest);
        }
        Request wanted = new Request(
                request.sowingId().toString(),
                sowing.grower().memberId().toString(),
                choices.getOrDefault(request.sowingId(), 1),
                request.quarters(),
                null,
                daysAt(sowing, request),
                earliest,
                ideal,
                request.latest(),
                request.band(),
                request.needsLight(),
                light(sowing, request));
        return new Asked(sowing, request, wanted, freed, freedLight);
    }

    private Request.@Nullable Light light(Sowing sowing, SpaceRequest request) {
        return withLight && request.underLight()
                ? new Request.Light(planner.lightDays(Asking.of(sowing), today), sowing.quartersUnderLight())
                : null;
    }

    /** Only the degrees that some mat can hold; the whole band where none can, so that the reason is told. */
    private SortedMap<Integer, Integer> daysAt(Sowing sowing, SpaceRequest request) {
        DoubleToIntFunction daysAt = planner.daysAt(Asking.of(sowing), today, request.days());
        SortedMap<Integer, Integer> days = new TreeMap<>();
        for (int celsius = request.band().lowC(); celsius <= request.band().highC(); celsius++) {
            int degree = celsius;
            if (mats.stream().anyMatch(mat -> mat.thermostat().contains(degree))) {
                days.put(celsius, Math.max(1, daysAt.applyAsInt(celsius)));
            }
        }
        if (days.isEmpty()) {
            days.put(request.band().lowC(), request.days());
        }
        return days;
    }

    /** From today until everything asked for and everything that lies there has come off the mats. */
    static DayRange days(LocalDate today, Collection<Asked> asked, List<Stay> stays) {
        LocalDate to = today.plusDays(SHORTEST_DAYS);
        for (Asked each : asked) {
            Request wanted = each.wanted();
            int longest = wanted.daysAtC().values().stream()
                    .mapToInt(days -> days)
                    .max()
                    .orElse(1);
            long light = wanted.light() == null ? 0 : wanted.light().days();
            to = later(to, wanted.latest().plusDays(longest + light + 1L));
        }
        for (Stay stay : stays) {
            to = later(to, stay.to());
        }
        LocalDate farthest = today.plusDays(LONGEST_DAYS);
        return new DayRange(today, to.isAfter(farthest) ? farthest : to);
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? other : one;
    }
}
