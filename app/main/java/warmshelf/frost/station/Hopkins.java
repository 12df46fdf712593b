package warmshelf.frost.station;

/**
 * Hopkins' bioclimatic law (1918): spring comes four days later for each degree of latitude toward the pole and each 400 feet
 * upward, other things equal; autumn as much earlier. His four days for five degrees of longitude are left out: they describe
 * one continent's coast and made no difference between near stations.
 */
final class Hopkins {
    static final double DAYS_PER_DEGREE = 4;
    static final double DAYS_PER_100M = 4 / 1.2192;

    private Hopkins() {}

    /** Days by which frost lasts longer at a point than at a station, going by latitude and elevation alone. */
    static double days(StationFrost station, double latitude, double elevationM) {
        return DAYS_PER_DEGREE * (Math.abs(latitude) - Math.abs(station.latitude()))
                + DAYS_PER_100M * (elevationM - station.elevationM()) / 100;
    }
}
