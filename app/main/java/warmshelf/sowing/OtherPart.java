package warmshelf.sowing;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import warmshelf.timeline.SeasonPart;
import warmshelf.timeline.Seen;
import warmshelf.timeline.Step;
import warmshelf.timeline.Verdict;

/**
 * Another part of the season for which the same could be sown.
 *
 * @param from the first day of sowing
 * @param to the last
 * @param address of its plan
 */
public record OtherPart(SeasonPart part, LocalDate from, LocalDate to, String address) {

    /** Those of a plan that are still in time. */
    static List<OtherPart> of(AskPlan plan, SowingPlanner planner, LocalDate today, Map<String, String> typed) {
        Asking asking = plan.asking();
        return planner.parts(asking).stream()
                .filter(part -> part != asking.part())
                .map(part -> of(part, asking, plan.celsius(), planner, today, typed))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<OtherPart> of(
            SeasonPart part,
            Asking asking,
            int celsius,
            SowingPlanner planner,
            LocalDate today,
            Map<String, String> typed) {
        return planner.timeline(asking.in(part), celsius, today, Seen.nothing())
                .filter(timeline -> timeline.verdict() != Verdict.TOO_LATE)
                .flatMap(timeline -> timeline.step(Step.SOW))
                .map(sow -> new OtherPart(
                        part, sow.earliest(), sow.latest(), AskAddress.with("/ask/plan", typed, "part", part.word())));
    }
}
