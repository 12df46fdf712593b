package warmshelf.frost.station;

import java.util.Locale;

/** A row of the fitted grid, as the application bundles it. */
record SurfaceCell(
        double latitude,
        double longitude,
        double referenceElevationM,
        Figures spring,
        Figures autumn,
        double nearestStationKm,
        double freezeRareShare) {

    static final String HEADING = "latitude,longitude,reference_elevation_m,spring_p50_day,spring_days_per_100m,"
            + "spring_station_scatter_days,autumn_p50_day,autumn_days_per_100m,autumn_station_scatter_days,"
            + "spring_year_sd_days,autumn_year_sd_days,nearest_station_km,freeze_rare_share";

    /** One season at the reference elevation. */
    record Figures(double day, double daysPer100M, double scatterDays, double yearSdDays) {
        double at(double upwardM) {
            return day + daysPer100M * upwardM / 100;
        }
    }

    Figures of(Side side) {
        return side == Side.SPRING ? spring : autumn;
    }

    String row() {
        return String.format(
                Locale.ROOT,
                "%s,%s,%.0f,%.1f,%.1f,%.1f,%.1f,%.1f,%.1f,%.1f,%.1f,%.0f,%.2f",
                latitude,
                longitude,
                referenceElevationM,
                spring.day,
                spring.daysPer100M,
                spring.scatterDays,
                autumn.day,
                autumn.daysPer100M,
                autumn.scatterDays,
                spring.yearSdDays,
                autumn.yearSdDays,
                nearestStationKm,
                freezeRareShare);
    }
}
