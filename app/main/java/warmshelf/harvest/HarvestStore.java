package warmshelf.harvest;

import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.HARVEST_NOTE;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SOWING;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.seed.GrownBefore;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.SowingStage;

/** Keeps what growers say of what they planted out. */
public final class HarvestStore implements GrownBefore {
    private final DSLContext sql;
    private final Audit audit;

    public HarvestStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /**
     * A sowing that its grower can be asked about.
     *
     * @param plantedOutOn the first day on which any of it went out
     */
    public record PlantedOut(UUID sowingId, int season, String cropId, String variety, LocalDate plantedOutOn) {}

    /** What a member planted out in a season and the one before it, the latest first. */
    public List<PlantedOut> plantedOut(UUID member, int season) {
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
                .orderBy(SOWING.SEASON.desc(), on.desc(), SOWING.ID)
                .fetch(row -> new PlantedOut(
                        row.get(SOWING.ID),
                        row.get(SOWING.SEASON),
                        row.get(SOWING.CROP_ID),
                        row.get(LOT.VARIETY),
                        row.get(on)));
    }

    /** What was said of these sowings; those of which nothing was are missing. */
    public Map<UUID, HarvestNote> notes(Collection<UUID> sowings) {
        Map<UUID, HarvestNote> notes = new HashMap<>();
        sql.select(HARVEST_NOTE.asterisk())
                .from(Database.listed(HARVEST_NOTE, HARVEST_NOTE.SOWING_ID, sowings))
                .forEach(row -> notes.put(row.get(HARVEST_NOTE.SOWING_ID), note(row)));
        return notes;
    }

    /**
     * What one grower said of a variety.
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
        return sql.select(HARVEST_NOTE.asterisk(), SOWING.SEASON, SOWING.CROP_ID, LOT.VARIETY, MEMBER.NAME)
                .from(HARVEST_NOTE)
                .join(SOWING)
                .on(SOWING.ID.eq(HARVEST_NOTE.SOWING_ID))
                .join(LOT)
                .on(LOT.ID.eq(SOWING.LOT_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(SOWING.MEMBER_ID))
                .where(which)
                .orderBy(SOWING.SEASON.desc(), MEMBER.NAME, SOWING.ID)
                .fetch(row -> new Said(
                        row.get(SOWING.SEASON),
                        row.get(MEMBER.NAME),
                        row.get(SOWING.CROP_ID),
                        row.get(LOT.VARIETY),
                        note(row)));
    }

    private static HarvestNote note(Record row) {
        BigDecimal kilograms = row.get(HARVEST_NOTE.KILOGRAMS);
        return new HarvestNote(
                row.get(HARVEST_NOTE.SOWING_ID),
                answer(HarvestAnswer.Again.values(), row.get(HARVEST_NOTE.AGAIN)),
                answer(HarvestAnswer.Amount.values(), row.get(HARVEST_NOTE.AMOUNT)),
                kilograms == null ? null : kilograms.doubleValue(),
                answer(HarvestAnswer.Taste.values(), row.get(HARVEST_NOTE.TASTE)),
                row.get(HARVEST_NOTE.FIRST_ON),
                row.get(HARVEST_NOTE.LAST_ON),
                row.get(HARVEST_NOTE.TROUBLE));
    }

    private static <T extends HarvestAnswer> @Nullable T answer(T[] answers, @Nullable String word) {
        return word == null ? null : HarvestAnswer.named(answers, word).orElseThrow();
    }

    /** Keeps what a grower says of some sowings, in place of what they said before; what says nothing is taken out. */
    public void keep(Collection<HarvestNote> notes, UUID by) {
        sql.transaction(work -> {
            for (HarvestNote note : notes) {
                keep(work.dsl(), note, by);
            }
        });
    }

    private void keep(DSLContext tx, HarvestNote note, UUID by) {
        tx.deleteFrom(HARVEST_NOTE)
                .where(HARVEST_NOTE.SOWING_ID.eq(note.sowingId()))
                .execute();
        if (note.saysAnything()) {
            tx.insertInto(HARVEST_NOTE)
                    .set(HARVEST_NOTE.SOWING_ID, note.sowingId())
                    .set(HARVEST_NOTE.AGAIN, word(note.again()))
                    .set(HARVEST_NOTE.AMOUNT, word(note.amount()))
                    .set(HARVEST_NOTE.KILOGRAMS, decimal(note.kilograms()))
                    .set(HARVEST_NOTE.TASTE, word(note.taste()))
                    .set(HARVEST_NOTE.FIRST_ON, note.firstOn())
                    .set(HARVEST_NOTE.LAST_ON, note.lastOn())
                    .set(HARVEST_NOTE.TROUBLE, note.trouble())
                    .set(HARVEST_NOTE.MADE_BY, by)
                    .set(HARVEST_NOTE.MADE_AT, audit.now())
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
