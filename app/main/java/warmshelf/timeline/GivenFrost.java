package warmshelf.timeline;

import static warmshelf.timeline.TimelineSentences.SAY;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;
import warmshelf.Given;
import warmshelf.frost.FrostClimate;
import warmshelf.frost.FrostClimates;
import warmshelf.frost.PostcodePlace;
import warmshelf.frost.Postcodes;
import warmshelf.frost.Threshold;
import warmshelf.frost.evidence.ThresholdShift;
import warmshelf.frost.station.Side;
import warmshelf.words.DayWords;

/** The frost dates that a command was given: by postcode, or as dates; with both, the dates count and the place says their risk. */
record GivenFrost(
        String country,
        @Nullable String postcode,
        @Nullable String lastFrost,
        @Nullable String firstFrost) {

    /**
     * What was given, ready to count from.
     *
     * @param lastFrost the last spring frost that is counted from; null: none to fear
     * @param chance 0 to 1, that a frost comes after that day all the same; empty: not known
     * @param words what that means
     */
    record Known(FrostDates dates, @Nullable LocalDate lastFrost, OptionalDouble chance, String words) {}

    Known known(int season, double risk) {
        if (postcode == null && lastFrost == null) {
            throw new BadInput(SAY.whereIsNeeded());
        }
        if (lastFrost == null) {
            return ofPlace(place(String.valueOf(postcode)), season, risk);
        }
        LocalDate last = Given.date("--last-frost", lastFrost);
        FrostDates dates = asGiven(last, season);
        return postcode == null ? ofDate(dates, last) : ofDateAtPlace(dates, last, place(postcode), season);
    }

    private Known ofPlace(PostcodePlace place, int season, double risk) {
        if (firstFrost != null) {
            throw new BadInput(SAY.firstFrostNeedsLast());
        }
        FrostDates dates = at(place, season, risk);
        LocalDate last = dates.lastSpringAtRisk();
        return new Known(
                dates,
                last,
                OptionalDouble.of(risk),
                last == null
                        ? SAY.noFrostAtRisk(place.name())
                        : SAY.frostAfter(DayWords.dayOfMonth(last), Math.round(100 * risk), place.name()));
    }

    /** A date alone: nobody can say what it carries. */
    private static Known ofDate(FrostDates dates, LocalDate last) {
        return new Known(dates, last, OptionalDouble.empty(), SAY.riskNotKnown(DayWords.dayOfMonth(last)));
    }

    private static Known ofDateAtPlace(FrostDates dates, LocalDate last, PostcodePlace place, int season) {
        double chance = FrostClimates.at(place).chanceOfFrostAfter(last, season);
        return new Known(
                dates,
                last,
                OptionalDouble.of(chance),
                SAY.frostAfterByEvidence(DayWords.dayOfMonth(last), Math.round(100 * chance), place.name()));
    }

    private FrostDates asGiven(LocalDate last, int season) {
        if (last.getYear() != season) {
            throw new BadInput(SAY.lastFrostOfOtherYear(last, String.valueOf(season)));
        }
        if (firstFrost == null) {
            return FrostDates.of(last, null);
        }
        LocalDate first = Given.date("--first-frost", firstFrost);
        if (!first.isAfter(last) || first.isAfter(last.plusYears(1))) {
            throw new BadInput(SAY.firstFrostUnfit(first, last));
        }
        return FrostDates.of(last, first);
    }

    private PostcodePlace place(String code) {
        return Postcodes.bundled().find(country, code).orElseThrow(() -> unknown(code));
    }

    private static BadInput unknown(String code) {
        List<String> near = Postcodes.bundled().similarTo(code).stream()
                .map(PostcodePlace::name)
                .toList();
        return new BadInput(
                near.isEmpty()
                        ? SAY.noSuchPostcode(Given.shown(code))
                        : SAY.noSuchPostcodeButNear(Given.shown(code), String.join("; ", near)));
    }

    private static FrostDates at(PostcodePlace place, int season, double risk) {
        FrostClimate climate = FrostClimates.at(place);
        FrostClimate killing = new FrostClimate(
                climate.place(),
                climate.latitude(),
                climate.longitude(),
                climate.elevationM(),
                ThresholdShift.moved(Side.SPRING, Threshold.KILLING, climate.spring()),
                ThresholdShift.moved(Side.AUTUMN, Threshold.KILLING, climate.autumn()),
                climate.evidence());
        return FrostDates.of(climate, killing, risk, season);
    }
}
