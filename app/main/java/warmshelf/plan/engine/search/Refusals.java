package warmshelf.plan.engine.search;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Band;
import warmshelf.plan.engine.NoPlaceReason;
import warmshelf.plan.engine.PlaceChange;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.Refused;
import warmshelf.plan.engine.Request;

/**
 * Why a request got no place, and the cheapest change that would get it one beside all that is placed: found by trying, not
 * by guessing. A day earlier, later or longer costs one; half the size costs as much as a week.
 */
final class Refusals {
    private static final int FURTHEST = 42;
    private static final int SMALLER = 7;
    private static final PlacementFinder.Taste NEAR = PlacementFinder.Taste.NEAR;

    private final IndexedQuestion ground;
    private final PlacementFinder now;
    private final PlacementFinder alone;
    private final PlacementFinder anyCurrent;

    private record Change(int cost, PlaceChange change) {}

    Refusals(Layout layout) {
        ground = layout.ground;
        now = new PlacementFinder(layout, new Random(0));
        alone = new PlacementFinder(new Layout(withoutFixed(ground.question)), new Random(0));
        anyCurrent = new PlacementFinder(layout, new Random(0), true);
    }

    Refused of(Request request) {
        return new Refused(request.id(), reason(request), change(request));
    }

    /** Bare mats: what is fixed takes room like anything else, so a mat full of it is full. */
    private static IndexedQuestion withoutFixed(PlanQuestion question) {
        return new IndexedQuestion(new PlanQuestion(
                question.days(), question.circuits(), question.mats(), question.litShelves(), List.of(), List.of()));
    }

    private NoPlaceReason reason(Request request) {
        boolean warmEnough =
                ground.question.mats().stream().anyMatch(mat -> suits(StayOption.degrees(mat.thermostat()), request));
        if (!warmEnough) {
            return new NoPlaceReason.NoMatWarmEnough(request.band());
        }
        if (isForLight(request)) {
            return new NoPlaceReason.DarkMatsOnly(request.band());
        }
        if (alone.find(ask(request), NEAR) == null) {
            return reasonAlone(request);
        }
        if (request.light() != null && fits(now, withoutLight(request))) {
            return new NoPlaceReason.NoLightAfterwards();
        }
        if (fits(anyCurrent, request)) {
            return new NoPlaceReason.CircuitFull();
        }
        return new NoPlaceReason.MatsTaken(request.earliest(), lastDay(request));
    }

    /** Whether there would be room on a mat without light. */
    private boolean isForLight(Request request) {
        return request.needsLight() && !fits(now, request) && fits(now, copy(request, false));
    }

    private NoPlaceReason reasonAlone(Request request) {
        if (request.latest().isBefore(ground.question.days().from())) {
            return new NoPlaceReason.WindowOver(request.latest());
        }
        if (request.light() != null && fits(alone, withoutLight(request))) {
            return new NoPlaceReason.TooFewLitPlaces();
        }
        if (request.earliest()
                .plusDays(shortest(request))
                .isAfter(ground.question.days().to())) {
            return new NoPlaceReason.OutlastsPlan(ground.question.days().to().minusDays(1));
        }
        return new NoPlaceReason.MatsOutOfService();
    }

    private PlaceChange change(Request request) {
        List<Change> changes = new ArrayList<>();
        addIfFits(changes, shifted(request, 1));
        addIfFits(changes, shifted(request, -1));
        addIfFits(changes, smaller(request));
        addIfFits(changes, otherWarmth(request));
        return changes.stream()
                .min(Comparator.comparingInt(Change::cost))
                .map(Change::change)
                .orElseGet(() ->
                        isForLight(request) ? new PlaceChange.LightOtherwise() : new PlaceChange.JoinWaitingList());
    }

    private static void addIfFits(List<Change> changes, @Nullable Change change) {
        if (change != null) {
            changes.add(change);
        }
    }

