package warmshelf.shelf;

import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SITE;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.Record;

/** Reads the shelving: sites with their racks, shelves, mats and places, all in walking order. */
public final class ShelvingStore {
    private final DSLContext sql;

    public ShelvingStore(DSLContext sql) {
        this.sql = sql;
    }

    /** Everything, in walking order. A group has a few dozen mats, so the whole is read at once. */
    public List<Site> all() {
        Map<UUID, List<Rack>> racks = racks();
        return sql.selectFrom(SITE)
                .orderBy(SITE.WALK_ORDER, SITE.NAME)
                .fetch(row -> new Site(
                        row.getId(),
                        row.getName(),
                        row.getWalkOrder(),
                        new Circuit(row.getCircuitAmps().doubleValue(), row.getCircuitVolts()),
                        row.getNote(),
                        row.getVersion(),
                        racks.getOrDefault(row.getId(), List.of())));
    }

    public Optional<Site> site(UUID id) {
        return all().stream().filter(site -> site.id().equals(id)).findFirst();
    }

    public Optional<Rack> rack(UUID id) {
        return all().stream()
                .flatMap(site -> site.racks().stream())
                .filter(rack -> rack.id().equals(id))
                .findFirst();
    }

    public Optional<Shelf> shelf(UUID id) {
        return shelves().values().stream()
                .flatMap(List::stream)
                .filter(shelf -> shelf.id().equals(id))
                .findFirst();
    }

    public Optional<Mat> mat(UUID id) {
        return mats().values().stream()
                .flatMap(List::stream)
                .filter(mat -> mat.id().equals(id))
                .findFirst();
    }

    private Map<UUID, List<Rack>> racks() {
        Map<UUID, List<Shelf>> shelves = shelves();
        return sql.selectFrom(RACK).orderBy(RACK.WALK_ORDER, RACK.NAME).fetch().stream()
                .map(row -> new Rack(
                        row.getId(),
                        row.getSiteId(),
                        row.getName(),
                        row.getWalkOrder(),
                        row.getVersion(),
                        shelves.getOrDefault(row.getId(), List.of())))
                .collect(Collectors.groupingBy(Rack::siteId));
    }

    private Map<UUID, List<Shelf>> shelves() {
        Map<UUID, List<Mat>> mats = mats();
        Map<UUID, List<Place>> litPlaces =
                sql.selectFrom(PLACE).where(PLACE.KIND.eq("lit")).orderBy(PLACE.NUMBER).fetch().stream()
                        .collect(Collectors.groupingBy(
                                row -> row.getLitShelfId(),
                                Collectors.mapping(ShelvingStore::place, Collectors.toList())));
        return sql.selectFrom(SHELF).orderBy(SHELF.FROM_TOP).fetch().stream()
                .map(row -> new Shelf(
                        row.getId(),
                        row.getRackId(),
                        row.getFromTop(),
                        row.getLightWatts(),
                        new Lamp(Lamp.Kind.named(row.getLamp()), row.getLampHours(), row.getLampTimer()),
                        row.getVersion(),
                        mats.getOrDefault(row.getId(), List.of()),
                        litPlaces.getOrDefault(row.getId(), List.of())))
                .collect(Collectors.groupingBy(Shelf::rackId));
    }

    private Map<UUID, List<Mat>> mats() {
        Map<UUID, List<Place>> places =
                sql.selectFrom(PLACE).where(PLACE.KIND.eq("mat")).orderBy(PLACE.NUMBER).fetch().stream()
                        .collect(Collectors.groupingBy(
                                row -> row.getMatId(), Collectors.mapping(ShelvingStore::place, Collectors.toList())));
        return sql.selectFrom(MAT).orderBy(MAT.WALK_ORDER, MAT.NAME).fetch().stream()
                .map(row -> new Mat(
                        row.getId(),
                        row.getShelfId(),
                        row.getName(),
                        row.getWalkOrder(),
                        row.getThermostatLowC(),
                        row.getThermostatHighC(),
                        row.getWatts(),
                        row.getUsualC(),
                        LightAbove.named(row.getLight()),
                        row.getVersion(),
                        places.getOrDefault(row.getId(), List.of())))
                .collect(Collectors.groupingBy(Mat::shelfId));
    }

    private static Place place(Record row) {
        return new Place(row.get(PLACE.ID), row.get(PLACE.NUMBER));
    }
}
