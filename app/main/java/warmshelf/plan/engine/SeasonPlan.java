package warmshelf.plan.engine;

import java.util.List;

/** Who lies where and how warm, and who does not: every request is either placed or refused. */
public record SeasonPlan(List<PlacedStay> placed, List<SetPointSpan> setPoints, List<Refused> refused) {
    public SeasonPlan {
        placed = List.copyOf(placed);
        setPoints = List.copyOf(setPoints);
        refused = List.copyOf(refused);
    }
}
