package warmshelf.plan.engine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Slot;
import warmshelf.shelf.LightAbove;
import warmshelf.shelf.WholeDegree;
import warmshelf.words.Units;

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
    private final Map<String, String> taken = new HashMap<>();
    private final Map<LocalDate, Set<PlannedMat>> warmed = new TreeMap<>();
    private final List<String> problems = new ArrayList<>();
    private final Units units;

    private PlanChecker(PlanQuestion question, Units units) {
        this.question = question;
        this.units = units;
        question.mats().forEach(mat -> mats.put(mat.id(), mat));
        question.requests().forEach(request -> requests.put(request.id(), request));
        if (question.litShelves() != null) {
            question.litShelves().forEach(shelf -> litPlaces.put(shelf.id(), shelf.places()));
        }
    }

    /** What is wrong with a plan, a sentence each; empty when it keeps every rule. */
    public static List<String> problems(PlanQuestion question, SeasonPlan plan) {
        return problems(question, plan, Units.METRIC);
    }

    /** The same for a reader of other units. */
    public static List<String> problems(PlanQuestion question, SeasonPlan plan, Units units) {
        PlanChecker checker = new PlanChecker(question, units);
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
                problem("A set-point is given for '%s', which is no mat.", span.mat());
                continue;
            }
            if (!mat.thermostat().contains(span.celsius())) {
                problem(
                        "The mat '%s' is set to %s, which its thermostat cannot hold.",
                        mat.id(), degrees(span.celsius()));
            }
            for (LocalDate day : daysOfPlan(span.days())) {
                if (setPoints.put(span.mat() + "|" + day, span.celsius()) != null) {
                    problem("The mat '%s' has two set-points on %s.", mat.id(), day);
                }
            }
        }
    }

    private void fixedStay(FixedStay stay) {
        String name = "The fixed stay '" + stay.id() + "'";
        takeQuarters(name, (stay.lit() ? "lit|" : "mat|") + stay.surface(), stay.place(), stay.slot(), stay.days());
        if (stay.band() == null) {
            return;
        }
        for (LocalDate day : daysOfPlan(stay.days())) {
            warm(stay.surface(), day);
            Double celsius = setPoints.get(stay.surface() + "|" + day);
            if (celsius == null || !stay.band().contains(celsius)) {
                problem("%s lies at %s on %s, outside its band.", name, degrees(celsius), day);
                return;
            }
        }
    }

    private void placedStay(PlacedStay stay) {
        String name = "The request '" + stay.request() + "'";
        Request request = requests.get(stay.request());
        PlannedMat mat = mats.get(stay.mat());
        if (request == null || mat == null) {
            problem("%s is put on '%s'; one of them is not in the file.", name, stay.mat());
            return;
        }
        if (stay.place() < 1 || stay.place() > mat.places()) {
            problem("%s lies on place %d of '%s', which has %d.", name, stay.place(), mat.id(), mat.places());
        }
        if (stay.slot().quarters() != request.quarters()) {
            problem("%s takes %d quarters and asked for %d.", name, stay.slot().quarters(), request.quarters());
        }
        if (stay.days().from().isBefore(request.earliest())
                || stay.days().from().isAfter(request.latest())) {
            problem("%s begins on %s, outside its window.", name, stay.days().from());
        }
        if (!question.days().contains(stay.days())) {
            problem(
                    "%s lies there from %s to %s, beyond the days of the plan.",
                    name, stay.days().from(), stay.days().to());
        }
        if (request.needsLight() && mat.light() == LightAbove.NONE) {
            problem("%s needs light to come up, and '%s' has none.", name, mat.id());
        }
        takeQuarters(name, "mat|" + mat.id(), stay.place(), stay.slot(), stay.days());
        warmEnoughAndLongEnough(name, request, mat, stay.days());
        lightAfterTheMat(name, request, stay);
    }

    private void warmEnoughAndLongEnough(String name, Request request, PlannedMat mat, DayRange days) {
        Set<Double> degrees = new HashSet<>();
        for (LocalDate day : daysOfPlan(days)) {
            warm(mat.id(), day);
            if (!mat.servesOn(day)) {
                problem("%s lies on '%s' on %s, when that mat is out of service.", name, mat.id(), day);
            }
            Double celsius = setPoints.get(mat.id() + "|" + day);
            if (celsius == null || !request.band().contains(celsius)) {
                problem("%s lies at %s on %s, outside its band.", name, degrees(celsius), day);
                return;
            }
            degrees.add(celsius);
        }
        for (double celsius : degrees) {
            if (request.daysAt(WholeDegree.of(celsius)).orElse(0) != days.length()) {
                problem(
                        "%s lies there for %d days, which is not its time at %s.",
                        name, days.length(), degrees(celsius));
            }
        }
    }

    private void lightAfterTheMat(String name, Request request, PlacedStay stay) {
        Request.Light asked = request.light();
        PlacedStay.LitStay light = stay.light();
        if (light != null) {
            Integer places = litPlaces.get(light.shelf());
            if (places == null || light.place() > places) {
                problem("%s goes on to a lit place that does not exist.", name);
            }
            takeQuarters(name, "lit|" + light.shelf(), light.place(), light.slot(), light.days());
        }
        boolean wanted = asked != null
                && question.litShelves() != null
                && stay.days().to().isBefore(question.days().to());
        if (wanted && light == null) {
            problem("%s has no lit place when it comes off the mat.", name);
        } else if (asked != null && light != null) {
            boolean rightAfter = light.days().from().equals(stay.days().to());
            LocalDate end = stay.days().to().plusDays(asked.days());
            boolean longEnough = light.days().to().equals(end)
                    || (end.isAfter(question.days().to())
                            && light.days().to().equals(question.days().to()));
            if (!rightAfter || !longEnough || light.slot().quarters() != asked.quarters()) {
                problem("%s has a lit place that is not what it asked for.", name);
            }
        }
    }

    private void takeQuarters(String name, String surface, int place, Slot slot, DayRange days) {
        for (LocalDate day : daysOfPlan(days)) {
            for (int quarter = slot.firstQuarter(); quarter < slot.firstQuarter() + slot.quarters(); quarter++) {
                String other = taken.putIfAbsent("%s|%d|%d|%s".formatted(surface, place, quarter, day), name);
                if (other != null) {
                    problem(
                            "%s and %s both lie on quarter %d of place %d of '%s' on %s.",
                            other, name, quarter, place, surface.substring(4), day);
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
                problem("The circuit '%s' carries %d watts on %s, above 80 %% of its rating.", circuit.id(), load, day);
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
                problem("The request '%s' is not in the file.", id);
            } else if (!answered.add(id)) {
                problem("The request '%s' is answered twice.", id);
            }
        }
        question.requests().stream()
                .filter(request -> !answered.contains(request.id()))
                .forEach(request -> problem("The request '%s' is neither placed nor refused.", request.id()));
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

    private String degrees(@Nullable Double celsius) {
        return celsius == null ? "no set-point" : units.temperature(celsius);
    }

    // Its words are always literals of this class.
    @SuppressWarnings("AnnotateFormatMethod")
    private void problem(String words, Object... values) {
        problems.add(words.formatted(values));
    }
}
