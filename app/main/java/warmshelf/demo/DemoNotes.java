package warmshelf.demo;

import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.apache.commons.csv.CSVRecord;
import warmshelf.crop.Crop;
import warmshelf.crop.Crop.Basis;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.OwnEmergence;
import warmshelf.crop.Standing;
import warmshelf.supply.NewPromise;
import warmshelf.supply.SupplyItem;

/** What the demo's people wrote down: a crop and varieties that the reference does not have, and who brings what. */
final class DemoNotes {
    private final DemoHouse house;
    private final Map<String, UUID> members;
    private final UUID coordinator;

    DemoNotes(DemoHouse house, Map<String, UUID> members, UUID coordinator) {
        this.house = house;
        this.members = members;
        this.coordinator = coordinator;
    }

    void writeCrops() {
        for (CSVRecord row : DemoTable.rows("crops.csv")) {
            house.ownCrops().write(crop(row), new OwnEmergence.Like(row.get("like")), 0, person(row.get("written_by")));
        }
        for (CSVRecord row : DemoTable.rows("varieties.csv")) {
            house.ownCrops()
                    .varieties()
                    .write(
                            row.get("crop"),
                            row.get("variety"),
                            days(row, Basis.named(row.get("basis"))),
                            row.get("source"),
                            0,
                            person(row.get("written_by")));
        }
    }

    private UUID person(String name) {
        return java.util.Objects.requireNonNull(members.get(name), name);
    }

    /** The relative's figures, with the group's own name, days and source. */
    private static Crop crop(CSVRecord row) {
        Crop like = CropCatalogue.bundled().get(row.get("like"));
        return new Crop(
                row.get("id"),
                row.get("name"),
                row.get("species"),
                like.hardiness(),
                like.weeksIndoorsMin(),
                like.weeksIndoorsMax(),
                like.plantOutOffsetDays(),
                like.plantOutOffsetDaysLatest(),
                like.nightMinimumC(),
                like.depthMm(),
                like.light(),
                like.raisedFrom(),
                like.treatment(),
                like.hazards(),
                Optional.of(days(row, Basis.TRANSPLANTING)),
                null,
                like.seedLifeYears(),
                like.commonPractice(),
                row.get("note"),
                row.get("source"),
                "",
                Standing.PUBLISHED);
    }

    private static DaysToMaturity days(CSVRecord row, Basis basis) {
        return new DaysToMaturity(DemoTable.number(row, "days_min"), DemoTable.number(row, "days_max"), basis);
    }

    void promiseSupplies(int season) {
        for (CSVRecord row : DemoTable.rows("promises.csv")) {
            boolean cupboard = row.get("whose").isEmpty();
            UUID by = cupboard ? coordinator : person(row.get("whose"));
            UUID id = UUID.randomUUID();
            SupplyItem item = SupplyItem.named(row.get("item")).orElseThrow();
            house.promises()
                    .add(
                            id,
                            season,
                            new NewPromise(item, DemoTable.number(row, "amount"), cupboard, row.get("note")),
                            by);
            if (row.get("brought").equals("yes")) {
                house.promises().bring(id, by);
            }
        }
    }
}
