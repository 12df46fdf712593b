package warmshelf.frost;

import static warmshelf.frost.FrostSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
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
        facts.add(once(SAY.heightOfPlace(), height(climate.elevationM(), evidence.elevationSdM())));
        if (surface != null) {
            facts.add(once(
                    SAY.gridPoints(),
                    surface.cells().stream().map(SurfacePoint.Cell::words).collect(Collectors.joining("; "))));
            facts.add(once(SAY.heightOfGrid(), units.height(surface.referenceElevationM())));
            facts.add(once(SAY.nearestStation(), SAY.away(units.distance(surface.nearestStationKm()))));
        }
        facts.add(both(SAY.changeUpward(hundred()), season -> signed(perHundred(season))));
        facts.add(both(SAY.movedForHeight(), season -> signed(season.adjustmentDays())));
        facts.add(both(SAY.shareWithFrost(), season -> whole(100 * season.anyFrost()) + " %"));
        facts.add(both(SAY.scatterOfYears(), season -> spread(season.yearSdDays())));
        facts.add(both(SAY.scatterOfPlaces(), season -> spread(season.stationScatterDays())));
        facts.add(both(SAY.scatterOfHeight(), season -> spread(season.elevationSdDays())));
        facts.add(both(SAY.scatterOfAll(), season -> spread(season.sdDays())));
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

    private String height(double metres, double sdMetres) {
        String height = units.height(metres);
        return sdMetres == 0 ? height : SAY.heightGiveOrTake(height, units.height(sdMetres));
    }

    private static String signed(double days) {
        double tenths = Numbers.tenths(days);
        if (tenths == 0) {
            return SAY.noChange();
        }
        return moved(tenths);
    }

    /** Days that are not nought, for example '2.5 days later'. */
    static String moved(double days) {
        String words = Numbers.oneDecimal(Math.abs(days));
        return days > 0 ? SAY.daysLater(words) : SAY.daysEarlier(words);
    }

    private static String spread(double days) {
        return SAY.spread(Numbers.oneDecimal(days));
    }

    private static String whole(double value) {
        return String.format(Locale.ROOT, "%,d", Math.round(value));
    }
}
