package warmshelf.timeline;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;
import warmshelf.crop.Crop;

/**
 * What some crops want besides ({@code db/reference/plant-care.csv}): onions trimmed, some flowers and basil pinched, the row
 * cover taken off cucumbers and their kin.
 */
public final class PlantCare {
    private static final Map<String, PlantCare> BUNDLED = ReferenceTable.rows("plant-care.csv").stream()
            .collect(Collectors.toUnmodifiableMap(row -> row.get("crop_id"), PlantCare::new));

    private final Step step;
    private final LikelyDays days;

    private PlantCare(CSVRecord row) {
        String care = row.get("care");
        int least = Integer.parseInt(row.get("days_min"));
        int most = Integer.parseInt(row.get("days_max"));
        this.step = Step.find(care).orElseThrow(() -> new IllegalStateException("no step is called '" + care + "'"));
        this.days = new LikelyDays(least, (least + most) / 2, most);
    }

    /** Whether its tops are trimmed or its tips pinched. */
    public static boolean isTrimmed(Crop crop) {
        return indoors(crop).isPresent();
    }

    /** What is done to the young plant, before it goes out; empty where nothing is. */
    static Optional<PlantCare> indoors(Crop crop) {
        return of(crop).filter(care -> care.step != Step.COVER_OFF);
    }

    /** What is done after planting out; empty where nothing is. */
    static Optional<PlantCare> outdoors(Crop crop) {
        return of(crop).filter(care -> care.step == Step.COVER_OFF);
    }

    private static Optional<PlantCare> of(Crop crop) {
        return Optional.ofNullable(BUNDLED.get(crop.id()));
    }

    Step step() {
        return step;
    }

    /** The days for it, counted from coming up; for the cover from planting out. */
    DateWindow after(DateWindow begin) {
        return begin.plus(days);
    }

    Reason why(TimelineQuestion question) {
        return step.why("why", Map.of("from", days.first() + " to " + days.last() + " days"), question.units());
    }
}
