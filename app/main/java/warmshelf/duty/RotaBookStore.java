package warmshelf.duty;

import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.DUTY_AWAY;
import static warmshelf.db.generated.Tables.DUTY_WILLING;
import static warmshelf.db.generated.Tables.MEMBER;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import warmshelf.db.Database;

/** Reads the rota book: who can, who has served in the last 60 days or is planned, and what goes together. */
public final class RotaBookStore {
    /** Duties longer ago than this do not count any more. */
    static final int DAYS_THAT_COUNT = 60;

    private final DSLContext sql;

    RotaBookStore(Database database) {
        this.sql = database.sql();
    }

    RotaBook read(LocalDate today) {
        return read(sql, today);
    }

    static RotaBook read(DSLContext sql, LocalDate today) {
        return new RotaBook(volunteers(sql, today), duties(sql, today.minusDays(DAYS_THAT_COUNT)), together(sql));
    }

    /** Who has which turn, from a day on. */
    static Map<Turn, UUID> duties(DSLContext sql, LocalDate from) {
        Map<Turn, UUID> duties = new HashMap<>();
        sql.select(DUTY.SITE_ID, DUTY.ON_DAY, DUTY.MEMBER_ID)
                .from(DUTY)
                .where(DUTY.ON_DAY.ge(from))
                .forEach(row -> duties.put(new Turn(row.value1(), row.value2()), row.value3()));
        return duties;
    }

    static Set<UUID> together(DSLContext sql) {
        return SiteRuleStore.all(sql).stream()
                .filter(SiteRule::together)
                .map(rule -> rule.site().id())
                .collect(Collectors.toSet());
    }

    private static List<Volunteer> volunteers(DSLContext sql, LocalDate today) {
        Map<UUID, List<Away>> away = new HashMap<>();
        sql.selectFrom(DUTY_AWAY)
                .where(DUTY_AWAY.LAST_DAY.ge(today))
                .orderBy(DUTY_AWAY.FIRST_DAY)
                .forEach(row -> away.computeIfAbsent(row.getMemberId(), id -> new ArrayList<>())
                        .add(new Away(row.getId(), row.getFirstDay(), row.getLastDay())));
        Map<UUID, Volunteer> volunteers = new LinkedHashMap<>();
        sql.select(MEMBER.ID, MEMBER.CALLED, DUTY_WILLING.SITE_ID, DUTY_WILLING.WEEKDAY)
                .from(DUTY_WILLING)
                .join(MEMBER)
                .on(MEMBER.ID.eq(DUTY_WILLING.MEMBER_ID))
                .where(MEMBER.LEFT_AT.isNull())
                .orderBy(MEMBER.NAME_KEY)
                .forEach(row -> volunteers
                        .computeIfAbsent(
                                row.value1(),
                                id -> new Volunteer(
                                        id, row.value2(), new HashMap<>(), away.getOrDefault(id, List.of())))
                        .weekdays()
                        .computeIfAbsent(row.value3(), site -> EnumSet.noneOf(DayOfWeek.class))
                        .add(DayOfWeek.of(row.value4())));
        return List.copyOf(volunteers.values());
    }
}
