package warmshelf.frost;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import warmshelf.frost.FrostPage.Fact;
import warmshelf.words.Numbers;
import warmshelf.words.Units;

/** What was done to a place's frost dates and how sure they are, figure by figure, in words. */
final class FrostFacts {
    private final FrostClimate climate;
    private final Units units;

    private FrostFacts(FrostClimate climate, Units units) {
        this.climate = climate;
        this.units = units;
    }

    static List<Fact> of(FrostClimate climate, Units units) {
        return new FrostFacts(climate, units).facts();
    }

    private List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        FrostEvidence evidence = climate.evidence();
        FrostEvidence.Surface surface = evidence.surface();
        facts.add(once(
                "Height of this place above the sea",
                units.height(climate.elevationM()) + uncertainty(evidence.elevationSdM())));
        if (surface != null) {
            facts.add(once("Grid points used (latitude, longitude)", String.join("; ", surface.cells())));
            facts.add(once("Height that the grid’s dates hold for", units.height(surface.referenceElevationM())));
            facts.add(once("Nearest station behind the grid", units.distance(surface.nearestStationKm()) + " away"));
        }
        facts.add(both("Change for each %s upward".formatted(hundred()), season -> signed(perHundred(season))));
        facts.add(both("Dates moved for this height by", season -> signed(season.adjustmentDays())));
        facts.add(both("Share of years with any frost", season -> whole(100 * season.anyFrost()) + " %"));
        facts.add(both("Scatter from year to year", season -> spread(season.yearSdDays())));
        facts.add(both("Scatter between places near each other", season -> spread(season.stationScatterDays())));
        facts.add(both("Scatter from the height not being exact", season -> spread(season.elevationSdDays())));
        facts.add(both("All scatter together", season -> spread(season.sdDays())));
        return facts;
    }

    private String hundred() {
        return units.inInches() ? "100 ft" : "100 m";
    }

    private double perHundred(FrostSeason season) {
        return units.inInches() ? season.daysPer100M() * Units.METRES_PER_FOOT : season.daysPer100M();
    }

    private static Fact once(String name, String words) {
        return new Fact(name, words, "");
    }

    private Fact both(String name, Function<FrostSeason, String> words) {
        return new Fact(name, words.apply(climate.spring()), words.apply(climate.autumn()));
    }

    private String uncertainty(double sdMetres) {
        return sdMetres == 0 ? "" : ", give or take " + units.height(sdMetres);
    }

    private static String signed(double days) {
        double tenths = Numbers.tenths(days);
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
