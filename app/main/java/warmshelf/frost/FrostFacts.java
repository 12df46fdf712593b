package warmshelf.frost;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import warmshelf.frost.FrostPage.Fact;

/** What a frost climate rests on, figure by figure, in words. */
final class FrostFacts {
    private static final double FEET_PER_METRE = 3.28084;

    private FrostFacts() {}

    static List<Fact> of(FrostClimate climate) {
        FrostEvidence evidence = climate.evidence();
        return List.of(
                once("Grid points used (latitude, longitude)", String.join("; ", evidence.cells())),
                once("Elevation those dates hold for", elevation(evidence.referenceElevationM())),
                once("Elevation of this place", elevation(climate.elevationM()) + uncertainty(evidence.elevationSdM())),
                once("Nearest station with published dates", whole(evidence.nearestStationKm()) + " km away"),
                both(climate, "Change for each 100 m upward", season -> signed(season.daysPer100M())),
                both(climate, "Dates moved for this elevation by", season -> signed(season.adjustmentDays())),
                both(climate, "Share of years with any frost", season -> whole(100 * season.anyFrost()) + " %"),
                both(climate, "Scatter from year to year", season -> spread(season.yearSdDays())),
                both(climate, "Scatter between stations nearby", season -> spread(season.stationScatterDays())),
                both(climate, "Scatter from the elevation not being exact", season -> spread(season.elevationSdDays())),
                both(climate, "All scatter together", season -> spread(season.sdDays())));
    }

    private static Fact once(String name, String words) {
        return new Fact(name, words, "");
    }

    private static Fact both(FrostClimate climate, String name, Function<FrostSeason, String> words) {
        return new Fact(name, words.apply(climate.spring()), words.apply(climate.autumn()));
    }

    private static String elevation(double metres) {
        return whole(metres) + " m (" + whole(metres * FEET_PER_METRE) + " ft)";
    }

    private static String uncertainty(double sdMetres) {
        return sdMetres == 0 ? "" : ", give or take " + whole(sdMetres) + " m";
    }

    private static String signed(double days) {
        double tenths = Math.round(days * 10) / 10.0;
        if (tenths == 0) {
            return "no change";
        }
        return String.format(Locale.ROOT, "%.1f days %s", Math.abs(tenths), tenths > 0 ? "later" : "earlier");
    }

    private static String spread(double days) {
        return String.format(Locale.ROOT, "± %.1f days", days);
    }

    private static String whole(double value) {
        return String.format(Locale.ROOT, "%,d", Math.round(value));
    }
}
