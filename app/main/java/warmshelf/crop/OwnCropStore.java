package warmshelf.crop;

import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.OWN_CROP;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.locks.ReentrantLock;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.exception.IntegrityConstraintViolationException;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop.Basis;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;

/** What coordinators wrote of crops. */
public final class OwnCropStore {
    private static final long KEPT_NANOS = Duration.ofSeconds(2).toNanos();

    private final Database database;
    private final Audit audit;
    private final VarietyStore varieties;
    private final ReentrantLock reading = new ReentrantLock();
    private volatile Kept kept;

    private record Kept(long sinceNanos, OwnHorticulture own) {}

    public OwnCropStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
        this.varieties = new VarietyStore(database, audit, this::readAgain);
        this.kept = new Kept(System.nanoTime(), new OwnHorticulture(newest(), varieties.all()));
    }

    /** The group's catalogue. What is written through this store shows in it at once, what others write within two seconds. */
    public CropCatalogue catalogue() {
        return CropCatalogue.with(this::own);
    }

    /** What is known of single varieties. */
    public VarietyStore varieties() {
        return varieties;
    }

    /**
     * Crops are asked for in the middle of transactions, where a wait for a second connection could stop everybody. So only one
     * reads anew, and the rest go on with what was read before.
     */
    private OwnHorticulture own() {
        if (System.nanoTime() - kept.sinceNanos() > KEPT_NANOS && reading.tryLock()) {
            try {
                readAgain();
            } finally {
                reading.unlock();
            }
        }
        return kept.own();
    }

    /** One after the other, so that what was read before a change never comes to stand over what was read after it. */
    private void readAgain() {
        reading.lock();
        try {
            OwnHorticulture read = new OwnHorticulture(newest(), varieties.all());
            OwnHorticulture before = kept.own();
            // The same object again tells the catalogue that nothing changed.
            kept = new Kept(System.nanoTime(), before.equals(read) ? before : read);
        } finally {
            reading.unlock();
        }
    }

    private List<OwnCrop> newest() {
        Map<String, OwnCrop> newest = new LinkedHashMap<>();
        database.sql()
                .select(OWN_CROP.asterisk(), MEMBER.CALLED)
                .from(OWN_CROP)
                .join(MEMBER)
                .on(MEMBER.ID.eq(OWN_CROP.MADE_BY))
                .orderBy(OWN_CROP.CROP_ID, OWN_CROP.VERSION)
                .forEach(row -> newest.put(row.get(OWN_CROP.CROP_ID), own(row)));
        return new ArrayList<>(newest.values());
    }

    /**
     * Writes what a coordinator says of a crop, as the version after the one that was shown.
     *
     * @param shown the version that was shown; 0 where nothing had been written
     * @return the version that was written; overtaken when somebody else was first
     */
    public Decision<Integer> write(Crop crop, OwnEmergence emergence, int shown, UUID by) {
        return isNext(crop, emergence, true, shown + 1, by)
                ? new Decision.Done<>(shown + 1)
                : new Decision.Overtaken<>(new CropChanged(lastBy(crop.id())));
    }

    /**
     * Takes back what was written of a crop; what was said stays on record.
     *
     * @param shown the version that was shown
     * @return the version that was written; overtaken when somebody wrote meanwhile
     */
    public Decision<Integer> takeBack(OwnCrop own, int shown, UUID by) {
        return isNext(own.crop(), own.emergence(), false, shown + 1, by)
                ? new Decision.Done<>(shown + 1)
                : new Decision.Overtaken<>(new TakenBackTooLate());
    }

    /** Writes a version; false when it, or a later one, is there already: nothing is written then. */
    private boolean isNext(Crop crop, OwnEmergence emergence, boolean keep, int version, UUID by) {
        try {
            database.sql().transaction(work -> write(work.dsl(), crop, emergence, keep, version, by));
            readAgain();
            return true;
        } catch (IntegrityConstraintViolationException somebodyElseWas) {
            readAgain();
            return false;
        }
    }

    private String lastBy(String cropId) {
        return database.sql()
                .select(MEMBER.CALLED)
                .from(OWN_CROP)
                .join(MEMBER)
                .on(MEMBER.ID.eq(OWN_CROP.MADE_BY))
                .where(OWN_CROP.CROP_ID.eq(cropId))
                .orderBy(OWN_CROP.VERSION.desc())
                .limit(1)
                .fetchSingle(MEMBER.CALLED);
    }

    private void write(DSLContext sql, Crop crop, OwnEmergence emergence, boolean keep, int version, UUID by) {
        sql.insertInto(OWN_CROP)
                .set(OWN_CROP.CROP_ID, crop.id())
                .set(OWN_CROP.VERSION, version)
                .set(OWN_CROP.KEPT, keep)
                .set(OWN_CROP.NAME, crop.name())
                .set(OWN_CROP.SPECIES, crop.species())
                .set(OWN_CROP.HARDINESS, crop.hardiness().words())
                .set(OWN_CROP.WEEKS_INDOORS_MIN, crop.weeksIndoorsMin())
                .set(OWN_CROP.WEEKS_INDOORS_MAX, crop.weeksIndoorsMax())
                .set(OWN_CROP.PLANT_OUT_OFFSET_DAYS, crop.plantOutOffsetDays())
                .set(OWN_CROP.PLANT_OUT_OFFSET_DAYS_LATEST, crop.plantOutOffsetDaysLatest())
                .set(OWN_CROP.NIGHT_MINIMUM_C, decimal(crop.nightMinimumC()))
                .set(OWN_CROP.DEPTH_MM, decimal(crop.depthMm()))
                .set(OWN_CROP.LIGHT, crop.light().word())
                .set(treatment(crop))
                .set(OWN_CROP.HAZARDS, CropHazard.words(crop.hazards()))
                .set(
                        OWN_CROP.MATURITY_MIN,
                        crop.maturity().map(DaysToMaturity::min).orElse(null))
                .set(
                        OWN_CROP.MATURITY_MAX,
                        crop.maturity().map(DaysToMaturity::max).orElse(null))
                .set(
                        OWN_CROP.MATURITY_BASIS,
                        crop.maturity().map(days -> days.basis().word()).orElse(null))
                .set(OWN_CROP.SEED_LIFE_YEARS, crop.seedLifeYears())
                .set(OWN_CROP.NOTE, crop.note())
                .set(OWN_CROP.SOURCE, crop.source())
                .set(OWN_CROP.SOURCE_URL, crop.sourceUrl())
                .set(columns(emergence))
                .set(OWN_CROP.MADE_BY, by)
                .set(OWN_CROP.MADE_AT, audit.now())
                .execute();
        audit.write(
                sql, by, keep ? "write" : "take back", "crop", crop.id(), "%s, version %d".formatted(crop, version));
    }

    private static Map<Field<?>, @Nullable Object> treatment(Crop crop) {
        SeedTreatment treatment = crop.treatment();
        Map<Field<?>, @Nullable Object> columns = new HashMap<>();
        columns.put(OWN_CROP.TREATMENT, treatment.words());
        columns.put(OWN_CROP.SOAK, treatment.soak().word());
        columns.put(OWN_CROP.SOAK_HOURS_MIN, treatment.hours().least());
        columns.put(OWN_CROP.SOAK_HOURS_MAX, treatment.hours().most());
        columns.put(OWN_CROP.NICK, treatment.nick());
        columns.put(OWN_CROP.COLD_WEEKS_MIN, treatment.coldWeeks().least());
        columns.put(OWN_CROP.COLD_WEEKS_MAX, treatment.coldWeeks().most());
        return columns;
    }

    private static Map<Field<?>, @Nullable Object> columns(OwnEmergence emergence) {
        Map<Field<?>, @Nullable Object> columns = new HashMap<>();
        if (emergence instanceof OwnEmergence.Like like) {
            columns.put(OWN_CROP.EMERGENCE, "like");
            columns.put(OWN_CROP.EMERGENCE_LIKE, like.cropId());
        } else if (emergence instanceof OwnEmergence.Stated stated) {
            columns.put(OWN_CROP.EMERGENCE, "stated");
            columns.put(OWN_CROP.EMERGENCE_DAYS_MIN, decimal(stated.daysMin()));
            columns.put(OWN_CROP.EMERGENCE_DAYS_MAX, decimal(stated.daysMax()));
            columns.put(OWN_CROP.EMERGENCE_LOW_C, decimal(stated.at().low()));
            columns.put(OWN_CROP.EMERGENCE_HIGH_C, decimal(stated.at().high()));
        } else {
            columns.put(OWN_CROP.EMERGENCE, "reference");
        }
        return columns;
    }

    private static OwnCrop own(Record row) {
        return new OwnCrop(
                crop(row),
                emergence(row),
                row.get(OWN_CROP.KEPT),
                row.get(OWN_CROP.VERSION),
                row.get(MEMBER.CALLED),
                row.get(OWN_CROP.MADE_AT));
    }

    private static Crop crop(Record row) {
        String id = row.get(OWN_CROP.CROP_ID);
        Optional<Crop> reference = CropCatalogue.bundled().find(id);
        return new Crop(
                id,
                row.get(OWN_CROP.NAME),
                row.get(OWN_CROP.SPECIES),
                Hardiness.named(row.get(OWN_CROP.HARDINESS)),
                row.get(OWN_CROP.WEEKS_INDOORS_MIN),
                row.get(OWN_CROP.WEEKS_INDOORS_MAX),
                row.get(OWN_CROP.PLANT_OUT_OFFSET_DAYS),
                row.get(OWN_CROP.PLANT_OUT_OFFSET_DAYS_LATEST),
                number(row.get(OWN_CROP.NIGHT_MINIMUM_C)),
                number(row.get(OWN_CROP.DEPTH_MM)),
                SeedLight.named(row.get(OWN_CROP.LIGHT)),
                reference.map(Crop::raisedFrom).orElse(RaisedFrom.SEED),
                treatment(row, reference.map(of -> of.treatment().traits()).orElse(List.of())),
                CropHazard.named(row.get(OWN_CROP.HAZARDS)),
                maturity(row),
                // The law's minimum is no coordinator's to change.
                reference.map(Crop::legalMinimumPercent).orElse(null),
                row.get(OWN_CROP.SEED_LIFE_YEARS),
                Set.of(),
                row.get(OWN_CROP.NOTE),
                row.get(OWN_CROP.SOURCE),
                row.get(OWN_CROP.SOURCE_URL),
                Standing.PUBLISHED);
    }

    private static SeedTreatment treatment(Record row, List<SeedTrait> traits) {
        return new SeedTreatment(
                Soak.named(row.get(OWN_CROP.SOAK)),
                new SeedTreatment.Span(row.get(OWN_CROP.SOAK_HOURS_MIN), row.get(OWN_CROP.SOAK_HOURS_MAX)),
                row.get(OWN_CROP.NICK),
                new SeedTreatment.Span(row.get(OWN_CROP.COLD_WEEKS_MIN), row.get(OWN_CROP.COLD_WEEKS_MAX)),
                traits,
                row.get(OWN_CROP.TREATMENT));
    }

    private static Optional<DaysToMaturity> maturity(Record row) {
        Integer min = row.get(OWN_CROP.MATURITY_MIN);
        return min == null
                ? Optional.empty()
                : Optional.of(new DaysToMaturity(
                        min, row.get(OWN_CROP.MATURITY_MAX), Basis.named(row.get(OWN_CROP.MATURITY_BASIS))));
    }

    private static OwnEmergence emergence(Record row) {
        return switch (row.get(OWN_CROP.EMERGENCE)) {
            case "like" -> new OwnEmergence.Like(row.get(OWN_CROP.EMERGENCE_LIKE));
            case "stated" ->
                new OwnEmergence.Stated(
                        row.get(OWN_CROP.EMERGENCE_DAYS_MIN).doubleValue(),
                        row.get(OWN_CROP.EMERGENCE_DAYS_MAX).doubleValue(),
                        new CelsiusRange(
                                row.get(OWN_CROP.EMERGENCE_LOW_C).doubleValue(),
                                row.get(OWN_CROP.EMERGENCE_HIGH_C).doubleValue()));
            default -> new OwnEmergence.AsReference();
        };
    }

    private static @Nullable BigDecimal decimal(@Nullable Double number) {
        return number == null ? null : BigDecimal.valueOf(number);
    }

    private static @Nullable Double number(@Nullable BigDecimal decimal) {
        return decimal == null ? null : decimal.doubleValue();
    }
}
