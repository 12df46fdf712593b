package warmshelf.frost.station;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.function.IntPredicate;

/** Stations, to be asked for those near a point. */
public final class StationSet {
    private static final int AROUND = 10;
    private static final double SOFT_KM = 15;

    private final List<StationFrost> stations;
    private final List<Position> positions;

    public StationSet(List<StationFrost> stations) {
        this.stations = List.copyOf(stations);
        positions = stations.stream()
                .map(station -> Position.of(station.latitude(), station.longitude()))
                .toList();
    }

    List<StationFrost> all() {
        return stations;
    }

    /** Number of stations. */
    public int size() {
        return stations.size();
    }

    /** Kilometres along the ground between two points in degrees. */
    public static double distanceKm(double latitude, double longitude, double otherLatitude, double otherLongitude) {
        return Position.of(latitude, longitude).distanceKm(Position.of(otherLatitude, otherLongitude));
    }

    /** How high the stations around a point lie, the nearer counting more, in metres; empty where there are none. */
    public OptionalDouble elevationAround(double latitude, double longitude) {
        double sum = 0;
        double total = 0;
        for (NearStation one : near(latitude, longitude, 0, AROUND, 0, index -> true)) {
            double weight = Math.pow(one.distanceKm() + SOFT_KM, -2);
            sum += weight * one.station().elevationM();
            total += weight;
        }
        return total == 0 ? OptionalDouble.empty() : OptionalDouble.of(sum / total);
    }

    /** The stations without some. */
    StationSet without(IntPredicate left) {
        List<StationFrost> kept = new ArrayList<>();
        for (int i = 0; i < stations.size(); i++) {
            if (!left.test(i)) {
                kept.add(stations.get(i));
            }
        }
        return new StationSet(kept);
    }

    /**
     * The stations nearest to a point, the nearest first.
     *
     * @param kmPerM how many kilometres along the ground count as much as a metre upward
     * @param eligible which stations, by their index, may be taken
     */
    List<NearStation> near(
            double latitude, double longitude, double elevationM, int count, double kmPerM, IntPredicate eligible) {
        Position here = Position.of(latitude, longitude);
        PriorityQueue<Ranked> nearest = new PriorityQueue<>(
                count + 1, Comparator.comparingDouble(Ranked::farness).reversed());
        for (int i = 0; i < positions.size(); i++) {
            double distance = positions.get(i).distanceKm(here);
            double farness =
                    distance + kmPerM * Math.abs(elevationM - stations.get(i).elevationM());
            boolean room = nearest.size() < count;
            if ((room || farness < nearest.element().farness) && eligible.test(i)) {
                if (!room) {
                    nearest.remove();
                }
                nearest.add(new Ranked(i, distance, farness));
            }
        }
        return nearest.stream()
                .sorted(Comparator.comparingDouble(Ranked::farness).thenComparingInt(Ranked::index))
                .map(one -> new NearStation(
                        one.index,
                        stations.get(one.index),
                        one.distance,
                        elevationM - stations.get(one.index).elevationM()))
                .toList();
    }

    private record Ranked(int index, double distance, double farness) {}
}
