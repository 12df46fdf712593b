package warmshelf.placing;

import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Records;
import warmshelf.allocation.Band;
import warmshelf.allocation.ClashStore;
import warmshelf.allocation.MatDayStore;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.shelf.OnSiteStore;

/** Reads what a mat is set to, what lies on it and what its thermometer showed; changes its set-point. */
final class SetPointStore {
    private final DSLContext sql;
    private final MatDayStore matDays;

    SetPointStore(Database database, MatDayStore matDays) {
        this.sql = database.sql();
        this.matDays = matDays;
    }

    /** A mat by name, with what its thermostat holds. */
    public record MatFacts(UUID id, String name, double lowC, double highC, double usualC, int watts, UUID site) {}

    /** Days at one set-point; the last day is included. */
    public record Span(LocalDate first, LocalDate last, double celsius) {}

    /** Something on the mat; {@code to} is the day it leaves. */
    public record Lying(
            UUID sowingId, String variety, String grower, int place, LocalDate from, LocalDate to, Band band) {}

    /** What a thermometer showed. */
    public record Reading(LocalDate day, double celsius, String by) {}

    Optional<MatFacts> mat(UUID id) {
        return OnSiteStore.ofMats(sql.select(
                                MAT.ID,
                                MAT.NAME,
                                MAT.THERMOSTAT_LOW_C,
                                MAT.THERMOSTAT_HIGH_C,
                                MAT.USUAL_C,
                                MAT.WATTS,
                                RACK.SITE_ID)
                        .from(MAT))
                .where(MAT.ID.eq(id))
                .fetchOptional(Records.mapping(MatFacts::new));
    }

    /** The set-points from a day on, equal days joined. */
    List<Span> spans(UUID mat, LocalDate from) {
        List<Span> spans = new ArrayList<>();
        sql.select(MAT_DAY.ON_DAY, MAT_DAY.CELSIUS)
                .from(MAT_DAY)
                .where(MAT_DAY.MAT_ID.eq(mat), MAT_DAY.ON_DAY.ge(from))
                .orderBy(MAT_DAY.ON_DAY)
                .forEach(row -> join(spans, row.value1(), row.value2()));
        return spans;
    }

    private static void join(List<Span> spans, LocalDate day, double celsius) {
        Span last = spans.isEmpty() ? null : spans.get(spans.size() - 1);
        if (last != null && last.celsius() == celsius && last.last().plusDays(1).equals(day)) {
            spans.set(spans.size() - 1, new Span(last.first(), day, celsius));
        } else {
            spans.add(new Span(day, day, celsius));
        }
    }

    /** What lies or will lie on a mat from a day on. */
    List<Lying> lying(UUID mat, LocalDate from) {
        return ClashStore.whoLies(sql.selectDistinct(
                        SOWING.ID,
                        LOT.VARIETY,
                        MEMBER.CALLED,
                        PLACE.NUMBER,
                        STAY.FROM_DAY,
                        STAY.TO_DAY,
                        QUARTER_DAY.LOW_C,
                        QUARTER_DAY.HIGH_C))
                .join(PLACE)
                .on(PLACE.ID.eq(QUARTER_DAY.PLACE_ID))
                .where(QUARTER_DAY.MAT_ID.eq(mat), QUARTER_DAY.ON_DAY.ge(from))
                .orderBy(STAY.FROM_DAY, PLACE.NUMBER, SOWING.ID)
                .fetch(row -> new Lying(
                        row.value1(),
                        row.value2(),
                        row.value3(),
                        row.value4(),
                        row.value5(),
                        row.value6(),
                        new Band(row.value7(), row.value8())));
    }

    List<Reading> readings(UUID mat, LocalDate from) {
        return sql.select(ENTRY.SEEN_ON, ENTRY.CELSIUS, MEMBER.CALLED)
                .from(ENTRY)
                .join(MEMBER)
                .on(MEMBER.ID.eq(ENTRY.MADE_BY))
                .where(ENTRY.MAT_ID.eq(mat), ENTRY.SEEN_ON.ge(from))
                .orderBy(ENTRY.SEEN_AT.desc(), ENTRY.KEPT_ORDER.desc())
                .fetch(row -> new Reading(row.value1(), row.value2().doubleValue(), row.value3()));
    }

    /** Sets a mat to one temperature on days, the last included. */
    Decision<UUID> set(UUID mat, LocalDate first, LocalDate last, double celsius, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            matDays.turnByHand(inside.dsl(), mat, first, last.plusDays(1), celsius, by);
            return mat;
        }));
    }
}
