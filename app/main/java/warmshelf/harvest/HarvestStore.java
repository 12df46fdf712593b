package warmshelf.harvest;

import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.HARVEST_REPORT;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SURPLUS_TAKING;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.Records;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.seed.GrownBefore;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.SowingStage;

/** Keeps what people say of what they planted out: their own, and what they took of others' seedlings. */
public final class HarvestStore implements GrownBefore {
    private final DSLContext sql;
    private final Audit audit;

    public HarvestStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /**
     * A sowing that somebody can be asked about.
     *
     * @param plantedOutOn the first day on which any of it went out, or on which they got it from its grower
     */
    public record PlantedOut(UUID sowingId, int season, String cropId, String variety, LocalDate plantedOutOn) {
        private String varietyInSeason() {
            return "%d/%s/%s".formatted(season, cropId, variety.toLowerCase(Locale.ROOT));
        }
    }

    /**
     * What a member planted out in a season and the one before it, or took of others' seedlings; the latest first. A variety that
     * somebody had from several sowings of a season is asked about once, by the sowing of which they said something, if any.
     */
    public List<PlantedOut> plantedOut(UUID member, int season) {
        List<PlantedOut> all = Stream.concat(own(member, season).stream(), takenOver(member, season).stream())
                .sorted(Comparator.comparing(PlantedOut::season)
                        .thenComparing(PlantedOut::plantedOutOn)
                        .reversed()
                        .thenComparing(PlantedOut::sowingId))
                .toList();
        Set<UUID> said =
                notes(member, all.stream().map(PlantedOut::sowingId).toList()).keySet();
        Map<String, PlantedOut> once = new LinkedHashMap<>();
        all.forEach(each -> once.merge(
                each.varietyInSeason(), each, (one, other) -> said.contains(other.sowingId()) ? other : one));
        return List.copyOf(once.values());
    }

    private List<PlantedOut> takenOver(UUID member, int season) {
        var on = DSL.min(SURPLUS_TAKING.HANDED_OVER_ON).as("on_day");
        return sql.select(SOWING.ID, SOWING.SEASON, SOWING.CROP_ID, LOT.VARIETY, on)
                .from(SURPLUS_TAKING)
                .join(SOWING)
                .on(SOWING.ID.eq(SURPLUS_TAKING.SOWING_ID))
                .join(LOT)
                .on(LOT.ID.eq(SOWING.LOT_ID))
                .where(
                        SURPLUS_TAKING.MEMBER_ID.eq(member),
                        SURPLUS_TAKING.HANDED_OVER_ON.isNotNull(),
                        SOWING.MEMBER_ID.ne(member),
                        SOWING.SEASON.between(season - 1, season))
                .groupBy(SOWING.ID, SOWING.SEASON, SOWING.CROP_ID, LOT.VARIETY)
                .fetch(Records.mapping(PlantedOut::new));
    }

    private List<PlantedOut> own(UUID member, int season) {
        var on = DSL.min(ENTRY.SEEN_ON).as("on_day");
        return sql.select(SOWING.ID, SOWING.SEASON, SOWING.CROP_ID, LOT.VARIETY, on)
                .from(SOWING)
                .join(LOT)
                .on(LOT.ID.eq(SOWING.LOT_ID))
                .join(ENTRY)
                .on(ENTRY.SOWING_ID.eq(SOWING.ID), ENTRY.STEP.eq(EntryStep.PLANTED_OUT.word()))
                .where(
                        SOWING.MEMBER_ID.eq(member),
                        SOWING.STAGE.eq(SowingStage.PLANTED_OUT.word()),
                        SOWING.SEASON.between(season - 1, season))
                .groupBy(SOWING.ID, SOWING.SEASON, SOWING.CROP_ID, LOT.VARIETY)
                .fetch(Records.mapping(PlantedOut::new));
    }

    /** What a member said of these sowings; those of which they said nothing are missing. */
    public Map<UUID, HarvestNote> notes(UUID member, Collection<UUID> sowings) {
        Map<UUID, HarvestNote> notes = new HashMap<>();
        sql.select(HARVEST_REPORT.asterisk())
                .from(Database.listed(HARVEST_REPORT, HARVEST_REPORT.SOWING_ID, sowings))
                .where(HARVEST_REPORT.MEMBER_ID.eq(member))
                .forEach(row -> notes.put(row.get(HARVEST_REPORT.SOWING_ID), note(row)));
        return notes;
    }

    /**
     * What one person said of a variety that they grew.
     *
     * @param grower their name; that of whoever has left is kept with their sowings
     */
    public record Said(int season, String grower, String cropId, String variety, HarvestNote note) {}

