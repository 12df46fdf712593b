package warmshelf.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import warmshelf.allocation.Obstacle;
import warmshelf.allocation.RackHold;
import warmshelf.plan.engine.NoPlaceReason;
import warmshelf.plan.engine.PlaceChange;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.PlanChecker;
import warmshelf.plan.engine.PlanProblem;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.Refused;
import warmshelf.plan.engine.SeasonPlan;
import warmshelf.words.Units;

/**
 * A plan held against the records as they stand now, which may have moved on since it was made: requests that no longer wait
 * have dropped out of it, those that came in since are not placed, and what is wrong with it now is said in sentences.
 */
record PlanDraft(SeasonQuestion asked, SeasonPlan plan, List<PlanProblem> problems, Units units) {

    /** @param units in which it says what is wrong */
    static PlanDraft of(SeasonQuestion asked, SeasonPlan kept, Units units) {
        PlanQuestion question = asked.question();
        Set<String> open = new HashSet<>(asked.asked().keySet());
        List<PlacedStay> placed = kept.placed().stream()
                .filter(stay -> open.remove(stay.request()))
                .toList();
        List<Refused> refused = new ArrayList<>(
                kept.refused().stream().filter(no -> open.remove(no.request())).toList());
        question.requests().stream()
                .filter(request -> open.contains(request.id()))
                .forEach(request -> refused.add(
                        new Refused(request.id(), new NoPlaceReason.CameLater(), new PlaceChange.PlanAnew())));
        return judged(asked, placed, refused, new SetPointDays(question, kept.setPoints()), units);
    }

    private static PlanDraft judged(
            SeasonQuestion asked, List<PlacedStay> placed, List<Refused> refused, SetPointDays setPoints, Units units) {
        setPoints.keepTo(asked.question().fixed(), placed);
        setPoints.standAs(asked.standing(), asked.question().fixed());
        SeasonPlan plan = new SeasonPlan(placed, setPoints.spans(), refused);
        return new PlanDraft(asked, plan, PlanChecker.problems(asked.question(), plan), units);
    }

    /** Clashes in words that people understand. */
    List<String> clashes() {
        return worded(problems);
    }

    Optional<PlacedStay> placed(String request) {
        return plan.placed().stream()
                .filter(stay -> stay.request().equals(request))
                .findFirst();
    }

    /** The set-points of each day on which something placed lies on its mat, by its sowing. */
    Map<UUID, SortedMap<LocalDate, Double>> warmth() {
        Map<UUID, SortedMap<LocalDate, Double>> warmth = new HashMap<>();
        for (PlacedStay stay : plan.placed()) {
            SortedMap<LocalDate, Double> days = new TreeMap<>();
            plan.setPoints().stream()
                    .filter(span -> span.mat().equals(stay.mat()) && span.days().overlaps(stay.days()))
                    .forEach(span -> stay.days()
                            .from()
                            .datesUntil(stay.days().to())
                            .filter(span.days()::contains)
                            .forEach(day -> days.put(day, span.celsius())));
            Optional.ofNullable(asked.asked().get(stay.request()))
                    .ifPresent(request -> warmth.put(request.sowing().id(), days));
        }
        return warmth;
    }

    /** Takes a placement out. */
    PlanDraft without(String request, NoPlaceReason reason) {
        List<Refused> refused = new ArrayList<>(plan.refused());
        refused.add(new Refused(request, reason, new PlaceChange.NothingProposed()));
        return judged(asked, others(request), refused, new SetPointDays(asked.question(), plan.setPoints()), units);
    }

    /**
     * Puts a request somewhere else, or somewhere at all.
     *
     * @param celsius the set-point on days on which the mat has none yet
     */
    PlanDraft with(PlacedStay stay, double celsius) {
        List<PlacedStay> placed = new ArrayList<>(others(stay.request()));
        SetPointDays setPoints = new SetPointDays(asked.question(), plan.setPoints());
        // What only the old placement needed is gone before the new one asks for its own.
        setPoints.keepTo(asked.question().fixed(), placed);
        setPoints.fill(stay.mat(), stay.days(), celsius);
        placed.add(stay);
        List<Refused> refused = plan.refused().stream()
                .filter(no -> !no.request().equals(stay.request()))
                .toList();
        return judged(asked, placed, refused, setPoints, units);
    }

    /** What is wrong here and was not wrong before. */
    List<String> clashesSince(PlanDraft before) {
        List<PlanProblem> since = new ArrayList<>(problems);
        since.removeAll(before.problems);
        return worded(since);
    }

    private List<String> worded(List<PlanProblem> some) {
        return some.stream().map(this::words).distinct().toList();
    }

    /** A mat of a held rack serves on no day; the reason is the rack's. */
    private String words(PlanProblem problem) {
        if (!(problem instanceof PlanProblem.MatOut out)) {
            return problem.words(asked.names(), units);
        }
        RackHold hold = asked.held().get(out.mat());
        return hold == null
                ? problem.words(asked.names(), units)
                : new PlanRefusal.InTheWay(asked.names().of(out.who()), new Obstacle.RackTakesNothing(hold))
                        .words(units);
    }

    /** The places under a light that are free when a request is not counted. */
    LightFit litPlacesWithout(String request) {
        return new LightFit(asked.question(), others(request));
    }

    private List<PlacedStay> others(String request) {
        return plan.placed().stream()
                .filter(stay -> !stay.request().equals(request))
                .toList();
    }
}
