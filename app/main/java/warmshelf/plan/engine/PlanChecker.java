package warmshelf.plan.engine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import warmshelf.allocation.Slot;
import warmshelf.shelf.LightAbove;
import warmshelf.shelf.WholeDegree;

/**
 * Judges a plan by the rules alone, one method a rule; it shares no code with what makes plans.
 *
 * <p>Fixed stays are part of every plan: they are laid down first, so that whatever takes their quarters or their warmth
 * is found out. A stay whose days depend on warmth must lie exactly as long as each set-point under it asks.
 */
public final class PlanChecker {
    private static final int ENOUGH = 1_000;

    private final PlanQuestion question;
    private final Map<String, PlannedMat> mats = new HashMap<>();
    private final Map<String, Integer> litPlaces = new HashMap<>();
    private final Map<String, Request> requests = new HashMap<>();
    private final Map<String, Double> setPoints = new HashMap<>();
    private final Map<String, PlanParty> taken = new HashMap<>();
    private final Map<LocalDate, Set<PlannedMat>> warmed = new TreeMap<>();
    private final List<PlanProblem> problems = new ArrayList<>();

    private PlanChecker(PlanQuestion question) {
        this.question = question;
        question.mats().forEach(mat -> mats.put(mat.id(), mat));
        question.requests().forEach(request -> requests.put(request.id(), request));
        if (question.litShelves() != null) {
            question.litShelves().forEach(shelf -> litPlaces.put(shelf.id(), shelf.places()));
        }
    }

    /** What is wrong with a plan; empty when it keeps every rule. */
    public static List<PlanProblem> problems(PlanQuestion question, SeasonPlan plan) {
        PlanChecker checker = new PlanChecker(question);
        checker.oneSetPointADay(plan.setPoints());
        question.fixed().forEach(checker::fixedStay);
        plan.placed().forEach(checker::placedStay);
        checker.circuits();
        checker.everyRequestOnce(plan);
        return checker.problems.size() <= ENOUGH ? checker.problems : checker.problems.subList(0, ENOUGH);
    }

    private void oneSetPointADay(List<SetPointSpan> spans) {
        for (SetPointSpan span : spans) {
            PlannedMat mat = mats.get(span.mat());
            if (mat == null) {
                problem(new PlanProblem.NoSuchMat(span.mat()));
                continue;
            }
            if (!mat.thermostat().contains(span.celsius())) {
                problem(new PlanProblem.BeyondThermostat(mat.id(), span.celsius()));
            }
            for (LocalDate day : daysOfPlan(span.days())) {
                if (setPoints.put(span.mat() + "|" + day, span.celsius()) != null) {
                    problem(new PlanProblem.TwoSetPoints(mat.id(), day));
                }
            }
        }
    }

    private void fixedStay(FixedStay stay) {
        PlanParty who = new PlanParty.OfFixedStay(stay.id());
        takeQuarters(who, (stay.lit() ? "lit|" : "mat|") + stay.surface(), stay.place(), stay.slot(), stay.days());
        if (stay.band() == null) {
            return;
        }
        for (LocalDate day : daysOfPlan(stay.days())) {
            warm(stay.surface(), day);
            Double celsius = setPoints.get(stay.surface() + "|" + day);
            if (celsius == null || !stay.band().contains(celsius)) {
                problem(new PlanProblem.OutsideBand(who, celsius, day));
                return;
            }
        }
    }

    private void placedStay(PlacedStay stay) {
        PlanParty who = new PlanParty.OfRequest(stay.request());
        Request request = requests.get(stay.request());
        PlannedMat mat = mats.get(stay.mat());
        if (request == null || mat == null) {
            problem(new PlanProblem.NotInFile(who, stay.mat()));
            return;
        }
        if (stay.place() < 1 || stay.place() > mat.places()) {
            problem(new PlanProblem.NoSuchPlace(who, stay.place(), mat.id(), mat.places()));
        }
        if (stay.slot().quarters() != request.quarters()) {
            problem(new PlanProblem.OtherSize(who, stay.slot().quarters(), request.quarters()));
        }
        if (stay.days().from().isBefore(request.earliest())
                || stay.days().from().isAfter(request.latest())) {
            problem(new PlanProblem.OutsideWindow(who, stay.days().from()));
        }
        if (!question.days().contains(stay.days())) {
            problem(new PlanProblem.BeyondPlan(
                    who, stay.days().from(), stay.days().to()));
        }
        if (request.needsLight() && mat.light() == LightAbove.NONE) {
            problem(new PlanProblem.DarkMat(who, mat.id()));
        }
        takeQuarters(who, "mat|" + mat.id(), stay.place(), stay.slot(), stay.days());
        warmEnoughAndLongEnough(who, request, mat, stay.days());
        lightAfterTheMat(who, request, stay);
    }

