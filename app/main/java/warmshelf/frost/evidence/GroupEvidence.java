package warmshelf.frost.evidence;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import warmshelf.frost.garden.FrostCorrection;
import warmshelf.frost.garden.GardenPoint;

/** All that a group knows of frost beside the bundled surface, at one moment. */
public record GroupEvidence(
        List<LocalStation> stations, List<FrostCorrection> corrections, Map<UUID, GardenPoint> gardens) {

    /** The station with an identifier as text. */
    Optional<LocalStation> station(String id) {
        return stations.stream()
                .filter(station -> station.id().toString().equals(id))
                .findFirst();
    }

    /** The same without one station, for holding that station's own seasons against what the others tell. */
    public GroupEvidence without(UUID station) {
        return new GroupEvidence(
                stations.stream().filter(each -> !each.id().equals(station)).toList(), corrections, gardens);
    }

    /** A group that has brought in nothing. */
    public static GroupEvidence none() {
        return new GroupEvidence(List.of(), List.of(), Map.of());
    }
}
