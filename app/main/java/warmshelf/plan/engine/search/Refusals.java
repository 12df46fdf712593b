package warmshelf.plan.engine.search;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Band;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.Refused;
import warmshelf.plan.engine.Request;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;

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
    private final String waitingList = "Join the waiting list: it is offered the first space that fits.";

    private record Change(int cost, String words) {}

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

    private String reason(Request request) {
        boolean warmEnough =
                ground.question.mats().stream().anyMatch(mat -> suits(StayOption.degrees(mat.thermostat()), request));
        if (!warmEnough) {
            return "No mat can be set to %s, which it needs."
                    .formatted(request.band().words());
        }
        if (alone.find(ask(request), NEAR) == null) {
            return reasonAlone(request);
        }
        if (request.light() != null && fits(now, withoutLight(request))) {
            return "There is room on a mat, but no lit place for it when it comes off the heat.";
        }
        if (fits(anyCurrent, request)) {
            return "There is room on a mat, but its circuit may not carry one more mat at that time.";
        }
        return "All mats warm enough for it are taken from %s to %s."
                .formatted(DayWords.dayOfMonth(request.earliest()), DayWords.dayOfMonth(lastDay(request)));
    }

    private String reasonAlone(Request request) {
        if (request.latest().isBefore(ground.question.days().from())) {
            return "Its last day to begin, %s, is over before the plan starts."
                    .formatted(DayWords.dayOfMonth(request.latest()));
        }
        if (request.light() != null && fits(alone, withoutLight(request))) {
            return "There are not enough lit places for it to go to when it comes off the heat.";
        }
        if (request.earliest()
                .plusDays(shortest(request))
                .isAfter(ground.question.days().to())) {
            return "It would still lie on the mat when the plan ends on %s."
                    .formatted(DayWords.dayOfMonth(ground.question.days().to().minusDays(1)));
        }
        return "On the days when it could lie on a mat, those warm enough for it are out of service.";
    }

    private String change(Request request) {
        List<Change> changes = new ArrayList<>();
        addIfFits(changes, shifted(request, 1));
        addIfFits(changes, shifted(request, -1));
        addIfFits(changes, smaller(request));
        addIfFits(changes, otherWarmth(request));
        return changes.stream()
                .min(Comparator.comparingInt(Change::cost))
                .map(Change::words)
                .orElse(waitingList);
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
                        "Start on %s, %s %s than its %s day."
                                .formatted(
                                        DayWords.dayOfMonth(start),
                                        Counted.days(days),
                                        sign > 0 ? "later" : "earlier",
                                        sign > 0 ? "latest" : "earliest"));
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
                return new Change(
                        cost,
                        "As a %s instead of a %s it would have a place from %s."
                                .formatted(container(quarters), container(request.quarters()), start(spot)));
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
                    request.light());
            TrialPlacement spot = now.find(ask(other), NEAR);
            int slower = spot == null ? 0 : Math.max(0, spot.to() - spot.from() - shortest(request));
            if (spot != null && (best == null || slower < best.cost())) {
                best = new Change(
                        Math.max(1, slower),
                        "On a mat at %s instead of %s it would have a place from %s%s."
                                .formatted(
                                        Band.words(celsius),
                                        request.band().words(),
                                        start(spot),
                                        slower == 0 ? "" : ", " + Counted.days(slower) + " slower"));
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

    private String start(TrialPlacement spot) {
        return DayWords.dayOfMonth(ground.question.days().from().plusDays(spot.from()));
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
                light);
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

    private static String container(int quarters) {
        return switch (quarters) {
            case 4 -> "tray";
            case 2 -> "half tray";
            default -> "bag";
        };
    }
}
