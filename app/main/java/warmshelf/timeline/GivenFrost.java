package warmshelf.timeline;

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
            throw new BadInput("Where the plants will stand is needed: --postcode 55811, or --last-frost 2027-05-24.");
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
            throw new BadInput(
                    "--first-frost goes with --last-frost; with --postcode both dates come from the postcode.");
        }
        FrostDates dates = at(place, season, risk);
        LocalDate last = dates.lastSpringAtRisk();
        return new Known(
                dates,
                last,
                OptionalDouble.of(risk),
                last == null
                        ? "Frost comes after no day of spring with the risk that is accepted, at %s."
                                .formatted(place.name())
                        : "After %s a frost still comes in %s of 100 springs at %s."
                                .formatted(DayWords.dayOfMonth(last), Math.round(100 * risk), place.name()));
    }

    /** A date alone: nobody can say what it carries. */
    private static Known ofDate(FrostDates dates, LocalDate last) {
        return new Known(
                dates,
                last,
                OptionalDouble.empty(),
                ("What risk %s carries is not known. A last frost date that is passed on is usually the average: after it"
                                + " every other spring still has a frost. With --postcode beside it the risk is told.")
                        .formatted(DayWords.dayOfMonth(last)));
    }

    private static Known ofDateAtPlace(FrostDates dates, LocalDate last, PostcodePlace place, int season) {
        double chance = FrostClimates.at(place).chanceOfFrostAfter(last, season);
        return new Known(
                dates,
                last,
                OptionalDouble.of(chance),
                "After %s a frost still comes in about %d of 100 springs at %s, by the frost evidence for it."
                        .formatted(DayWords.dayOfMonth(last), Math.round(100 * chance), place.name()));
    }

    private FrostDates asGiven(LocalDate last, int season) {
        if (last.getYear() != season) {
            throw new BadInput("--last-frost was %s, which is not in the season %d; give a date in %d."
                    .formatted(last, season, season));
        }
        if (firstFrost == null) {
            return FrostDates.of(last, null);
        }
        LocalDate first = Given.date("--first-frost", firstFrost);
        if (!first.isAfter(last) || first.isAfter(last.plusYears(1))) {
            throw new BadInput(
                    "--first-frost was %s; a date after the last frost, %s, and within a year of it is accepted."
                            .formatted(first, last));
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
        String offer = near.isEmpty() ? "" : " Did you mean " + String.join("; ", near) + "?";
        return new BadInput(
                "There is no postcode '%s' in the table; a US postcode of five digits, or --last-frost DATE, is accepted.%s"
                        .formatted(Given.shown(code), offer));
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
