package warmshelf.season;

import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.sowing.SowingStage;
import warmshelf.sowing.SowingStore;

/** Finds sowings of a season, a page at a time. */
final class PastSowingStore {
    private static final int ON_A_PAGE = 50;
    private static final int MOST_WEEKS = 52;

    private final DSLContext sql;
    private final CropCatalogue crops;

    PastSowingStore(DSLContext sql, CropCatalogue crops) {
        this.sql = sql;
        this.crops = crops;
    }

    /**
     * Which sowings are looked for.
     *
     * @param words part of a crop's, a variety's or a grower's name; empty: all
     * @param grower whose alone; null: everybody's
     * @param page from 1
     */
    record Asked(int season, String words, @Nullable UUID grower, int page) {}

    /** A sowing as a list shows it. */
    public record Line(UUID id, String title, String grower, int plants, SowingStage stage) {}

    /** One page of what was found, of so many pages and sowings. */
    record Found(List<Line> lines, int pages, int all) {}

    Found find(Asked asked) {
        Condition which = which(asked);
        int all = sql.fetchCount(sql.select(SOWING.ID)
                .from(SOWING)
                .join(LOT)
                .on(LOT.ID.eq(SOWING.LOT_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(SOWING.MEMBER_ID))
                .where(which));
        List<Line> lines = sql.select(
                        SOWING.ID, SOWING.CROP_ID, LOT.VARIETY, MEMBER.CALLED, SOWING.PLANTS_WANTED, SOWING.STAGE)
                .from(SOWING)
                .join(LOT)
                .on(LOT.ID.eq(SOWING.LOT_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(SOWING.MEMBER_ID))
                .where(which)
                .orderBy(SOWING.CROP_ID, LOT.VARIETY, MEMBER.CALLED, SOWING.ID)
                .limit(ON_A_PAGE)
                .offset((asked.page() - 1) * ON_A_PAGE)
                .fetch(row -> new Line(
                        row.value1(),
                        title(row.value2(), row.value3()),
                        row.value4(),
                        row.value5(),
                        SowingStage.named(row.value6())));
        return new Found(lines, Math.max(1, (all + ON_A_PAGE - 1) / ON_A_PAGE), all);
    }

    private String title(String cropId, String variety) {
        return crops.orUnlisted(cropId).name() + " · " + variety;
    }

    private Condition which(Asked asked) {
        Condition which = SowingStore.ofSeason(asked.season());
        if (asked.grower() != null) {
            which = which.and(SOWING.MEMBER_ID.eq(asked.grower()));
        }
        if (asked.words().isEmpty()) {
            return which;
        }
        List<String> named = crops.all().stream()
                .filter(crop -> crop.name()
                        .toLowerCase(Locale.ROOT)
                        .contains(asked.words().toLowerCase(Locale.ROOT)))
                .map(Crop::id)
                .toList();
        return which.and(SOWING.CROP_ID
                .in(named)
                .or(LOT.VARIETY.containsIgnoreCase(asked.words()))
                .or(MEMBER.CALLED.containsIgnoreCase(asked.words())));
    }

    /** The Monday before the first day on which something of a season lay on a place, and so many weeks from it. */
    record Weeks(LocalDate from, int weeks, LocalDate middle) {}

    /** When the boards of a season show something; empty where nothing lay on a place. */
    Optional<Weeks> weeks(int season) {
        return sql.select(DSL.min(STAY.FROM_DAY), DSL.max(STAY.TO_DAY))
                .from(STAY)
                .join(SOWING)
                .on(SOWING.ID.eq(STAY.SOWING_ID))
                .where(SowingStore.ofSeason(season), STAY.TO_DAY.gt(STAY.FROM_DAY))
                .fetchOptional()
                .filter(row -> row.value1() != null)
                .map(row -> weeks(row.value1(), row.value2()));
    }

    private static Weeks weeks(LocalDate first, LocalDate last) {
        LocalDate monday = first.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        long weeks = ChronoUnit.WEEKS.between(monday, last) + 1;
        return new Weeks(
                monday, (int) Math.min(MOST_WEEKS, weeks), first.plusDays(ChronoUnit.DAYS.between(first, last) / 2));
    }
}
