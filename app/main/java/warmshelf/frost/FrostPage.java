package warmshelf.frost;

import static warmshelf.frost.FrostSentences.SAY;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Hardiness;
import warmshelf.frost.garden.CorrectionWords;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;
import warmshelf.words.Units;

/**
 * What the frost page shows.
 *
 * @param view the dates and what they rest on; null when the place is not known
 * @param similar postcodes that may have been meant
 */
public record FrostPage(int season, @Nullable View view, List<PostcodePlace> similar) {
    /** Nine chances in ten lie within so many standard deviations of a normal distribution. */
    private static final double NINE_IN_TEN = 1.645;

    /**
     * The dates of one place.
     *
     * @param sureSentence how far the day may be off for one garden
     * @param measured whether it lies where it was measured how far off such dates are
     * @param corrected what a person corrected; null: nothing
     */
    public record View(
            String place,
            List<Risk> risks,
            String springSentence,
            String autumnSentence,
            String sureSentence,
            @Nullable String corrected,
            List<Plants> plants,
            List<Cold> colds,
            List<Source> sources,
            List<Fact> facts,
            List<String> notes,
            boolean measured,
            String caution,
            FrostChart springChart,
            FrostChart autumnChart) {}

    /**
     * The two dates at one risk.
     *
     * @param spring day after which that share of springs still has a frost; null when fewer have any
     * @param autumn day before which that share of autumns already had one; null when fewer have any
     */
    public record Risk(
            int percent,
            String words,
            @Nullable LocalDate spring,
            @Nullable LocalDate autumn) {
        static Risk of(FrostClimate climate, double risk, int season) {
            int percent = (int) Math.round(100 * risk);
            return new Risk(
                    percent,
                    percent == 50 ? SAY.evenChance() : SAY.inTen(percent / 10),
                    climate.lastSpringFrost(risk, season).orElse(null),
                    climate.firstAutumnFrost(risk, season).orElse(null));
        }
    }

    /** What a hardiness class means here: the risk the reader accepts for it, and the day it has fallen to that. */
    public record Plants(
            String hardiness,
            String examples,
            int percent,
            boolean usual,
            @Nullable LocalDate spring) {}

    /** The dates of light, plain or killing frost: on average, and at one in ten. */
    public record Cold(String name, double celsius, String meaning, Risk average, Risk oneInTen) {}

    /**
     * A line of the evidence: the grid, a station or a thermometer.
     *
     * @param spring its own last frost on average, moved by {@code moved} days for the place; null: it has none
     * @param share how much it counts, in whole per cent
     */
    public record Source(
            String name,
            String kind,
            @Nullable Double distanceKm,
            double elevationM,
            @Nullable LocalDate spring,
            @Nullable LocalDate autumn,
            @Nullable String moved,
            long share) {}

    /** One line of what was done; what holds for both seasons is told once, in {@code spring}, with an empty {@code autumn}. */
    public record Fact(String name, String spring, String autumn) {}

    /** Where nothing is known. */
    static FrostPage unknown(int season, List<PostcodePlace> similar) {
        return new FrostPage(season, null, similar);
    }

    /**
     * The page of a place.
     *
     * @param at its climate at each threshold; that of 0 °C must be there
     * @param accepted the risks the reader has chosen for classes of plants, where not the usual ones
     */
    static FrostPage of(
            Function<Threshold, FrostClimate> at, int season, Map<Hardiness, Double> accepted, Units units) {
        FrostClimate climate = at.apply(Threshold.FROST);
        return new FrostPage(
                season,
                new View(
                        climate.place(),
                        Stream.of(0.5, 0.3, 0.1)
                                .map(risk -> Risk.of(climate, risk, season))
                                .toList(),
                        spring(climate, season),
                        autumn(climate, season),
                        sure(climate),
                        Optional.ofNullable(climate.evidence().corrected())
                                .map(CorrectionWords::sentence)
                                .orElse(null),
                        plants(climate, season, accepted),
                        Arrays.stream(Threshold.values())
                                .map(threshold -> cold(threshold, at.apply(threshold), season))
                                .toList(),
                        FrostSources.of(climate, season),
                        FrostFacts.of(climate, units),
                        climate.evidence().notes().stream()
                                .map(FrostNote::words)
                                .toList(),
                        climate.evidence().surface() != null,
                        new FrostNote.FrostPocket().words(),
                        FrostChart.spring(climate.spring(), season),
                        FrostChart.autumn(climate.autumn(), season)),
                List.of());
    }

    private static String spring(FrostClimate climate, int season) {
        return climate.lastSpringFrost(0.1, season)
                .map(day -> SAY.oneSpringInTen(DayWords.dayOfMonth(day)))
                .orElseGet(SAY::noSpringInTen);
    }

    private static String autumn(FrostClimate climate, int season) {
        return climate.firstAutumnFrost(0.1, season)
                .map(day -> SAY.oneAutumnInTen(DayWords.dayOfMonth(day)))
                .orElseGet(SAY::noAutumnInTen);
    }

    private static String sure(FrostClimate climate) {
        long days = Math.round(NINE_IN_TEN * climate.spring().placeSdDays());
        if (days == 0) {
            return SAY.knownDates();
        }
        return SAY.howSure(days == 1 ? SAY.aDay() : Counted.days(days));
    }

    private static List<Plants> plants(FrostClimate climate, int season, Map<Hardiness, Double> accepted) {
        return Arrays.stream(Hardiness.values())
                .map(hardiness -> {
                    double risk = accepted.getOrDefault(hardiness, hardiness.usualRisk());
                    return new Plants(
                            hardiness.words(),
                            hardiness.examples(),
                            (int) Math.round(100 * risk),
                            !accepted.containsKey(hardiness),
                            climate.lastSpringFrost(risk, season).orElse(null));
                })
                .toList();
    }

    private static Cold cold(Threshold threshold, FrostClimate climate, int season) {
        return new Cold(
                threshold.words(),
                threshold.celsius(),
                threshold.meaning(),
                Risk.of(climate, 0.5, season),
                Risk.of(climate, 0.1, season));
    }
}
