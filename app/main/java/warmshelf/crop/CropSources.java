package warmshelf.crop;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import warmshelf.ReferenceTable;

/**
 * What extension services say of the crops, source by source: a second reading beside the figures of {@code crops.csv}. Where
 * sources differ from each other or from the crop, pages show their range; which figure the dates rest on stays the crop's.
 */
public final class CropSources {
    private static final CropSources BUNDLED = new CropSources(ReferenceTable.rows("crop-sources.csv").stream()
            .map(SourceStatement::of)
            .toList());

    private final Map<String, List<SourceStatement>> byCrop;

    CropSources(List<SourceStatement> statements) {
        byCrop = statements.stream().collect(Collectors.groupingBy(SourceStatement::cropId));
    }

    public static CropSources bundled() {
        return BUNDLED;
    }

    /** All that is said of a crop, in the table's order; weeks are counted to planting out. */
    public List<SourceStatement> of(Crop crop) {
        return byCrop.getOrDefault(crop.id(), List.of()).stream()
                .map(statement -> statement.toPlantingOut(crop))
                .toList();
    }

    /** What is said of one matter. */
    public SourcedRange of(Crop crop, SourceMatter matter) {
        return new SourcedRange(
                matter,
                crop,
                of(crop).stream()
                        .filter(statement -> statement.matter() == matter)
                        .toList());
    }
}
