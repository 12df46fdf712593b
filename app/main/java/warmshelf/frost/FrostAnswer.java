package warmshelf.frost;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The frost command's answer, field by field as documented. Figures that a surface cannot give (number of seasons,
 * earliest and latest date on record) are null.
 */
record FrostAnswer(
        String evidence,
        String place,
        double latitude,
        double longitude,
        double elevationM,
        Season spring,
        Season autumn,
        List<Object> stations,
        Surface surface,
        List<String> notes) {

    record Season(
            @Nullable Integer seasons,
            @Nullable Integer seasonsWithFrost,
            double anyFrost,
            @Nullable LocalDate p50,
            @Nullable LocalDate p30,
            @Nullable LocalDate p10,
            @Nullable LocalDate p90,
            double sdDays,
            @Nullable String latest,
            @Nullable String earliest,
            double yearSdDays,
            double stationScatterDays,
            double elevationSdDays,
            double adjustmentDays,
            double daysPer100M) {}

    record Surface(
            List<String> cells,
            double referenceElevationM,
            double elevationSdM,
            double nearestStationKm,
            double freezeRareShare) {}

    static FrostAnswer of(FrostClimate climate, int year) {
        FrostEvidence evidence = climate.evidence();
        FrostEvidence.Surface surface = Objects.requireNonNull(evidence.surface(), "the surface was asked");
        return new FrostAnswer(
                "surface",
                climate.place(),
                climate.latitude(),
                climate.longitude(),
                climate.elevationM(),
                season(climate.spring(), risk -> climate.lastSpringFrost(risk, year)),
                season(climate.autumn(), risk -> climate.firstAutumnFrost(risk, year)),
                List.of(),
                new Surface(
                        surface.cells(),
                        tenths(surface.referenceElevationM()),
                        tenths(evidence.elevationSdM()),
                        tenths(surface.nearestStationKm()),
                        thousandths(surface.freezeRareShare())),
                Stream.concat(evidence.notes().stream(), Stream.of(FrostNotes.FROST_POCKET))
                        .toList());
    }

    private static Season season(FrostSeason season, DoubleFunction<Optional<LocalDate>> dateAt) {
        return new Season(
                null,
                null,
                thousandths(season.anyFrost()),
                dateAt.apply(0.5).orElse(null),
                dateAt.apply(0.3).orElse(null),
                dateAt.apply(0.1).orElse(null),
                dateAt.apply(0.9).orElse(null),
                tenths(season.sdDays()),
                null,
                null,
                tenths(season.yearSdDays()),
                tenths(season.stationScatterDays()),
                tenths(season.elevationSdDays()),
                tenths(season.adjustmentDays()),
                tenths(season.daysPer100M()));
    }

    private static double tenths(double value) {
        return Math.round(value * 10) / 10.0;
    }

    private static double thousandths(double value) {
        return Math.round(value * 1000) / 1000.0;
    }
}
