package warmshelf.timeline;

import static warmshelf.timeline.TimelineSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import warmshelf.frost.FrostClimate;

/**
 * Days with one chance of frost: in spring that another one comes after them, in autumn that the first one has come by them.
 *
 * @param level how dark it is shaded: 3 the darkest
 * @param chance in words
 * @param from the first day of this chance
 * @param to the first day with another
 */
public record FrostRisk(Side side, int level, String chance, LocalDate from, LocalDate to) {
    private static final List<Level> LEVELS = List.of(
            new Level(1, SAY.inOneToThreeYears(), 0.1),
            new Level(2, SAY.inThreeToFiveYears(), 0.3),
            new Level(3, SAY.inMostYears(), 0.5));

    /** The half of the year. */
    public enum Side {
        SPRING,
        AUTUMN
    }

    /** @param risk the share of years from which on the level counts */
    private record Level(int level, String chance, double risk) {}

    /** A day on which a level begins or ends. */
    private record Turn(Level level, LocalDate day) {}

    /** The shades of the seasons that begin with a year's spring and reach to a day, in the order of their days. */
    static List<FrostRisk> of(FrostClimate climate, int year, LocalDate until) {
        List<FrostRisk> risks = new ArrayList<>();
        List<Turn> springs = springs(climate, year);
        // How long frost has been likely before the first spring is of no concern: the picture begins somewhere in it.
        springs.stream()
                .findFirst()
                .ifPresent(first -> falling(risks, springs, first.day().minusYears(1)));
        for (int each = year; ; each++) {
            List<Turn> autumns = autumns(climate, each);
            if (autumns.isEmpty() || !autumns.get(0).day().isBefore(until)) {
                return risks;
            }
            List<Turn> next = springs(climate, each + 1);
            LocalDate darkest = autumns.get(autumns.size() - 1).day();
            LocalDate turn = next.stream()
                    .findFirst()
                    .map(ends -> midway(darkest, ends.day()))
                    .orElseGet(() -> darkest.plusMonths(6));
            rising(risks, autumns, turn);
            falling(risks, next, turn);
        }
    }

    private static LocalDate midway(LocalDate one, LocalDate other) {
        return one.plusDays(Math.max(0, (other.toEpochDay() - one.toEpochDay()) / 2));
    }

    /** The darkest first; each ends on its day. The day itself still has that chance of a frost after it. */
    private static List<Turn> springs(FrostClimate climate, int year) {
        List<Turn> turns = new ArrayList<>();
        for (int i = LEVELS.size() - 1; i >= 0; i--) {
            add(
                    turns,
                    LEVELS.get(i),
                    climate.lastSpringFrost(LEVELS.get(i).risk(), year).map(last -> last.plusDays(1)));
        }
        return turns;
    }

    /** The lightest first; each begins on its day. */
    private static List<Turn> autumns(FrostClimate climate, int year) {
        List<Turn> turns = new ArrayList<>();
        LEVELS.forEach(level -> add(turns, level, climate.firstAutumnFrost(level.risk(), year)));
        return turns;
    }

    private static void add(List<Turn> turns, Level level, Optional<LocalDate> day) {
        day.ifPresent(found -> turns.add(new Turn(level, found)));
    }

    private static void falling(List<FrostRisk> risks, List<Turn> ends, LocalDate since) {
        LocalDate from = since;
        for (Turn end : ends) {
            risks.add(
                    new FrostRisk(Side.SPRING, end.level().level(), end.level().chance(), from, end.day()));
            from = end.day();
        }
    }

    private static void rising(List<FrostRisk> risks, List<Turn> begins, LocalDate until) {
        for (int i = 0; i < begins.size(); i++) {
            Turn begin = begins.get(i);
            LocalDate to = i + 1 < begins.size() ? begins.get(i + 1).day() : until;
            risks.add(new FrostRisk(
                    Side.AUTUMN, begin.level().level(), begin.level().chance(), begin.day(), to));
        }
    }

    /** The last day of this chance. */
    public LocalDate until() {
        return to.minusDays(1);
    }
}
