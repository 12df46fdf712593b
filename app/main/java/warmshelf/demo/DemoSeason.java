package warmshelf.demo;

import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import warmshelf.allocation.SpaceRequest;
import warmshelf.crop.Crop;
import warmshelf.group.Member;
import warmshelf.seed.GerminationShare;
import warmshelf.seed.Lot;
import warmshelf.seed.SeedCount;
import warmshelf.seed.SeedQuestion;
import warmshelf.sowing.Asking;
import warmshelf.sowing.Container;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStage;

/** Every sowing of the demo, worked out before its diary begins. */
final class DemoSeason {
    /** As the asking page reckons: nine times in ten enough, and nine of ten seedlings live. */
    private static final double CONFIDENCE = 0.9;

    private static final double SURVIVAL = 0.9;
    private static final int CELLS_OF_A_TRAY = 72;
    private static final int SEEDS_OF_A_BAG = 60;

    private final DemoHouse house;
    private final Map<String, DemoSeedBox.BoxedLot> lots;
    private final DemoPlanting planting;
    private final LocalDate today;
    private final Map<UUID, DemoPlant> plants = new LinkedHashMap<>();

    DemoSeason(DemoHouse house, Map<String, DemoSeedBox.BoxedLot> lots, LocalDate today, int season) {
        this.house = house;
        this.lots = lots;
        this.today = today;
        this.planting = new DemoPlanting(house.planner(), today, season);
        Map<String, Member> members =
                house.members().all().stream().collect(Collectors.toMap(Member::name, Function.identity()));
        for (var row : DemoTable.rows("sowings.csv")) {
            DemoSowing told = DemoSowing.of(row);
            Member member = DemoTable.known(members, told.member());
            DemoPlant plant =
                    plant(told, new Sowing.Grower(member.id(), member.name(), member.country(), member.postcode()));
            plants.put(plant.sowing().id(), plant);
        }
    }

    LocalDate today() {
        return today;
    }

    Collection<DemoPlant> plants() {
        return plants.values();
    }

    /** One that was asked for otherwise than by the table of sowings. */
    void add(DemoPlant plant) {
        plants.put(plant.sowing().id(), plant);
    }

    DemoPlant plant(UUID sowing) {
        return java.util.Objects.requireNonNull(plants.get(sowing));
    }

    LocalDate firstDay() {
        return plants().stream()
                .map(DemoPlant::askedOn)
                .min(LocalDate::compareTo)
                .orElse(today);
    }

    private DemoPlant plant(DemoSowing row, Sowing.Grower grower) {
        DemoSeedBox.BoxedLot boxed = DemoTable.known(lots, row.variety());
        Crop crop = house.crops().get(boxed.lot().cropId());
        Asking asking = planting.asking(row, grower, crop);
        GerminationShare.Uncertain share = share(boxed, crop, asking.season());
        Amount amount = amount(row, share);
        Sowing sowing = new Sowing(
                UUID.randomUUID(),
                grower,
                asking.season(),
                asking.part(),
                crop,
                boxed.id(),
                row.variety(),
                boxed.lot().treated(),
                amount.plants(),
                row.method(),
                row.warm(),
                row.container(),
                amount.seeds(),
                1,
                amount.seeds(),
                asking.risk(),
                asking.underCoverOn(),
                SowingStage.PLANNED,
                row.note(),
                1,
                null);
        LocalDate askedOn = today.plusDays(row.asked());
        SpaceRequest request = row.warm() ? planting.request(sowing.id(), asking, row, askedOn) : null;
        return new DemoPlant(row, sowing, planting.start(row), askedOn, request, share.mean());
    }

    private static GerminationShare.Uncertain share(DemoSeedBox.BoxedLot boxed, Crop crop, int season) {
        var lot = boxed.lot();
        Lot asKept = new Lot(
                boxed.id(),
                lot.cropId(),
                lot.variety(),
                lot.seedYear(),
                lot.seedsLeft(),
                lot.ownerId(),
                null,
                lot.treated(),
                lot.note(),
                lot.source(),
                lot.storage(),
                0,
                1);
        return asKept.share(crop, boxed.tests(), season);
    }

    /**
     * What is sown: as the asking page reckons; where it does not fit, people ask for fewer plants, and of
     * hopeless seed they sow all that fits.
     */
    private static Amount amount(DemoSowing row, GerminationShare share) {
        int fit = row.container() == Container.BAG
                ? SEEDS_OF_A_BAG
                : CELLS_OF_A_TRAY * row.container().quarters() / 4;
        Optional<Amount> wanted = amount(row.plants(), share, fit);
        if (wanted.isPresent()) {
            return wanted.get();
        }
        // the fewer plants, the fewer seeds: halved until the most that fit are found
        Amount best = new Amount(row.plants(), fit);
        int fits = 0;
        int tooMany = row.plants();
        while (tooMany - fits > 1) {
            int plants = (fits + tooMany) / 2;
            Optional<Amount> fewer = amount(plants, share, fit);
            fits = fewer.isPresent() ? plants : fits;
            tooMany = fewer.isPresent() ? tooMany : plants;
            best = fewer.orElse(best);
        }
        return best;
    }

    private static Optional<Amount> amount(int plants, GerminationShare share, int fit) {
        return SeedCount.of(new SeedQuestion(plants, CONFIDENCE, share, SURVIVAL, 1))
                .filter(count -> count.seeds() <= fit)
                .map(count -> new Amount(plants, count.seeds()));
    }

    private record Amount(int plants, int seeds) {}
}
