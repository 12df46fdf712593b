package warmshelf.finding.trial;

import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.STAY;
import static warmshelf.db.generated.Tables.TRIAL;
import static warmshelf.db.generated.Tables.TRIAL_SOWING;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Predicate;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.WarmDays;
import warmshelf.db.Database;
import warmshelf.sowing.Sowing;

/** Tells beforehand whether moving stays or turning a mat would lay ways of a trial at another warmth than their fellows. */
public final class TrialWarmthStore {
    private static final List<String> LIE_TOGETHER = Arrays.stream(TrialKind.values())
            .filter(TrialKind::liesTogether)
            .map(TrialKind::word)
            .toList();

    private final DSLContext sql;

    public TrialWarmthStore(Database database) {
        this.sql = database.sql();
    }

    /** The same of one sowing; null, under a light, tells nothing. */
    public List<TrialWarmth> apart(UUID sowing, @Nullable WarmDays warm) {
        return warm == null ? List.of() : apart(Map.of(sowing, byDay(warm)));
    }

    /** The same of a sowing that is to be placed, as warnings. */
    public TrialWarnings warnings(Sowing sowing, WarmDays warm) {
        return sowing.trial() == null ? TrialWarnings.NONE : new TrialWarnings(apart(sowing.id(), warm));
    }

    /**
     * Ways that would lie apart in warmth, where warmth is not what their trial compares.
     *
     * @param proposed the set-points of each day on a mat, by sowing
     */
    public List<TrialWarmth> apart(Map<UUID, SortedMap<LocalDate, Double>> proposed) {
        return apart(proposed, day -> true);
    }

    /** The same of all that lies on a mat, were it set to another temperature on days, the last included. */
    public List<TrialWarmth> turned(UUID mat, LocalDate first, LocalDate last, double celsius) {
        Map<UUID, List<LocalDate>> turned = sql.selectDistinct(STAY.SOWING_ID, QUARTER_DAY.ON_DAY)
                .from(QUARTER_DAY)
                .join(STAY)
                .on(STAY.ID.eq(QUARTER_DAY.STAY_ID))
                .join(TRIAL_SOWING)
                .on(TRIAL_SOWING.SOWING_ID.eq(STAY.SOWING_ID))
                .where(QUARTER_DAY.MAT_ID.eq(mat), QUARTER_DAY.ON_DAY.between(first, last))
                .fetchGroups(STAY.SOWING_ID, QUARTER_DAY.ON_DAY);
        Map<UUID, SortedMap<LocalDate, Double>> proposed = asTheyLie(turned.keySet());
        turned.forEach((sowing, days) -> days.forEach(
                day -> proposed.computeIfAbsent(sowing, none -> new TreeMap<>()).put(day, celsius)));
        return apart(proposed, day -> !day.isBefore(first) && !day.isAfter(last));
    }

    private List<TrialWarmth> apart(Map<UUID, SortedMap<LocalDate, Double>> proposed, Predicate<LocalDate> changes) {
        List<? extends Record> ways = ways(proposed.keySet());
        List<UUID> fellows = ways.stream()
                .map(row -> row.get(TRIAL_SOWING.SOWING_ID))
                .filter(sowing -> !proposed.containsKey(sowing))
                .toList();
        Map<UUID, SortedMap<LocalDate, Double>> celsius = new HashMap<>(asTheyLie(fellows));
        celsius.putAll(proposed);
        return TrialWarmth.of(
                ways.stream()
                        .map(row -> new TrialWarmth.Lying(
                                row.get(TRIAL_SOWING.TRIAL_ID),
                                row.get(TRIAL.NUMBER),
                                row.get(TRIAL_SOWING.BLOCK),
                                row.get(TRIAL_SOWING.LETTER),
                                celsius.getOrDefault(row.get(TRIAL_SOWING.SOWING_ID), new TreeMap<>()),
                                proposed.containsKey(row.get(TRIAL_SOWING.SOWING_ID))))
                        .toList(),
                changes);
    }

    /** The set-points of days, by day. */
    public static SortedMap<LocalDate, Double> byDay(WarmDays warm) {
        SortedMap<LocalDate, Double> days = new TreeMap<>();
        warm.from().datesUntil(warm.to()).forEach(day -> days.put(day, warm.on(day)));
        return days;
    }

    /** All ways of the trials of which some sowings are. */
    private List<? extends Record> ways(Collection<UUID> sowings) {
        return sowings.isEmpty()
                ? List.of()
                : sql.select(
                                TRIAL_SOWING.SOWING_ID,
                                TRIAL_SOWING.TRIAL_ID,
                                TRIAL_SOWING.BLOCK,
                                TRIAL_SOWING.LETTER,
                                TRIAL.NUMBER)
                        .from(TRIAL_SOWING)
                        .join(TRIAL)
                        .on(TRIAL.ID.eq(TRIAL_SOWING.TRIAL_ID))
                        .where(
                                TRIAL.KIND.in(LIE_TOGETHER),
                                TRIAL_SOWING.TRIAL_ID.in(DSL.select(TRIAL_SOWING.TRIAL_ID)
                                        .from(TRIAL_SOWING)
                                        .where(TRIAL_SOWING.SOWING_ID.in(sowings))))
                        .orderBy(TRIAL.NUMBER, TRIAL_SOWING.BLOCK, TRIAL_SOWING.LETTER)
                        .fetch();
    }

    private Map<UUID, SortedMap<LocalDate, Double>> asTheyLie(Collection<UUID> sowings) {
        Map<UUID, SortedMap<LocalDate, Double>> lying = new HashMap<>();
        if (!sowings.isEmpty()) {
            sql.selectDistinct(STAY.SOWING_ID, QUARTER_DAY.ON_DAY, QUARTER_DAY.CELSIUS)
                    .from(STAY)
                    .join(QUARTER_DAY)
                    .on(QUARTER_DAY.STAY_ID.eq(STAY.ID))
                    .where(STAY.SOWING_ID.in(sowings), QUARTER_DAY.CELSIUS.isNotNull())
                    .forEach(row -> lying.computeIfAbsent(row.value1(), sowing -> new TreeMap<>())
                            .put(row.value2(), row.value3()));
        }
        return lying;
    }
}
