package warmshelf.finding.trial;

import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.TRIAL;
import static warmshelf.db.generated.Tables.TRIAL_BLOCK;
import static warmshelf.db.generated.Tables.TRIAL_SOWING;
import static warmshelf.db.generated.Tables.TRIAL_WAY;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.impl.DSL;
import warmshelf.crop.Method;
import warmshelf.db.Database;
import warmshelf.seed.Lot;
import warmshelf.seed.LotStore;

/** Reads the trials that were declared. */
public final class TrialBookStore {
    private final DSLContext sql;
    private final LotStore lots;

    public TrialBookStore(Database database, LotStore lots) {
        this.sql = database.sql();
        this.lots = lots;
    }

    /** All of them, the newest first; days are those of the zone. */
    public List<Trial> all(ZoneId zone) {
        return trials(DSL.noCondition(), zone);
    }

    public Optional<Trial> find(UUID id, ZoneId zone) {
        return trials(TRIAL.ID.eq(id), zone).stream().findFirst();
    }

    private List<Trial> trials(Condition which, ZoneId zone) {
        List<Record> rows = List.copyOf(sql.select(TRIAL.asterisk(), MEMBER.CALLED)
                .from(TRIAL)
                .join(MEMBER)
                .on(MEMBER.ID.eq(TRIAL.DECLARED_BY))
                .where(which)
                .orderBy(TRIAL.NUMBER.desc())
                .fetch());
        List<UUID> ids = rows.stream().map(row -> row.get(TRIAL.ID)).toList();
        if (ids.isEmpty()) {
            return List.of();
        }
        Map<UUID, Lot> lotsById = lots
                .all(rows.stream().map(row -> row.get(TRIAL.LOT_ID)).distinct().toList())
                .stream()
                .collect(Collectors.toMap(Lot::id, Function.identity()));
        Map<UUID, List<TrialWay>> ways = ways(ids);
        Map<UUID, List<Trial.Block>> blocks = blocks(ids);
        return rows.stream()
                .map(row -> new Trial(
                        row.get(TRIAL.ID),
                        row.get(TRIAL.NUMBER),
                        TrialKind.named(row.get(TRIAL.KIND)),
                        Objects.requireNonNull(lotsById.get(row.get(TRIAL.LOT_ID))),
                        row.get(TRIAL.SEASON),
                        row.get(TRIAL.SEEDS_EACH),
                        row.get(TRIAL.DECLARED_BY),
                        row.get(MEMBER.CALLED),
                        day(row.get(TRIAL.DECLARED_AT), zone),
                        ways.getOrDefault(row.get(TRIAL.ID), List.of()),
                        blocks.getOrDefault(row.get(TRIAL.ID), List.of())))
                .toList();
    }

    private static java.time.LocalDate day(OffsetDateTime at, ZoneId zone) {
        return at.atZoneSameInstant(zone).toLocalDate();
    }

    private Map<UUID, List<TrialWay>> ways(List<UUID> trials) {
        return sql.select(TRIAL_WAY.asterisk())
                .from(Database.listed(TRIAL_WAY, TRIAL_WAY.TRIAL_ID, trials))
                .orderBy(TRIAL_WAY.LETTER)
                .fetchGroups(
                        TRIAL_WAY.TRIAL_ID,
                        row -> new TrialWay(
                                row.get(TRIAL_WAY.LETTER),
                                Method.named(row.get(TRIAL_WAY.METHOD)),
                                row.get(TRIAL_WAY.WARM),
                                row.get(TRIAL_WAY.CELSIUS),
                                row.get(TRIAL_WAY.SOAKED)));
    }

    private record Key(UUID trial, int block) {}

    private Map<UUID, List<Trial.Block>> blocks(List<UUID> trials) {
        Map<Key, Map<String, UUID>> sowings = new HashMap<>();
        sql.select(TRIAL_SOWING.asterisk())
                .from(Database.listed(TRIAL_SOWING, TRIAL_SOWING.TRIAL_ID, trials))
                .forEach(row -> sowings.computeIfAbsent(
                                new Key(row.get(TRIAL_SOWING.TRIAL_ID), row.get(TRIAL_SOWING.BLOCK)),
                                key -> new HashMap<>())
                        .put(row.get(TRIAL_SOWING.LETTER), row.get(TRIAL_SOWING.SOWING_ID)));
        return sql.select(TRIAL_BLOCK.asterisk(), MEMBER.CALLED)
                .from(Database.listed(TRIAL_BLOCK, TRIAL_BLOCK.TRIAL_ID, trials))
                .join(MEMBER)
                .on(MEMBER.ID.eq(TRIAL_BLOCK.MEMBER_ID))
                .orderBy(TRIAL_BLOCK.NUMBER)
                .fetchGroups(
                        TRIAL_BLOCK.TRIAL_ID,
                        row -> new Trial.Block(
                                row.get(TRIAL_BLOCK.NUMBER),
                                row.get(TRIAL_BLOCK.MEMBER_ID),
                                row.get(MEMBER.CALLED),
                                row.get(TRIAL_BLOCK.SOW_ON),
                                new TrialDraw(
                                        row.get(TRIAL_BLOCK.DRAW),
                                        row.get(TRIAL_BLOCK.DEALT),
                                        row.get(TRIAL_BLOCK.LAID_OUT)),
                                Map.copyOf(sowings.getOrDefault(
                                        new Key(row.get(TRIAL_BLOCK.TRIAL_ID), row.get(TRIAL_BLOCK.NUMBER)),
                                        Map.of()))));
    }
}
