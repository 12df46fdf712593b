package warmshelf.finding;

import java.util.List;
import java.util.OptionalDouble;
import warmshelf.finding.statistics.Arm;
import warmshelf.finding.statistics.GerminationCurve;
import warmshelf.finding.statistics.GerminationSpeed;
import warmshelf.finding.statistics.ObservedShare;

/**
 * What came of the seeds that were sprouted in one way, over all its blocks.
 *
 * @param half the day by which half of those that sprouted had
 * @param meanTime the mean day of counting of those that sprouted, as laboratories have it
 * @param spread the standard deviation of those days
 */
public record WayFound(
        String name,
        ObservedShare sprouted,
        GerminationCurve curve,
        OptionalDouble half,
        OptionalDouble meanTime,
        OptionalDouble spread) {

    /** Of one way's arms in the blocks, at least one. */
    public static WayFound of(List<Arm> arms) {
        Arm all = new Arm(
                arms.get(0).name(),
                arms.stream().flatMap(arm -> arm.times().stream()).toList());
        GerminationCurve curve = all.curve();
        GerminationSpeed speed = GerminationSpeed.of(all.times());
        return new WayFound(
                all.name(), all.sprouted(), curve, curve.halfOfThoseThatCame(), speed.meanTime(), speed.spread());
    }
}
