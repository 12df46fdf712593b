package warmshelf.plan.engine;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import warmshelf.plan.engine.search.RatedPlan;
import warmshelf.shelf.WholeDegree;
import warmshelf.words.Numbers;
import warmshelf.words.Units;

/** What {@code plan} prints. */
final class PlanAnswer {
    private PlanAnswer() {}

    record Choice(int choice, int members, int met) {}

    static Map<String, Object> of(PlanQuestion question, RatedPlan outcome) {
        SeasonPlan plan = outcome.plan();
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("placed", plan.placed().stream().map(PlanAnswer::placed).toList());
        answer.put("setPoints", plan.setPoints().stream().map(PlanAnswer::span).toList());
        answer.put("refused", plan.refused().stream().map(PlanAnswer::refused).toList());
        answer.put("placedAtMost", outcome.placedAtMost());
        answer.put("optimal", outcome.optimal());
        answer.put("shiftDays", outcome.shiftDays());
        answer.put("seconds", Numbers.hundredths(outcome.seconds()));
        answer.put("words", words(outcome, question.requests().size()));
        answer.put("choices", choices(question, plan));
        answer.put("cutShort", outcome.cutShort());
        return answer;
    }

    /** How good the plan is, for people. */
    static String words(RatedPlan outcome, int requests) {
        String placed = "%,d of %,d requests have a place".formatted(outcome.placed(), requests);
        if (outcome.placed() >= outcome.placedAtMost()) {
            return placed + "; no plan can place more.";
        }
        int atMost = outcome.placedAtMost();
        int percent = (int) Math.ceil(100.0 * (atMost - outcome.placed()) / atMost - 1e-9);
        return "%s; no plan can place more than %,d, so this is within %d %% of the best possible."
                .formatted(placed, atMost, percent);
    }

    private static List<Choice> choices(PlanQuestion question, SeasonPlan plan) {
        Map<String, Request> byId = new LinkedHashMap<>();
        question.requests().forEach(request -> byId.put(request.id(), request));
        Map<Integer, Map<String, Boolean>> met = new TreeMap<>();
        byId.values()
                .forEach(request -> met.computeIfAbsent(request.choice(), none -> new TreeMap<>())
                        .putIfAbsent(request.member(), false));
        plan.placed().forEach(stay -> {
            Request request = byId.get(stay.request());
            if (request != null) {
                met.computeIfAbsent(request.choice(), none -> new TreeMap<>()).put(request.member(), true);
            }
        });
        return met.entrySet().stream()
                .map(choice -> new Choice(choice.getKey(), choice.getValue().size(), (int)
                        choice.getValue().values().stream().filter(yes -> yes).count()))
                .toList();
    }

    private record Unplaced(String request, String reason, String change) {}

    /** As the file is: in degrees Celsius. */
    private static Unplaced refused(Refused refused) {
        return new Unplaced(
                refused.request(),
                refused.reason().words(Units.METRIC),
                refused.change().words(Units.METRIC));
    }

    private static Map<String, Object> placed(PlacedStay stay) {
        Map<String, Object> placed = new LinkedHashMap<>();
        placed.put("request", stay.request());
        placed.put("mat", stay.mat());
        lie(placed, stay.place(), JsonFields.numbers(stay.slot()), stay.days());
        PlacedStay.@Nullable LitStay light = stay.light();
        if (light != null) {
            Map<String, Object> lit = new LinkedHashMap<>();
            lit.put("litShelf", light.shelf());
            lie(lit, light.place(), JsonFields.numbers(light.slot()), light.days());
            placed.put("light", lit);
        }
        return placed;
    }

    private static void lie(Map<String, Object> into, int place, List<Integer> quarters, DayRange days) {
        into.put("place", place);
        into.put("quarters", quarters);
        into.put("from", days.from());
        into.put("to", days.to());
    }

    private record Span(String mat, LocalDate from, LocalDate to, int celsius) {}

    private static Span span(SetPointSpan span) {
        return new Span(span.mat(), span.days().from(), span.days().to(), WholeDegree.of(span.celsius()));
    }
}
