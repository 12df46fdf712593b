package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import warmshelf.ReferenceTable;

/** Crops and varieties at one moment: the reference, and over it what the group wrote. */
final class Horticulture {
    private final Map<String, Row> rows = new LinkedHashMap<>();
    private final Map<String, OwnCrop> written = new LinkedHashMap<>();
    private final Map<VarietyName, Variety> varieties = new LinkedHashMap<>();

    private record Row(Crop crop, TemperatureResponse response, boolean offered) {}

    private record VarietyName(String cropId, String key) {
        static VarietyName of(String cropId, String name) {
            return new VarietyName(cropId, Variety.key(name));
        }
    }

    private Horticulture(Collection<CSVRecord> table, Responses sources) {
        CropTable reader = new CropTable();
        for (CSVRecord row : table) {
            Crop crop = reader.crop(row);
            rows.put(crop.id(), new Row(crop, sources.of(row), true));
        }
    }

    private Horticulture(Horticulture reference, OwnHorticulture own) {
        rows.putAll(reference.rows);
        for (OwnCrop each : own.crops()) {
            String id = each.crop().id();
            written.put(id, each);
            if (each.kept() || !reference.rows.containsKey(id)) {
                rows.put(id, new Row(each.crop(), reference.response(each), each.kept()));
            }
        }
        own.varieties().forEach(variety -> varieties.put(VarietyName.of(variety.cropId(), variety.name()), variety));
    }

    /** The reference that comes with the program; read once, at first use. */
    static Horticulture reference() {
        return Bundled.REFERENCE;
    }

    Horticulture with(OwnHorticulture own) {
        return new Horticulture(this, own);
    }

    private TemperatureResponse response(OwnCrop own) {
        OwnEmergence emergence = own.emergence();
        if (emergence instanceof OwnEmergence.Stated stated) {
            String source = SAY.asTradeStates(own.by(), own.crop().source());
            return new StatedRangeResponse(stated.daysMin(), stated.daysMax(), stated.at(), source, true);
        }
        String like = emergence instanceof OwnEmergence.Like of
                ? of.cropId()
                : own.crop().id();
        Row row = rows.get(like);
        if (row == null) {
            throw new IllegalStateException("no reference crop has the id '" + like + "'");
        }
        return like.equals(own.crop().id())
                ? row.response()
                : new BorrowedResponse(
                        row.response(),
                        SAY.ofChosenRelative(
                                row.crop().name(), own.by(), row.response().source()));
    }

    Optional<Crop> find(String id) {
        return Optional.ofNullable(rows.get(id)).map(Row::crop);
    }

    @Nullable
    TemperatureResponse response(String id) {
        Row row = rows.get(id);
        return row == null ? null : row.response();
    }

    List<Crop> offered() {
        return rows.values().stream().filter(Row::offered).map(Row::crop).toList();
    }

    Optional<OwnCrop> written(String id) {
        return Optional.ofNullable(written.get(id));
    }

    Optional<Variety> variety(String cropId, String name) {
        return Optional.ofNullable(varieties.get(VarietyName.of(cropId, name)));
    }

    List<Variety> varieties(String cropId) {
        return varieties.values().stream()
                .filter(variety -> variety.cropId().equals(cropId))
                .toList();
    }

    private static final class Bundled {
        static final Horticulture REFERENCE = new Horticulture(ReferenceTable.rows("crops.csv"), new Responses());
    }
}
