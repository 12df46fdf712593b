package warmshelf.duty;

import static warmshelf.db.generated.Tables.DUTY_SITE;
import static warmshelf.db.generated.Tables.SITE;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** Keeps by when a site's checks are done, and whether one person can look at it and another on the same day. */
public final class SiteRuleStore {
    private final DSLContext sql;
    private final Audit audit;
    private final StandInStore standIns;

    SiteRuleStore(Database database, Audit audit, StandInStore standIns) {
        this.sql = database.sql();
        this.audit = audit;
        this.standIns = standIns;
    }

    /** The rule of every site, in walking order. */
    List<SiteRule> all() {
        return all(sql);
    }

    static List<SiteRule> all(DSLContext sql) {
        return sql.select(SITE.ID, SITE.NAME, DUTY_SITE.SITE_ID, DUTY_SITE.DONE_BY_MINUTE, DUTY_SITE.TOGETHER)
                .from(SITE)
                .leftJoin(DUTY_SITE)
                .on(DUTY_SITE.SITE_ID.eq(SITE.ID))
                .orderBy(SITE.WALK_ORDER, SITE.NAME)
                .fetch(row -> {
                    Named site = new Named(row.get(SITE.ID), row.get(SITE.NAME));
                    return row.get(DUTY_SITE.SITE_ID) == null
                            ? new SiteRule(site, SiteRule.USUAL_HOUR, false)
                            : new SiteRule(site, hour(row.get(DUTY_SITE.DONE_BY_MINUTE)), row.get(DUTY_SITE.TOGETHER));
                });
    }

    private static @Nullable LocalTime hour(@Nullable Integer minute) {
        return minute == null ? null : LocalTime.ofSecondOfDay(minute * 60L);
    }

    /** Keeps the rules that differ from what holds, and answers how many did. */
    int keep(List<SiteRule> rules, LocalDate today, UUID by) {
        return sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            StandInStore.holdRota(tx);
            List<SiteRule> before = all(tx);
            List<SiteRule> changed =
                    rules.stream().filter(rule -> !before.contains(rule)).toList();
            changed.forEach(rule -> keep(tx, rule, by));
            if (!changed.isEmpty()) {
                standIns.settle(tx, today, by);
            }
            return changed.size();
        });
    }

    private void keep(DSLContext tx, SiteRule rule, UUID by) {
        UUID site = rule.site().id();
        LocalTime doneBy = rule.doneBy();
        Integer minute = doneBy == null ? null : doneBy.toSecondOfDay() / 60;
        tx.deleteFrom(DUTY_SITE).where(DUTY_SITE.SITE_ID.eq(site)).execute();
        tx.insertInto(DUTY_SITE)
                .set(DUTY_SITE.SITE_ID, site)
                .set(DUTY_SITE.DONE_BY_MINUTE, minute)
                .set(DUTY_SITE.TOGETHER, rule.together())
                .execute();
        audit.write(
                tx,
                by,
                "set duty hour",
                "site",
                site,
                "done by %s, together %s".formatted(doneBy == null ? "no hour" : doneBy, rule.together()));
    }
}
