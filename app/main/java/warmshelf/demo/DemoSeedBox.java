package warmshelf.demo;

import static warmshelf.demo.DemoDecisions.done;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.apache.commons.csv.CSVRecord;
import warmshelf.seed.GerminationTest;
import warmshelf.seed.NewLot;
import warmshelf.seed.SeedSource;
import warmshelf.seed.Storage;
import warmshelf.seed.StorageKind;

/** Fills the demo's seed box. */
final class DemoSeedBox {
    /** Packets for the coming year are in the shops from about September on. */
    private static final int PACKED_AHEAD_MONTHS = 4;

    private final DemoHouse house;
    private final Map<String, UUID> members;
    private final LocalDate today;

    DemoSeedBox(DemoHouse house, Map<String, UUID> members, LocalDate today) {
        this.house = house;
        this.members = members;
        this.today = today;
    }

    /** A lot as it lies in the box. */
    record BoxedLot(UUID id, NewLot lot, List<GerminationTest> tests) {}

    /** Puts every lot in; answers with them by variety. */
    Map<String, BoxedLot> fill(UUID coordinator) {
        List<DemoStore.TestedLot> box = new ArrayList<>();
        List<String> offered = new ArrayList<>();
        for (CSVRecord row : DemoTable.rows("lots.csv")) {
            box.add(new DemoStore.TestedLot(lot(row), tests(row)));
            offered.add(row.get("offered"));
        }
        List<UUID> ids = house.writes().addLots(box, coordinator);
        Map<String, BoxedLot> byVariety = new HashMap<>();
        for (int i = 0; i < box.size(); i++) {
            DemoStore.TestedLot tested = box.get(i);
            offer(ids.get(i), offered.get(i), tested.lot(), coordinator);
            byVariety.put(tested.lot().variety(), new BoxedLot(ids.get(i), tested.lot(), tested.tests()));
        }
        return byVariety;
    }

    private void offer(UUID id, String seeds, NewLot lot, UUID coordinator) {
        if (!seeds.isEmpty()) {
            UUID by = lot.ownerId() == null ? coordinator : lot.ownerId();
            done(house.offers().offer(id, Integer.parseInt(seeds), by));
        }
    }

    private NewLot lot(CSVRecord row) {
        int newest = today.plusMonths(PACKED_AHEAD_MONTHS).getYear();
        return new NewLot(
                row.get("crop"),
                row.get("variety"),
                newest - DemoTable.number(row, "age_years"),
                row.get("seeds").isEmpty() ? null : DemoTable.number(row, "seeds"),
                row.get("owner").isEmpty() ? null : members.get(row.get("owner")),
                row.get("treated").equals("yes"),
                row.get("note"),
                SeedSource.named(row.get("source")),
                Storage.of(StorageKind.named(row.get("storage"))));
    }

    private List<GerminationTest> tests(CSVRecord row) {
        if (row.get("tested").isEmpty()) {
            return List.of();
        }
        return List.of(new GerminationTest(
                today.minusDays(DemoTable.number(row, "tested_days_ago")),
                DemoTable.number(row, "germinated"),
                DemoTable.number(row, "tested")));
    }
}
