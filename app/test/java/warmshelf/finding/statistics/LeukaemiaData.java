package warmshelf.finding.statistics;

import java.util.Arrays;
import java.util.List;

/**
 * The 42 weeks of remission of Freireich et al. 1963 as given by Gehan 1965 and in Introductory Biostatistics, example 11.1; a minus
 * marks those who were still in remission.
 */
final class LeukaemiaData {
    static final Arm TREATED =
            arm("6-MP", 6, 6, 6, 7, 10, 13, 16, 22, 23, -6, -9, -10, -11, -17, -19, -20, -25, -32, -32, -34, -35);
    static final Arm PLACEBO = arm("placebo", 1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23);

    private LeukaemiaData() {}

    private static Arm arm(String name, int... weeks) {
        List<SproutingTime> times = Arrays.stream(weeks)
                .mapToObj(week -> week < 0 ? SproutingTime.notBy(-week) : SproutingTime.at(week))
                .toList();
        return new Arm(name, times);
    }
}
