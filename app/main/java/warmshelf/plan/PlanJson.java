package warmshelf.plan;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Slot;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.Refused;
import warmshelf.plan.engine.SeasonPlan;
import warmshelf.plan.engine.SetPointSpan;

/** A plan as the text that the database keeps. */
final class PlanJson {
    static final SeasonPlan NOTHING = new SeasonPlan(List.of(), List.of(), List.of());

    private PlanJson() {}

    private record Days(String from, String to) {
        static Days of(DayRange days) {
            return new Days(days.from().toString(), days.to().toString());
        }

        DayRange range() {
            return new DayRange(LocalDate.parse(from), LocalDate.parse(to));
        }
    }

    private record Light(String shelf, int place, int quarter, int quarters, Days days) {}

    private record Placed(
            String request,
            String mat,
            int place,
            int quarter,
            int quarters,
            Days days,
            @Nullable Light light) {}

    private record Span(String mat, Days days, double celsius) {}

    private record Kept(List<Placed> placed, List<Span> setPoints, List<RefusedJson.Kept> refused) {}

    static String write(SeasonPlan plan) {
        Kept kept = new Kept(
                plan.placed().stream().map(PlanJson::placed).toList(),
                plan.setPoints().stream()
                        .map(span -> new Span(span.mat(), Days.of(span.days()), span.celsius()))
                        .toList(),
                plan.refused().stream().map(RefusedJson.Kept::of).toList());
        try {
            return RefusedJson.MAPPER.writeValueAsString(kept);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a plan could not be written as text", impossible);
        }
    }

    static SeasonPlan read(String text) {
        try {
            Kept kept = RefusedJson.MAPPER.readValue(text, Kept.class);
            List<Refused> refused = new ArrayList<>();
            for (RefusedJson.Kept each : kept.refused()) {
                refused.add(each.refused());
            }
            return new SeasonPlan(
                    kept.placed().stream().map(PlanJson::stay).toList(),
                    kept.setPoints().stream()
                            .map(span ->
                                    new SetPointSpan(span.mat(), span.days().range(), span.celsius()))
                            .toList(),
                    refused);
        } catch (JsonProcessingException broken) {
            throw new IllegalStateException("a plan was kept that cannot be read", broken);
        }
    }

    private static Placed placed(PlacedStay stay) {
        PlacedStay.LitStay light = stay.light();
        return new Placed(
                stay.request(),
                stay.mat(),
                stay.place(),
                stay.slot().firstQuarter(),
                stay.slot().quarters(),
                Days.of(stay.days()),
                light == null
                        ? null
                        : new Light(
                                light.shelf(),
                                light.place(),
                                light.slot().firstQuarter(),
                                light.slot().quarters(),
                                Days.of(light.days())));
    }

    private static PlacedStay stay(Placed kept) {
        Light light = kept.light();
        return new PlacedStay(
                kept.request(),
                kept.mat(),
                kept.place(),
                new Slot(kept.quarter(), kept.quarters()),
                kept.days().range(),
                light == null
                        ? null
                        : new PlacedStay.LitStay(
                                light.shelf(),
                                light.place(),
                                new Slot(light.quarter(), light.quarters()),
                                light.days().range()));
    }
}
