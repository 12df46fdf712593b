package warmshelf.frost;

import static warmshelf.frost.FrostSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.FrostPage.Source;

/** The lines of evidence behind a climate, as the page lists them. */
final class FrostSources {
    private FrostSources() {}

    static List<Source> of(FrostClimate climate, int season) {
        List<Source> sources = new ArrayList<>();
        FrostEvidence.Surface surface = climate.evidence().surface();
        if (surface != null) {
            sources.add(new Source(
                    SAY.bundledGrid(),
                    SAY.bundledGridIs(),
                    null,
                    surface.referenceElevationM(),
                    YearDay.in(season, surface.springDay() - climate.spring().adjustmentDays()),
                    YearDay.in(season, surface.autumnDay() - climate.autumn().adjustmentDays()),
                    moved(climate.spring().adjustmentDays()),
                    percent(surface.weight())));
        }
        for (FrostEvidence.Station station : climate.evidence().stations()) {
            sources.add(new Source(
                    station.name().orElseGet(SAY::membersThermometer),
                    kind(station),
                    station.distanceKm(),
                    station.elevationM(),
                    day(station.springDay(), season),
                    day(station.autumnDay(), season),
                    moved(station.adjustmentDays()),
                    percent(station.weight())));
        }
        return sources;
    }

    private static String kind(FrostEvidence.Station station) {
        String kind = station.kind().words();
        return station.source().isEmpty() ? kind : SAY.kindAndSource(kind, station.source());
    }

    private static @Nullable LocalDate day(double day, int season) {
        return Double.isNaN(day) ? null : YearDay.in(season, day);
    }

    private static long percent(double share) {
        return Math.round(100 * share);
    }

    private static String moved(double days) {
        double tenths = Math.round(10 * days) / 10.0;
        return tenths == 0 ? SAY.asItIs() : FrostFacts.moved(tenths);
    }
}
