package warmshelf.frost.station;

/** A station seen from a point: how far away, along the ground and upward. */
record NearStation(int index, StationFrost station, double distanceKm, double upwardM) {}
