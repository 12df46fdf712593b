package warmshelf.frost;

import static warmshelf.frost.FrostSentences.SAY;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import warmshelf.BadInput;
import warmshelf.frost.SurfacePoint.SeasonFigures;

/** Gives the frost climate of a place from the bundled surface, moved to the place's elevation. */
public final class FrostClimates {
    /**
     * How far the elevation of a postcode is off, as a standard deviation: 20 m on even ground, and 0.8 of the difference
     * to the stations around it. Fitted for this project on 2,128 stations within 4 km of a postcode: their heights differ
     * from the postcode's by 18, 27, 48, 87 and 314 m (robust standard deviation) where postcode and surface differ by
     * about 3, 29, 45, 85 and 400 m.
     */
    private static final double ELEVATION_SD_ON_PLAINS_M = 20;

    private static final double ELEVATION_SD_PER_DIFFERENCE = 0.8;

    /** Where a freeze comes in fewer than one year in ten, the table does not say in how many: the middle is taken. */
    private static final double ANY_FROST_WHERE_RARE = 0.05;

    private FrostClimates() {}

    /**
     * The frost climate of a postcode.
     *
     * @throws BadInput when the surface has nothing there (islands, the far north, other countries)
     */
    public static FrostClimate at(PostcodePlace place) {
        return at(place, pointAt(place.latitude(), place.longitude()));
    }

    private static FrostClimate at(PostcodePlace place, SurfacePoint point) {
        double difference = place.elevationM() - point.referenceElevationM();
        return climate(
                place.name(), place.latitude(), place.longitude(), place.elevationM(), elevationSd(difference), point);
    }

    /** How far a postcode's elevation may be off where it differs so much from that of the stations around it. */
    static double elevationSd(double differenceM) {
        return Math.hypot(ELEVATION_SD_ON_PLAINS_M, ELEVATION_SD_PER_DIFFERENCE * differenceM);
    }

    /**
     * The frost climate of a point whose elevation in metres is known.
     *
     * @throws BadInput when the figures are not on earth or the surface has nothing there
     */
    public static FrostClimate at(double latitude, double longitude, double elevationM) {
        require(SAY.theLatitude(), latitude, -90, 90, SAY.degrees());
        require(SAY.theLongitude(), longitude, -180, 180, SAY.degrees());
        require(SAY.theElevation(), elevationM, -430, 6500, SAY.metres());
        return at(latitude, longitude, elevationM, pointAt(latitude, longitude));
    }

    private static FrostClimate at(double latitude, double longitude, double elevationM, SurfacePoint point) {
        String name = String.format(Locale.ROOT, "%.3f, %.3f", latitude, longitude);
        return climate(name, latitude, longitude, elevationM, 0, point);
    }

    /** The frost climate of a postcode, or empty where the surface has nothing. */
    public static Optional<FrostClimate> find(PostcodePlace place) {
        return FrostSurface.bundled().at(place.latitude(), place.longitude()).map(point -> at(place, point));
    }

    /** The frost climate of a point on earth, or empty where the surface has nothing. */
    static Optional<FrostClimate> find(double latitude, double longitude, double elevationM) {
        return FrostSurface.bundled().at(latitude, longitude).map(point -> at(latitude, longitude, elevationM, point));
    }

    /**
     * The frost climate of a named point by the surface, or empty where it has nothing.
     *
     * @param exact whether the elevation is the point's own, rather than that of a cell around it
     */
    public static Optional<FrostClimate> find(
            String name, double latitude, double longitude, double elevationM, boolean exact) {
        return FrostSurface.bundled()
                .at(latitude, longitude)
                .map(point -> climate(
                        name,
                        latitude,
                        longitude,
                        elevationM,
                        exact ? 0 : elevationSd(elevationM - point.referenceElevationM()),
                        point));
    }

    /** Says that nothing is known of a point, and where something is. */
    static String nothingKnownOf(double latitude, double longitude) {
        return SAY.nothingKnown(
                String.format(Locale.ROOT, "%.3f", latitude), String.format(Locale.ROOT, "%.3f", longitude));
    }

    private static SurfacePoint pointAt(double latitude, double longitude) {
        return FrostSurface.bundled()
                .at(latitude, longitude)
                .orElseThrow(() -> new BadInput(nothingKnownOf(latitude, longitude)));
    }

    private static FrostClimate climate(
            String place,
            double latitude,
            double longitude,
            double elevationM,
            double elevationSdM,
            SurfacePoint point) {
        double anyFrost = 1 - point.freezeRareShare() * (1 - ANY_FROST_WHERE_RARE);
        double upward = elevationM - point.referenceElevationM();
        FrostSeason spring = season(point.spring(), anyFrost, upward, elevationSdM);
        FrostSeason autumn = season(point.autumn(), anyFrost, upward, elevationSdM);
        FrostEvidence evidence = new FrostEvidence(
                new FrostEvidence.Surface(
                        point.cells(),
                        point.referenceElevationM(),
                        point.nearestStationKm(),
                        point.freezeRareShare(),
                        spring.medianDay(),
                        autumn.medianDay(),
                        1),
                List.of(),
                elevationSdM,
                null,
                FrostNotes.of(point, elevationM, elevationSdM));
        return new FrostClimate(place, latitude, longitude, elevationM, spring, autumn, evidence);
    }

    private static FrostSeason season(SeasonFigures figures, double anyFrost, double upwardM, double elevationSdM) {
        double adjustment = figures.daysPer100M() * upwardM / 100;
        return new FrostSeason(
                anyFrost,
                figures.medianDay() + adjustment,
                adjustment,
                figures.daysPer100M(),
                figures.yearSdDays(),
                figures.stationScatterDays(),
                Math.abs(figures.daysPer100M()) * elevationSdM / 100);
    }

    private static void require(String what, double value, int least, int most, String unit) {
        if (!(value >= least && value <= most)) {
            throw new BadInput(SAY.outside(what, String.valueOf(value), least, most, unit));
        }
    }
}
