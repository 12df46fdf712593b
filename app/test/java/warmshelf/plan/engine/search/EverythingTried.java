package warmshelf.plan.engine.search;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import warmshelf.allocation.Slot;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.FixedStay;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.PlannedMat;
import warmshelf.plan.engine.Request;
import warmshelf.plan.engine.SeasonPlan;
import warmshelf.shelf.LightAbove;

/** Tries every mat, place, slot, start and set-point for every request, slowly and plainly. For mats on one circuit. */
final class EverythingTried {
    private record Lying(PlannedMat mat, int place, Slot slot, DayRange days, Set<Integer> degrees) {}

    private final PlanQuestion question;
    private final List<Integer> choices;
    private final List<Lying> lying = new ArrayList<>();
    private final Set<String> placed = new HashSet<>();
    private int most = -1;
    private int[] fairest = {};

    EverythingTried(PlanQuestion question) {
        this.question = question;
        choices = List.copyOf(
                new TreeSet<>(question.requests().stream().map(Request::choice).toList()));
        for (FixedStay stay : question.fixed()) {
            PlannedMat mat = question.mats().stream()
                    .filter(candidate -> candidate.id().equals(stay.surface()))
                    .findFirst()
                    .orElseThrow();
            Set<Integer> degrees = new HashSet<>();
            for (int celsius = mat.thermostat().lowC();
                    celsius <= mat.thermostat().highC();
                    celsius++) {
                degrees.add(celsius);
            }
            lying.add(new Lying(mat, stay.place(), stay.slot(), stay.days(), degrees));
        }
        from(0);
    }

    /** The most requests that can be placed. */
    int most() {
        return most;
    }

    /** Members with their first choice, with their second and so on, and requests placed, at best in this order. */
    int[] fairest() {
        return fairest;
    }

    int[] fairness(SeasonPlan plan) {
        return fairness(
                new HashSet<>(plan.placed().stream().map(PlacedStay::request).toList()));
    }

    private int[] fairness(Set<String> ids) {
        int[] figures = new int[choices.size() + 1];
        Set<String> pairs = new HashSet<>();
        for (Request request : question.requests()) {
            if (ids.contains(request.id()) && pairs.add(request.choice() + "|" + request.member())) {
                figures[choices.indexOf(request.choice())]++;
            }
        }
        figures[choices.size()] = ids.size();
        return figures;
    }

    private void from(int next) {
        if (next == question.requests().size()) {
            most = Math.max(most, placed.size());
            int[] figures = fairness(placed);
            if (fairest.length == 0 || Arrays.compare(figures, fairest) > 0) {
                fairest = figures;
            }
            return;
        }
        Request request = question.requests().get(next);
        from(next + 1);
        for (PlannedMat mat : question.mats()) {
            if (request.needsLight() && mat.light() == LightAbove.NONE) {
                continue;
            }
            for (LocalDate day = request.earliest(); !day.isAfter(request.latest()); day = day.plusDays(1)) {
                for (int celsius = request.band().lowC();
                        celsius <= request.band().highC();
                        celsius++) {
                    at(next, request, mat, day, celsius);
                }
            }
        }
    }

    /** One degree stands for all that ask for the same number of days, so that each such set is tried once. */
    private void at(int next, Request request, PlannedMat mat, LocalDate day, int celsius) {
        OptionalInt days = request.daysAt(celsius);
        Set<Integer> degrees = new TreeSet<>();
        for (int other = request.band().lowC(); other <= request.band().highC(); other++) {
            if (request.daysAt(other).equals(days)) {
                degrees.add(other);
            }
        }
        if (days.isEmpty() || degrees.iterator().next() != celsius) {
            return;
        }
        DayRange range = new DayRange(day, day.plusDays(days.getAsInt()));
        for (Slot slot : Slot.of(request.quarters())) {
            Lying stay = new Lying(mat, 1, slot, range, degrees);
            if (fits(stay)) {
                lying.add(stay);
                placed.add(request.id());
                from(next + 1);
                placed.remove(request.id());
                lying.remove(lying.size() - 1);
            }
        }
    }

    private boolean fits(Lying stay) {
        return question.days().contains(stay.days())
                && stay.days().from().datesUntil(stay.days().to()).allMatch(day -> fitsOn(day, stay));
    }

    private boolean fitsOn(LocalDate day, Lying stay) {
        Set<Integer> common = new HashSet<>(stay.degrees());
        Set<String> warm = new HashSet<>(Set.of(stay.mat().id()));
        int watts = stay.mat().watts();
        for (Lying other : lying) {
            if (!other.days().contains(day)) {
                continue;
            }
            if (warm.add(other.mat().id())) {
                watts += other.mat().watts();
            }
            if (other.mat().equals(stay.mat())) {
                common.retainAll(other.degrees());
                boolean apart = other.slot().firstQuarter()
                                >= stay.slot().firstQuarter() + stay.slot().quarters()
                        || stay.slot().firstQuarter()
                                >= other.slot().firstQuarter() + other.slot().quarters();
                if (!apart) {
                    return false;
                }
            }
        }
        common.removeIf(celsius -> !stay.mat().thermostat().contains(celsius));
        return stay.mat().servesOn(day)
                && !common.isEmpty()
                && watts <= question.circuits().get(0).rating().continuousWatts();
    }
}