    /** The fewest days later than its latest start, or earlier than its earliest, that fit. */
    private @Nullable Change shifted(Request request, int sign) {
        LocalDate edge = sign > 0 ? request.latest() : request.earliest();
        for (int days = 1; days <= FURTHEST; days++) {
            LocalDate start = edge.plusDays((long) sign * days);
            if (ground.question.days().contains(start) && fits(now, beginning(request, start))) {
                return new Change(
                        days,
                        sign > 0 ? new PlaceChange.StartLater(start, days) : new PlaceChange.StartEarlier(start, days));
            }
        }
        return null;
    }

    private @Nullable Change smaller(Request request) {
        for (int quarters = request.quarters() / 2, cost = SMALLER; quarters >= 1; quarters /= 2, cost += SMALLER) {
            Request less =
                    copy(request, quarters, request.earliest(), request.ideal(), request.latest(), request.light());
            TrialPlacement spot = now.find(ask(less), NEAR);
            if (spot != null) {
                return new Change(cost, new PlaceChange.Smaller(quarters, request.quarters(), start(spot)));
            }
        }
        return null;
    }

    /** A set-point outside its band for which its days are known. */
    private @Nullable Change otherWarmth(Request request) {
        Change best = null;
        for (int celsius : request.daysAtC().keySet()) {
            if (request.band().contains(celsius)) {
                continue;
            }
            Request other = new Request(
                    request.id(),
                    request.member(),
                    request.choice(),
                    request.quarters(),
                    null,
                    new TreeMap<>(request.daysAtC()),
                    request.earliest(),
                    request.ideal(),
                    request.latest(),
                    new Band(celsius, celsius),
                    request.needsLight(),
                    request.light());
            TrialPlacement spot = now.find(ask(other), NEAR);
            int slower = spot == null ? 0 : Math.max(0, spot.to() - spot.from() - shortest(request));
            if (spot != null && (best == null || slower < best.cost())) {
                best = new Change(
                        Math.max(1, slower), new PlaceChange.OtherWarmth(celsius, request.band(), start(spot), slower));
            }
        }
        return best;
    }

    private boolean fits(PlacementFinder finder, Request request) {
        return finder.find(ask(request), NEAR) != null;
    }

    private IndexedRequest ask(Request request) {
        return ground.ask(request, 0, 0);
    }

    private LocalDate start(TrialPlacement spot) {
        return ground.question.days().from().plusDays(spot.from());
    }

    private static Request withoutLight(Request request) {
        return copy(request, request.quarters(), request.earliest(), request.ideal(), request.latest(), null);
    }

    private static Request beginning(Request request, LocalDate start) {
        return copy(request, request.quarters(), start, start, start, request.light());
    }

    private static Request copy(
            Request request,
            int quarters,
            LocalDate earliest,
            LocalDate ideal,
            LocalDate latest,
            Request.@Nullable Light light) {
        return new Request(
                request.id(),
                request.member(),
                request.choice(),
                quarters,
                request.days(),
                request.daysAtC(),
                earliest,
                ideal,
                latest,
                request.band(),
                request.needsLight(),
                light);
    }

    private static Request copy(Request request, boolean needsLight) {
        return new Request(
                request.id(),
                request.member(),
                request.choice(),
                request.quarters(),
                request.days(),
                request.daysAtC(),
                request.earliest(),
                request.ideal(),
                request.latest(),
                request.band(),
                needsLight,
                request.light());
    }

    private static boolean suits(long degrees, Request request) {
        return StayOption.of(request).stream().anyMatch(way -> (way.degrees() & degrees) != 0);
    }

    private static int shortest(Request request) {
        List<StayOption> ways = StayOption.of(request);
        return ways.isEmpty() ? 1 : ways.get(0).days();
    }

    private static LocalDate lastDay(Request request) {
        return request.latest().plusDays(shortest(request) - 1L);
    }
}
