package warmshelf.season;

import static warmshelf.db.generated.Tables.SOWING;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Predicate;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import warmshelf.sowing.SowingStage;
import warmshelf.sowing.SowingStore;

/** Counts the sowings of a season by how far they have come. */
final class SeasonCountStore {
    private final DSLContext sql;

    SeasonCountStore(DSLContext sql) {
        this.sql = sql;
    }

    /**
     * How far the sowings of a season have come.
     *
     * @param over planted out, given up, withdrawn, or closed with a season
     */
    record SeasonProgress(int asked, int notSown, int underWay, int over) {}

    SeasonProgress progress(int season) {
        Map<SowingStage, Integer> counts = sql.select(SOWING.STAGE, DSL.count())
                .from(SOWING)
                .where(SowingStore.ofSeason(season))
                .groupBy(SOWING.STAGE)
                .fetchMap(row -> SowingStage.named(row.value1()), row -> row.value2());
        int over = sum(counts, SowingStage::isOver);
        int notSown = sum(counts, SowingStage::isBeforeSowing);
        int all = sum(counts, stage -> true);
        return new SeasonProgress(all, notSown, all - notSown - over, over);
    }

    private static int sum(Map<SowingStage, Integer> counts, Predicate<SowingStage> which) {
        return counts.entrySet().stream()
                .filter(each -> which.test(each.getKey()))
                .mapToInt(Map.Entry::getValue)
                .sum();
    }

    /** How many sowings a member asked for in a season; what was withdrawn does not count. */
    int ofMember(UUID member, int season) {
        return sql.fetchCount(
                SOWING,
                SowingStore.ofSeason(season)
                        .and(SOWING.MEMBER_ID.eq(member))
                        .and(SOWING.STAGE.ne(SowingStage.WITHDRAWN.word())));
    }

    /** The seasons with sowings before one, the latest first. */
    List<Integer> seasonsBefore(int season) {
        return sql.selectDistinct(SOWING.SEASON)
                .from(SOWING)
                .where(SOWING.SEASON.lt(season))
                .orderBy(SOWING.SEASON.desc())
                .fetch(SOWING.SEASON);
    }
}
