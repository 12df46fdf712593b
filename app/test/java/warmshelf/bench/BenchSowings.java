package warmshelf.bench;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Band;
import warmshelf.allocation.ClashStore;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.RequestStore;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.StayStore;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Method;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.sowing.Container;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.GrowerFrost;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingPlanner;
import warmshelf.sowing.SowingStage;
import warmshelf.sowing.SowingStore;
import warmshelf.timeline.SeasonPart;

/** Adds sowings with the requests, stays and daily entries that bring each to where it stands today. */
final class BenchSowings {
    private static final int WARM_DAYS = 12;
    private static final int LIGHT_DAYS = 35;
    private static final int SEEDS = 16;

    private final SowingStore sowings;
    private final RequestStore requests;
    private final EntryStore entries;
    private final StayStore stays;
    private final SowingPlanner planner;
    private final BenchSpace space;
    private final UUID looker;
    private final LocalDate today;
    private final BenchPast past;
    private int entryCount;
    private int lying;

    BenchSowings(Database database, Audit audit, BenchSpace space, UUID looker, LocalDate today) {
        CropCatalogue crops = CropCatalogue.bundled();
        this.sowings = new SowingStore(database, crops, audit);
        this.requests = new RequestStore(database, audit);
        this.entries = new EntryStore(audit);
        this.stays = new StayStore(audit, new ClashStore(crops));
        this.planner = new SowingPlanner(crops, new GrowerFrost(FrostSource.bundledOnly()));
        this.space = space;
        this.looker = looker;
        this.today = today;
        this.past = new BenchPast(space, looker, audit.now());
    }

    /**
     * One member's wish.
     *
     * @param luck 0..9: 0 to 2 use the bag, 3 to 5 a whole tray, the others half a tray
     */
    record Intent(UUID member, String postcode, Crop crop, UUID lot, int season, LocalDate start, int luck) {
        Method method() {
            return luck < 3 ? Method.BAG : Method.CELLS;
        }

        Container container() {
            return luck < 3 ? Container.BAG : luck < 6 ? Container.TRAY : Container.HALF_TRAY;
        }
    }

    int entries() {
        return entryCount;
    }

    int lyingToday() {
        return lying;
    }

    void add(DSLContext tx, Intent intent) {
        Band band = planner.band(intent.crop());
        LocalDate offMat = intent.start().plusDays(WARM_DAYS);
        Optional<PlaceAndDays> spot = space.takeOnMat(band, intent.container().quarters(), intent.start(), offMat);
        UUID id = UUID.randomUUID();
        boolean over = ChronoUnit.DAYS.between(intent.start(), today) > WARM_DAYS + LIGHT_DAYS + 100;
        List<Entry> seen = spot.isEmpty() && !over ? List.of() : history(id, intent);
        SowingStage stage = Progress.of(intent.method(), SEEDS, seen).stage();
        entryCount += seen.size();
        if (over) {
            past.add(sowing(id, intent, stage), spot.orElse(null), band, seen);
            return;
        }
        sowings.add(tx, sowing(id, intent, stage), intent.member());
        requests.add(tx, request(id, intent, band, spot.isPresent()));
        spot.ifPresent(found -> stays.layOnMat(tx, id, found, space.celsius(found.placeId()), band, intent.member()));
        if (stage.compareTo(SowingStage.UNDER_LIGHT) >= 0) {
            space.takeUnderLight(Math.max(2, intent.container().quarters()), offMat, offMat.plusDays(LIGHT_DAYS))
                    .ifPresent(lit -> stays.layUnderLight(tx, id, lit, intent.member()));
        }
        seen.forEach(entry -> entries.add(tx, entry));
        boolean begun = !intent.start().isAfter(today);
        lying += spot.isPresent() && begun && offMat.plusDays(LIGHT_DAYS).isAfter(today) ? 1 : 0;
    }

    /** Writes the seasons before this one, all at once. */
    void writePast(DSLContext tx) {
        past.write(tx);
    }

    /** What a sowing that is looked at every day has in its book by this morning. */
    private List<Entry> history(UUID sowing, Intent intent) {
        List<Entry> seen = new ArrayList<>();
        long age = ChronoUnit.DAYS.between(intent.start(), today);
        for (int day = 0; day < Math.min(age, WARM_DAYS + LIGHT_DAYS + 11); day++) {
            boolean bag = intent.method() == Method.BAG;
            EntryStep step = switch (day) {
                case 0 -> EntryStep.SOWN;
                case WARM_DAYS - 1 -> bag ? EntryStep.MOVED_TO_CELLS : EntryStep.LOOK;
                case WARM_DAYS -> EntryStep.UNDER_LIGHT;
                case WARM_DAYS + 10 -> EntryStep.FIRST_FEED;
                case WARM_DAYS + 21 -> EntryStep.POTTED_ON;
                case WARM_DAYS + LIGHT_DAYS -> EntryStep.HARDENING_OFF;
                case WARM_DAYS + LIGHT_DAYS + 10 -> EntryStep.PLANTED_OUT;
                default -> EntryStep.LOOK;
            };
            boolean afterLight = day > WARM_DAYS + LIGHT_DAYS;
            boolean waiting = bag && day < 5;
            if (step != EntryStep.LOOK || (!afterLight && !waiting)) {
                seen.add(entry(sowing, step, intent.start().plusDays(day), counted(step, day)));
            }
        }
        return seen;
    }

    private static @Nullable Integer counted(EntryStep step, int day) {
        return step == EntryStep.LOOK && day < WARM_DAYS ? Integer.valueOf(Math.max(0, 2 * (day - 5))) : null;
    }

    private Entry entry(UUID sowing, EntryStep step, LocalDate day, @Nullable Integer count) {
        boolean moved = step == EntryStep.MOVED_TO_CELLS;
        return new Entry(
                UUID.randomUUID(),
                sowing,
                step,
                day,
                day.atTime(LocalTime.of(15, 0)).atOffset(ZoneOffset.UTC),
                count,
                moved ? Integer.valueOf(14) : null,
                null,
                moved,
                null,
                "",
                null,
                looker,
                "");
    }

    private static Sowing sowing(UUID id, Intent intent, SowingStage stage) {
        return new Sowing(
                id,
                new Sowing.Grower(intent.member(), "", "US", intent.postcode()),
                intent.season(),
                SeasonPart.SPRING,
                intent.crop(),
                intent.lot(),
                "",
                false,
                12,
                intent.method(),
                true,
                intent.container(),
                SEEDS,
                1,
                SEEDS,
                0.1,
                null,
                stage,
                "",
                1,
                null);
    }

    private static SpaceRequest request(UUID sowing, Intent intent, Band band, boolean placed) {
        return new SpaceRequest(
                sowing,
                placed ? SpaceRequest.State.PLACED : SpaceRequest.State.WAITING,
                intent.start().minusDays(7),
                intent.start(),
                intent.start().plusDays(14),
                WARM_DAYS,
                intent.container().quarters(),
                band,
                false,
                "",
                1);
    }
}
