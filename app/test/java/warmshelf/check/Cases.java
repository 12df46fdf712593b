package warmshelf.check;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Slot;
import warmshelf.allocation.Stay;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Method;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.sowing.Container;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.GrowerFrost;
import warmshelf.sowing.History;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingPlanner;
import warmshelf.sowing.TrialPart;
import warmshelf.testing.Crops;
import warmshelf.timeline.SeasonPart;

/** A sowing in the making for tests of the round: Tom's twelve pepper seeds, at 26 °C, near Duluth. */
final class Cases {
    static final LocalDate SOWN = LocalDate.of(2027, 3, 10);
    static final int SEEDS = 12;
    static final UUID PLACE = new UUID(6, 1);
    static final UUID LIT = new UUID(6, 2);
    private static final RoundReader READER = new RoundReader(
            new SowingPlanner(CropCatalogue.bundled(), new GrowerFrost(FrostSource.bundledOnly())),
            sowing -> java.util.Optional.of(new warmshelf.seed.GerminationShare.Uncertain(17, 3)));

    private final Method method;
    private final boolean warm;
    private final Crop crop;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Stay> stays = new ArrayList<>();
    private UUID id = new UUID(3, 3);
    private @Nullable TrialPart trial;

    private Cases(Crop crop, Method method, boolean warm) {
        this.crop = crop;
        this.method = method;
        this.warm = warm;
    }

    static Cases cells() {
        return new Cases(Crops.PEPPER, Method.CELLS, true);
    }

    static Cases bag() {
        return new Cases(Crops.PEPPER, Method.BAG, true);
    }

    static Cases ofCrop(Crop crop) {
        return new Cases(crop, Method.CELLS, true);
    }

    static Cases atRoomTemperature(Crop crop) {
        return new Cases(crop, Method.CELLS, false);
    }

    Cases id(UUID other) {
        id = other;
        return this;
    }

    /** Way B of a trial. */
    Cases inTrial(boolean soaked) {
        trial = new TrialPart(new UUID(8, 8), 3, 1, "B", soaked, SOWN);
        return this;
    }

    /** Placed on the mat over days. */
    Cases onMat(LocalDate from, LocalDate to) {
        return stay(PLACE, "mat", from, to);
    }

    /** Under the light over days. */
    Cases underLight(LocalDate from, LocalDate to) {
        return stay(LIT, "lit", from, to);
    }

    private Cases stay(UUID place, String kind, LocalDate from, LocalDate to) {
        stays.add(new Stay(new UUID(9, stays.size()), id, place, kind, "Hall cellar", new Slot(1, 2), from, to, 1));
        return this;
    }

    Cases sown() {
        return entered(SOWN, EntryStep.SOWN);
    }

    Cases entered(LocalDate day, EntryStep step) {
        return entered(day, step, null, null, false);
    }

    Cases looked(LocalDate day, int sprouted) {
        return entered(day, EntryStep.LOOK, sprouted, null, false);
    }

    Cases entered(
            LocalDate day, EntryStep step, @Nullable Integer sprouted, @Nullable Integer moved, boolean finished) {
        entries.add(new Entry(
                new UUID(id.getLeastSignificantBits(), entries.size()),
                id,
                step,
                day,
                day.atTime(8, entries.size()).atOffset(ZoneOffset.UTC),
                sprouted,
                moved,
                null,
                finished,
                null,
                "",
                null,
                new UUID(4, 4),
                "Priya"));
        return this;
    }

    Sowing sowing() {
        return new Sowing(
                id,
                new Sowing.Grower(new UUID(4, 4), "Tom", "US", "55804"),
                2027,
                SeasonPart.SPRING,
                crop,
                new UUID(5, 5),
                "Lantern Row",
                false,
                8,
                method,
                warm,
                method == Method.BAG ? Container.BAG : Container.HALF_TRAY,
                SEEDS,
                1,
                SEEDS,
                0.1,
                null,
                Progress.of(method, SEEDS, entries).stage(),
                "",
                1,
                trial);
    }

    History history() {
        return new History(sowing(), entries, stays, null, stays.isEmpty() ? null : 26.0);
    }

    Subject on(LocalDate today) {
        return READER.subject(history(), today);
    }

    List<Check> due(LocalDate today) {
        return ChecksDue.on(today, on(today));
    }

    List<CheckKind> kinds(LocalDate today) {
        return due(today).stream().map(Check::kind).toList();
    }
}
