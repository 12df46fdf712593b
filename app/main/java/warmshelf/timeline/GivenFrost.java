package warmshelf.timeline;

import java.time.LocalDate;
import java.util.List;
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

/** The frost dates that a command was given: by postcode, or as dates. */
record GivenFrost(
        String country,
        @Nullable String postcode,
        @Nullable String lastFrost,
        @Nullable String firstFrost) {

    FrostDates dates(int season, double risk) {
        if ((postcode == null) == (lastFrost == null)) {
            throw new BadInput(
                    "Where the plants will stand is needed once: --postcode 55811, or --last-frost 2027-05-24.");
        }
        if (lastFrost != null) {
            return asGiven(Given.date("--last-frost", lastFrost), season);
        }
        if (firstFrost != null) {
            throw new BadInput(
                    "--first-frost goes with --last-frost; with --postcode both dates come from the postcode.");
        }
        return at(place(String.valueOf(postcode)), season, risk);
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
