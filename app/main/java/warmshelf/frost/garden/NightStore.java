package warmshelf.frost.garden;

import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.THERMOMETER_NIGHT;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import org.jooq.BatchBindStep;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record2;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.frost.evidence.VersionStore;

/** The nights that thermometers showed. A night is written over or taken away only with a line that keeps the old figure. */
public final class NightStore {
    private static final String SUBJECT = "thermometer";

    private final Database database;
    private final Audit audit;

    public NightStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
    }

    /** The nights noted over some days, both included, the newest first. */
    public List<Night> nights(UUID thermometer, LocalDate from, LocalDate to) {
        return database.sql()
                .select(THERMOMETER_NIGHT.ON_DAY, THERMOMETER_NIGHT.CELSIUS, MEMBER.CALLED)
                .from(THERMOMETER_NIGHT)
                .join(MEMBER)
                .on(MEMBER.ID.eq(THERMOMETER_NIGHT.NOTED_BY))
                .where(THERMOMETER_NIGHT.THERMOMETER_ID.eq(thermometer))
                .and(THERMOMETER_NIGHT.ON_DAY.between(from, to))
                .orderBy(THERMOMETER_NIGHT.ON_DAY.desc())
                .fetch(row -> new Night(row.value1(), row.value2().doubleValue(), row.value3()));
    }

    /**
     * Notes the lowest temperature of a night, also over one that was noted before.
     *
     * @return what was noted before, in Celsius
     */
    Optional<Double> note(UUID thermometer, LocalDate day, double celsius, UUID by) {
        return database.sql().transactionResult(work -> {
            VersionStore.grow(work.dsl());
            Optional<Double> before = put(work.dsl(), thermometer, day, celsius, by);
            if (before.isEmpty()) {
                audit.write(work.dsl(), by, "note night", SUBJECT, thermometer, "%s: %s C".formatted(day, celsius));
            }
            return before;
        });
    }

    /**
     * Notes many nights, all of them or none.
     *
     * @return how many of them had been noted before
     */
    public int noteAll(UUID thermometer, SortedMap<LocalDate, Double> nights, UUID by) {
        return database.sql().transactionResult(work -> noteAll(work.dsl(), thermometer, nights, by));
    }

    /** The same within the caller's transaction. */
    public int noteAll(DSLContext within, UUID thermometer, SortedMap<LocalDate, Double> nights, UUID by) {
        VersionStore.grow(within);
        Map<LocalDate, Double> before = noted(within, thermometer, nights.firstKey(), nights.lastKey());
        Map<LocalDate, Double> fresh = new TreeMap<>();
        int over = 0;
        for (Map.Entry<LocalDate, Double> night : nights.entrySet()) {
            @Nullable Double old = before.get(night.getKey());
            if (old == null) {
                fresh.put(night.getKey(), night.getValue());
            } else {
                change(within, thermometer, night.getKey(), old, night.getValue(), by);
                over++;
            }
        }
        add(within, thermometer, fresh, by);
        audit.write(
                within,
                by,
                "note nights",
                SUBJECT,
                thermometer,
                "%d from %s to %s, %d of them noted before"
                        .formatted(nights.size(), nights.firstKey(), nights.lastKey(), over));
        return over;
    }

    /** Takes a wrong night away; empty when it was not noted. */
    Optional<Double> forget(UUID thermometer, LocalDate day, UUID by) {
        return database.sql().transactionResult(work -> {
            VersionStore.grow(work.dsl());
            Optional<Double> before =
                    Optional.ofNullable(noted(work.dsl(), thermometer, day, day).get(day));
            before.ifPresent(celsius -> {
                work.dsl()
                        .deleteFrom(THERMOMETER_NIGHT)
                        .where(is(thermometer, day))
                        .execute();
                audit.write(
                        work.dsl(), by, "forget night", SUBJECT, thermometer, "%s: was %s C".formatted(day, celsius));
            });
            return before;
        });
    }

    private Optional<Double> put(DSLContext within, UUID thermometer, LocalDate day, double celsius, UUID by) {
        Optional<Double> before =
                Optional.ofNullable(noted(within, thermometer, day, day).get(day));
        before.ifPresentOrElse(
                old -> change(within, thermometer, day, old, celsius, by),
                () -> add(within, thermometer, Map.of(day, celsius), by));
        return before;
    }

    private void change(DSLContext within, UUID thermometer, LocalDate day, double old, double celsius, UUID by) {
        within.update(THERMOMETER_NIGHT)
                .set(THERMOMETER_NIGHT.CELSIUS, tenths(celsius))
                .set(THERMOMETER_NIGHT.NOTED_BY, by)
                .set(THERMOMETER_NIGHT.NOTED_AT, audit.now())
                .where(is(thermometer, day))
                .execute();
        String detail = "%s: %s C, was %s C".formatted(day, celsius, old);
        audit.write(within, by, "change night", SUBJECT, thermometer, detail);
    }

    private void add(DSLContext within, UUID thermometer, Map<LocalDate, Double> nights, UUID by) {
        if (nights.isEmpty()) {
            return;
        }
        BatchBindStep batch = within.batch(within.insertInto(
                        THERMOMETER_NIGHT,
                        THERMOMETER_NIGHT.THERMOMETER_ID,
                        THERMOMETER_NIGHT.ON_DAY,
                        THERMOMETER_NIGHT.CELSIUS,
                        THERMOMETER_NIGHT.NOTED_BY,
                        THERMOMETER_NIGHT.NOTED_AT)
                .values((UUID) null, null, null, null, null));
        for (Map.Entry<LocalDate, Double> night : nights.entrySet()) {
            batch = batch.bind(thermometer, night.getKey(), tenths(night.getValue()), by, audit.now());
        }
        batch.execute();
    }

    private static BigDecimal tenths(double celsius) {
        return BigDecimal.valueOf(celsius).setScale(1, RoundingMode.HALF_UP);
    }

    private static Map<LocalDate, Double> noted(DSLContext within, UUID thermometer, LocalDate from, LocalDate to) {
        return within.select(THERMOMETER_NIGHT.ON_DAY, THERMOMETER_NIGHT.CELSIUS)
                .from(THERMOMETER_NIGHT)
                .where(THERMOMETER_NIGHT.THERMOMETER_ID.eq(thermometer))
                .and(THERMOMETER_NIGHT.ON_DAY.between(from, to))
                .orderBy(THERMOMETER_NIGHT.ON_DAY)
                .fetchMap(Record2::value1, row -> row.value2().doubleValue());
    }

    private static Condition is(UUID thermometer, LocalDate day) {
        return THERMOMETER_NIGHT.THERMOMETER_ID.eq(thermometer).and(THERMOMETER_NIGHT.ON_DAY.eq(day));
    }
}
