package warmshelf.bench;

import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.TableRecord;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Band;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.sowing.Entry;
import warmshelf.sowing.Sowing;

/** Sowings of seasons that are over, written as rows many at a time: through the stores half a million entries take an hour. */
final class BenchPast {
    private static final int AT_ONCE = 5_000;

    private final BenchSpace space;
    private final UUID by;
    private final OffsetDateTime madeAt;
    private final List<TableRecord<?>> sowings = new ArrayList<>();
    private final List<TableRecord<?>> matDays = new ArrayList<>();
    private final List<TableRecord<?>> stays = new ArrayList<>();
    private final List<TableRecord<?>> quarterDays = new ArrayList<>();
    private final List<TableRecord<?>> entries = new ArrayList<>();
    private final List<TableRecord<?>> audits = new ArrayList<>();
    private final Set<String> set = new HashSet<>();

    BenchPast(BenchSpace space, UUID by, OffsetDateTime madeAt) {
        this.space = space;
        this.by = by;
        this.madeAt = madeAt;
    }

    void add(Sowing sowing, @Nullable PlaceAndDays spot, Band band, List<Entry> seen) {
        var row = SOWING.newRecord();
        row.setId(sowing.id());
        row.setMemberId(sowing.grower().memberId());
        row.setSeason(sowing.season());
        row.setSeasonPart(sowing.part().word());
        row.setCropId(sowing.crop().id());
        row.setLotId(sowing.lotId());
        row.setPlantsWanted(sowing.plantsWanted());
        row.setMethod(sowing.method().word());
        row.setWarm(sowing.warm());
        row.setContainer(sowing.container().word());
        row.setQuarters(sowing.container().quarters());
        row.setSeeds(sowing.seeds());
        row.setSeedsPerCell(sowing.seedsPerCell());
        row.setCells(sowing.cells());
        row.setRisk(BigDecimal.valueOf(sowing.risk()));
        row.setStage(sowing.stage().word());
        row.setAskedAt(seen.get(0).seenAt().minusDays(20));
        row.setNote("");
        row.setVersion(1);
        sowings.add(row);
        if (spot != null) {
            lay(sowing.id(), spot, band);
        }
        seen.forEach(this::keep);
    }

    private void lay(UUID sowing, PlaceAndDays spot, Band band) {
        var stay = STAY.newRecord();
        stay.setId(UUID.randomUUID());
        stay.setSowingId(sowing);
        stay.setPlaceId(spot.placeId());
        stay.setFirstQuarter(spot.slot().firstQuarter());
        stay.setQuarters(spot.slot().quarters());
        stay.setFromDay(spot.from());
        stay.setToDay(spot.to());
        stay.setMadeBy(by);
        stay.setMadeAt(madeAt);
        stay.setVersion(1);
        stays.add(stay);
        for (LocalDate day = spot.from(); day.isBefore(spot.to()); day = day.plusDays(1)) {
            UUID mat = space.matOf(spot.placeId());
            if (set.add(mat + " " + day)) {
                var warm = MAT_DAY.newRecord();
                warm.setMatId(mat);
                warm.setOnDay(day);
                warm.setCelsius((double) space.celsius(spot.placeId()));
                warm.setByHand(false);
                matDays.add(warm);
            }
            for (int quarter = 0; quarter < spot.slot().quarters(); quarter++) {
                var taken = QUARTER_DAY.newRecord();
                taken.setPlaceId(spot.placeId());
                taken.setQuarter(spot.slot().firstQuarter() + quarter);
                taken.setOnDay(day);
                taken.setStayId(stay.getId());
                taken.setKind("mat");
                taken.setMatId(mat);
                taken.setCelsius((double) space.celsius(spot.placeId()));
                taken.setLowC(band.lowC());
                taken.setHighC(band.highC());
                quarterDays.add(taken);
            }
        }
    }

    private void keep(Entry seen) {
        var entry = ENTRY.newRecord();
        entry.setId(seen.id());
        entry.setSowingId(seen.sowingId());
        entry.setStep(seen.step().word());
        entry.setSeenOn(seen.seenOn());
        entry.setSeenAt(seen.seenAt());
        entry.setSprouted(seen.sprouted());
        entry.setMoved(seen.moved());
        entry.setLost(seen.lost());
        entry.setFinished(seen.finished());
        entry.setNote(seen.note());
        entry.setMadeBy(seen.by());
        entry.setMadeAt(seen.seenAt());
        entries.add(entry);
        var line = AUDIT_LINE.newRecord();
        line.setId(UUID.randomUUID());
        line.setAt(seen.seenAt());
        line.setMemberId(seen.by());
        line.setAction("enter " + seen.step().word());
        line.setSubject("sowing");
        line.setSubjectId(seen.sowingId().toString());
        line.setDetail("entry " + seen.id());
        audits.add(line);
    }

    void write(DSLContext tx) {
        for (List<TableRecord<?>> rows : List.of(sowings, matDays, stays, quarterDays, entries, audits)) {
            for (int from = 0; from < rows.size(); from += AT_ONCE) {
                insert(tx, rows.subList(from, Math.min(rows.size(), from + AT_ONCE)));
            }
            rows.clear();
        }
    }

    private static void insert(DSLContext tx, List<TableRecord<?>> rows) {
        tx.batchInsert(rows).execute();
    }
}
