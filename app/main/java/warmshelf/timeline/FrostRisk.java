package warmshelf.timeline;

import static warmshelf.timeline.TimelineSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import warmshelf.frost.FrostClimate;

/**
 * Days of a spring after which another frost comes in about so many years.
 *
 * @param level how dark it is shaded: 3 the darkest
 * @param chance in words
 * @param to the first day with a smaller chance
 */
public record FrostRisk(int level, String chance, LocalDate to) {
    /** The shades of a season, the riskiest first; none where spring brings no frost. */
    static List<FrostRisk> of(FrostClimate climate, int year) {
        List<FrostRisk> risks = new ArrayList<>();
        add(risks, 3, SAY.inMostYears(), climate.lastSpringFrost(0.5, year));
        add(risks, 2, SAY.inThreeToFiveYears(), climate.lastSpringFrost(0.3, year));
        add(risks, 1, SAY.inOneToThreeYears(), climate.lastSpringFrost(0.1, year));
        return risks;
    }

    private static void add(List<FrostRisk> risks, int level, String chance, Optional<LocalDate> last) {
        // the day itself still has that chance of a frost after it
        last.ifPresent(day -> risks.add(new FrostRisk(level, chance, day.plusDays(1))));
    }

    /** The last day of this chance. */
    public LocalDate until() {
        return to.minusDays(1);
    }
}
