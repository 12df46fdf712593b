package warmshelf.demo;

import static warmshelf.demo.DemoDecisions.done;

import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.apache.commons.csv.CSVRecord;
import warmshelf.shelf.Circuit;
import warmshelf.shelf.Lamp;
import warmshelf.shelf.LightAbove;
import warmshelf.shelf.MatDraft;
import warmshelf.shelf.RackDraft;
import warmshelf.shelf.ShelfDraft;
import warmshelf.shelf.SiteDraft;

/** Puts up the demo's sites, racks, shelves and mats, as a coordinator would. */
final class DemoFurniture {
    private final DemoHouse house;
    private final UUID coordinator;
    private final Map<String, UUID> sites = new HashMap<>();
    private final Map<String, UUID> racks = new HashMap<>();
    private final Map<String, UUID> shelves = new HashMap<>();

    DemoFurniture(DemoHouse house, UUID coordinator) {
        this.house = house;
        this.coordinator = coordinator;
    }

    void putUp() {
        DemoTable.rows("sites.csv").forEach(this::addSite);
        DemoTable.rows("shelves.csv").forEach(this::addShelf);
        DemoTable.rows("mats.csv").forEach(this::addMat);
    }

    private void addSite(CSVRecord row) {
        Circuit circuit = new Circuit(DemoTable.number(row, "amps"), DemoTable.number(row, "volts"));
        SiteDraft draft = new SiteDraft(row.get("site"), DemoTable.number(row, "walk_order"), circuit, row.get("note"));
        sites.put(row.get("site"), done(house.sites().add(draft, coordinator)));
    }

    private void addShelf(CSVRecord row) {
        String rack = row.get("rack");
        if (!racks.containsKey(rack)) {
            RackDraft draft = new RackDraft(rack, DemoTable.number(row, "rack_order"));
            racks.put(rack, done(house.racks().add(DemoTable.known(sites, row.get("site")), draft, coordinator)));
        }
        ShelfDraft draft = new ShelfDraft(
                DemoTable.number(row, "from_top"),
                DemoTable.number(row, "lit_places"),
                DemoTable.number(row, "light_watts"),
                lamp(row));
        shelves.put(
                rack + "/" + row.get("from_top"),
                done(house.shelves().add(DemoTable.known(racks, rack), draft, coordinator)));
    }

    private static Lamp lamp(CSVRecord row) {
        Lamp.Kind kind = Lamp.Kind.named(row.get("lamp"));
        return kind == Lamp.Kind.NOT_KNOWN
                ? Lamp.NOT_KNOWN
                : new Lamp(
                        kind,
                        DemoTable.number(row, "lamp_hours"),
                        row.get("lamp_timer").equals("yes"));
    }

    private void addMat(CSVRecord row) {
        MatDraft draft = new MatDraft(
                row.get("mat"),
                DemoTable.number(row, "walk_order"),
                DemoTable.number(row, "places"),
                DemoTable.number(row, "low_c"),
                DemoTable.number(row, "high_c"),
                DemoTable.number(row, "watts"),
                DemoTable.number(row, "usual_c"),
                LightAbove.named(row.get("light")));
        done(house.mats()
                .add(DemoTable.known(shelves, row.get("rack") + "/" + row.get("from_top")), draft, coordinator));
    }
}
