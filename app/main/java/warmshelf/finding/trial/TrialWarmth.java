package warmshelf.finding.trial;

import static warmshelf.finding.trial.TrialSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.UUID;
import java.util.function.Predicate;
import warmshelf.words.DayWords;
import warmshelf.words.Message;
import warmshelf.words.Units;

/**
 * Two ways of a block that would lie at another warmth, so that what they show would no longer be the difference that the trial asks
 * about.
 *
 * @param number of the trial
 * @param way the letter of one of them
 * @param celsius its set-point on the first day on which they differ
 * @param fellow the letter of the other
 */
public record TrialWarmth(int number, String way, double celsius, String fellow, double fellowCelsius, LocalDate day)
        implements Message {
    /** Less than this no thermostat keeps, and no seed tells. */
    private static final double LEAST_CELSIUS = 0.5;

    /**
     * A way of a block with the set-points of the days on which it lies on a mat.
     *
     * @param moves whether it is what is to be moved
     */
    record Lying(UUID trialId, int number, int block, String way, SortedMap<LocalDate, Double> celsius, boolean moves) {
        boolean isFellowOf(Lying other) {
            return trialId.equals(other.trialId) && block == other.block && !way.equals(other.way);
        }
    }

    /** Each two ways of a block of which at least one is moved and that differ on a day on which both lie on mats. */
    static List<TrialWarmth> of(List<Lying> ways) {
        return of(ways, day -> true);
    }

    /** The same where only some days change: on the others they are as they were. */
    static List<TrialWarmth> of(List<Lying> ways, Predicate<LocalDate> changes) {
        List<TrialWarmth> apart = new ArrayList<>();
        for (int one = 0; one < ways.size(); one++) {
            for (int other = one + 1; other < ways.size(); other++) {
                apart(ways.get(one), ways.get(other), changes).ifPresent(apart::add);
            }
        }
        return apart;
    }

    private static Optional<TrialWarmth> apart(Lying one, Lying other, Predicate<LocalDate> changes) {
        if (!one.isFellowOf(other) || !(one.moves || other.moves)) {
            return Optional.empty();
        }
        Lying moved = one.moves ? one : other;
        Lying fellow = one.moves ? other : one;
        return moved.celsius.entrySet().stream()
                .filter(day -> changes.test(day.getKey()))
                .filter(day -> differ(day, fellow.celsius))
                .findFirst()
                .map(day -> new TrialWarmth(
                        moved.number,
                        moved.way,
                        day.getValue(),
                        fellow.way,
                        fellow.celsius.getOrDefault(day.getKey(), day.getValue()),
                        day.getKey()));
    }

    private static boolean differ(Map.Entry<LocalDate, Double> day, Map<LocalDate, Double> fellow) {
        double other = fellow.getOrDefault(day.getKey(), day.getValue());
        return Math.abs(day.getValue() - other) >= LEAST_CELSIUS;
    }

    @Override
    public String words(Units units) {
        return SAY.otherWarmth(
                String.valueOf(number),
                way,
                units.fineTemperature(celsius),
                DayWords.day(day),
                fellow,
                units.fineTemperature(fellowCelsius));
    }
}
