package warmshelf.frost.station;

/** A point of the globe as a vector in kilometres; the straight line between two stands for their distance. */
record Position(double x, double y, double z) {
    private static final double EARTH_KM = 6371;

    static Position of(double latitude, double longitude) {
        double up = Math.toRadians(latitude);
        double round = Math.toRadians(longitude);
        return new Position(
                EARTH_KM * Math.cos(up) * Math.cos(round),
                EARTH_KM * Math.cos(up) * Math.sin(round),
                EARTH_KM * Math.sin(up));
    }

    double distanceKm(Position other) {
        double dx = x - other.x;
        double dy = y - other.y;
        double dz = z - other.z;
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }
}