    /** What everybody said of a variety of a crop, the latest season first; capitals do not matter. */
    public List<Said> ofVariety(String cropId, String variety) {
        return said(SOWING.CROP_ID.eq(cropId).and(DSL.lower(LOT.VARIETY).eq(DSL.lower(DSL.val(variety)))));
    }

    @Override
    public String words(String cropId, String variety) {
        return variety.isEmpty()
                ? ""
                : VarietyHarvest.of(ofVariety(cropId, variety)).stream()
                        .map(VarietyHarvest::words)
                        .collect(Collectors.joining());
    }

    /** What everybody said of a season's sowings. */
    public List<Said> ofSeason(int season) {
        return said(SOWING.SEASON.eq(season));
    }

    private List<Said> said(Condition which) {
        return sql.select(HARVEST_REPORT.asterisk(), SOWING.SEASON, SOWING.CROP_ID, LOT.VARIETY, MEMBER.CALLED)
                .from(HARVEST_REPORT)
                .join(SOWING)
                .on(SOWING.ID.eq(HARVEST_REPORT.SOWING_ID))
                .join(LOT)
                .on(LOT.ID.eq(SOWING.LOT_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(HARVEST_REPORT.MEMBER_ID))
                .where(which)
                .orderBy(SOWING.SEASON.desc(), MEMBER.CALLED, SOWING.ID)
                .fetch(row -> new Said(
                        row.get(SOWING.SEASON),
                        row.get(MEMBER.CALLED),
                        row.get(SOWING.CROP_ID),
                        row.get(LOT.VARIETY),
                        note(row)));
    }

    private static HarvestNote note(Record row) {
        BigDecimal kilograms = row.get(HARVEST_REPORT.KILOGRAMS);
        return new HarvestNote(
                row.get(HARVEST_REPORT.SOWING_ID),
                answer(HarvestAnswer.Again.values(), row.get(HARVEST_REPORT.AGAIN)),
                answer(HarvestAnswer.Amount.values(), row.get(HARVEST_REPORT.AMOUNT)),
                kilograms == null ? null : kilograms.doubleValue(),
                answer(HarvestAnswer.Taste.values(), row.get(HARVEST_REPORT.TASTE)),
                row.get(HARVEST_REPORT.FIRST_ON),
                row.get(HARVEST_REPORT.LAST_ON),
                row.get(HARVEST_REPORT.TROUBLE));
    }

    private static <T extends HarvestAnswer> @Nullable T answer(T[] answers, @Nullable String word) {
        return word == null ? null : HarvestAnswer.named(answers, word).orElseThrow();
    }

    /** Keeps what somebody says of some sowings, in place of what they said before; what says nothing is taken out. */
    public void keep(Collection<HarvestNote> notes, UUID by) {
        sql.transaction(work -> {
            for (HarvestNote note : notes) {
                keep(work.dsl(), note, by);
            }
        });
    }

    private void keep(DSLContext tx, HarvestNote note, UUID by) {
        tx.deleteFrom(HARVEST_REPORT)
                .where(HARVEST_REPORT.SOWING_ID.eq(note.sowingId()), HARVEST_REPORT.MEMBER_ID.eq(by))
                .execute();
        if (note.saysAnything()) {
            tx.insertInto(HARVEST_REPORT)
                    .set(HARVEST_REPORT.SOWING_ID, note.sowingId())
                    .set(HARVEST_REPORT.MEMBER_ID, by)
                    .set(HARVEST_REPORT.AGAIN, word(note.again()))
                    .set(HARVEST_REPORT.AMOUNT, word(note.amount()))
                    .set(HARVEST_REPORT.KILOGRAMS, decimal(note.kilograms()))
                    .set(HARVEST_REPORT.TASTE, word(note.taste()))
                    .set(HARVEST_REPORT.FIRST_ON, note.firstOn())
                    .set(HARVEST_REPORT.LAST_ON, note.lastOn())
                    .set(HARVEST_REPORT.TROUBLE, note.trouble())
                    .set(HARVEST_REPORT.MADE_BY, by)
                    .set(HARVEST_REPORT.MADE_AT, audit.now())
                    .execute();
        }
        audit.write(tx, by, "note harvest", "sowing", note.sowingId(), String.valueOf(word(note.again())));
    }

    private static @Nullable String word(@Nullable HarvestAnswer answer) {
        return answer == null ? null : answer.word();
    }

    private static @Nullable BigDecimal decimal(@Nullable Double figure) {
        return figure == null ? null : BigDecimal.valueOf(figure);
    }
}