    private void warmEnoughAndLongEnough(PlanParty who, Request request, PlannedMat mat, DayRange days) {
        Set<Double> degrees = new HashSet<>();
        for (LocalDate day : daysOfPlan(days)) {
            warm(mat.id(), day);
            if (!mat.servesOn(day)) {
                problem(new PlanProblem.MatOut(who, mat.id(), day));
            }
            Double celsius = setPoints.get(mat.id() + "|" + day);
            if (celsius == null || !request.band().contains(celsius)) {
                problem(new PlanProblem.OutsideBand(who, celsius, day));
                return;
            }
            degrees.add(celsius);
        }
        for (double celsius : degrees) {
            if (request.daysAt(WholeDegree.of(celsius)).orElse(0) != days.length()) {
                problem(new PlanProblem.NotItsTime(who, days.length(), celsius));
            }
        }
    }

    private void lightAfterTheMat(PlanParty who, Request request, PlacedStay stay) {
        Request.Light asked = request.light();
        PlacedStay.LitStay light = stay.light();
        if (light != null) {
            Integer places = litPlaces.get(light.shelf());
            if (places == null || light.place() > places) {
                problem(new PlanProblem.NoSuchLitPlace(who));
            }
            takeQuarters(who, "lit|" + light.shelf(), light.place(), light.slot(), light.days());
        }
        boolean wanted = asked != null
                && question.litShelves() != null
                && stay.days().to().isBefore(question.days().to());
        if (wanted && light == null) {
            problem(new PlanProblem.NoLightAfter(who));
        } else if (asked != null && light != null) {
            boolean rightAfter = light.days().from().equals(stay.days().to());
            LocalDate end = stay.days().to().plusDays(asked.days());
            boolean longEnough = light.days().to().equals(end)
                    || (end.isAfter(question.days().to())
                            && light.days().to().equals(question.days().to()));
            if (!rightAfter || !longEnough || light.slot().quarters() != asked.quarters()) {
                problem(new PlanProblem.OtherLight(who));
            }
        }
    }

    private void takeQuarters(PlanParty who, String surface, int place, Slot slot, DayRange days) {
        for (LocalDate day : daysOfPlan(days)) {
            for (int quarter = slot.firstQuarter(); quarter < slot.firstQuarter() + slot.quarters(); quarter++) {
                PlanParty other = taken.putIfAbsent("%s|%d|%d|%s".formatted(surface, place, quarter, day), who);
                if (other != null) {
                    problem(new PlanProblem.BothLie(other, who, quarter, place, surface.substring(4), day));
                    return;
                }
            }
        }
    }

    private void circuits() {
        warmed.forEach((day, mats) -> question.circuits().forEach(circuit -> {
            int load = mats.stream()
                    .filter(mat -> circuit.id().equals(mat.circuit()))
                    .mapToInt(PlannedMat::watts)
                    .sum();
            // NEC 210.20(A): a breaker is chosen for a continuous load plus a quarter, so 80 % of its rating may be
            // planned
            if (load * 5.0 > circuit.rating().amps() * circuit.rating().volts() * 4.0 + 1e-6) {
                problem(new PlanProblem.CircuitOverloaded(circuit.id(), load, day));
            }
        }));
    }

    private void everyRequestOnce(SeasonPlan plan) {
        Set<String> answered = new HashSet<>();
        List<String> named = new ArrayList<>();
        plan.placed().forEach(stay -> named.add(stay.request()));
        plan.refused().forEach(refused -> named.add(refused.request()));
        for (String id : named) {
            if (!requests.containsKey(id)) {
                problem(new PlanProblem.NotAsked(id));
            } else if (!answered.add(id)) {
                problem(new PlanProblem.AnsweredTwice(new PlanParty.OfRequest(id)));
            }
        }
        question.requests().stream()
                .filter(request -> !answered.contains(request.id()))
                .forEach(request -> problem(new PlanProblem.NotAnswered(new PlanParty.OfRequest(request.id()))));
    }

    private void warm(String mat, LocalDate day) {
        PlannedMat warm = mats.get(mat);
        if (warm != null) {
            warmed.computeIfAbsent(day, none -> new HashSet<>()).add(warm);
        }
    }

    private List<LocalDate> daysOfPlan(DayRange days) {
        DayRange all = question.days();
        return all.overlaps(days)
                ? days.from().isBefore(all.from()) || days.to().isAfter(all.to())
                        ? all.from().datesUntil(all.to()).filter(days::contains).toList()
                        : days.from().datesUntil(days.to()).toList()
                : List.of();
    }

    private void problem(PlanProblem problem) {
        problems.add(problem);
    }
}
