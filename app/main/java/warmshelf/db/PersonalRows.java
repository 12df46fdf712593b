package warmshelf.db;

import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.DUTY_SITE;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.FREED_SPACE;
import static warmshelf.db.generated.Tables.FROST_EVIDENCE_VERSION;
import static warmshelf.db.generated.Tables.FROST_IMPORT;
import static warmshelf.db.generated.Tables.FROST_IMPORT_PROBLEM;
import static warmshelf.db.generated.Tables.FROST_STATION_DATE;
import static warmshelf.db.generated.Tables.FROST_STATION_SEASON;
import static warmshelf.db.generated.Tables.GERMINATION_TEST;
import static warmshelf.db.generated.Tables.GROUP_PROFILE;
import static warmshelf.db.generated.Tables.LABEL_PRINT;
import static warmshelf.db.generated.Tables.LABEL_RUN;
import static warmshelf.db.generated.Tables.LEAVING;
import static warmshelf.db.generated.Tables.LEAVING_THING;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.LOT_REQUEST;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.POSTCODE_PLACE;
import static warmshelf.db.generated.Tables.PROGRAM_ANSWER;
import static warmshelf.db.generated.Tables.PROGRAM_TOKEN;
import static warmshelf.db.generated.Tables.PUSH_ADDRESS;
import static warmshelf.db.generated.Tables.PUSH_NOTICE;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.REQUEST_RANK;
import static warmshelf.db.generated.Tables.SEASON_PLAN;
import static warmshelf.db.generated.Tables.SEASON_PLAN_BEFORE;
import static warmshelf.db.generated.Tables.SEASON_PLAN_FREED;
import static warmshelf.db.generated.Tables.SEASON_PLAN_STAY;
import static warmshelf.db.generated.Tables.SEASON_PLAN_WARMTH;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SHORT_CODE;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SOWING_MESSAGE;
import static warmshelf.db.generated.Tables.SOWING_RESULT;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;
import static warmshelf.db.generated.Tables.STAY;
import static warmshelf.db.generated.Tables.SURPLUS_OFFER;
import static warmshelf.db.generated.Tables.SURPLUS_TAKING;
import static warmshelf.db.generated.Tables.THERMOMETER;
import static warmshelf.db.generated.Tables.THERMOMETER_NIGHT;
import static warmshelf.db.generated.Tables.TRIAL_SOWING;
import static warmshelf.db.generated.Tables.TRIAL_WAY;
import static warmshelf.db.generated.Tables.WITHDRAWAL;
import static warmshelf.db.generated.Tables.WITHDRAWAL_STAY;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.TableField;
import org.jooq.impl.DSL;
import warmshelf.db.generated.DefaultSchema;

/**
 * Which rows of each table tell something of a person: the one place that says so. A table that comes later and neither names
 * people nor belongs to one that does has to be named here, or a test fails.
 */
public final class PersonalRows {
    /** A table whose rows belong to rows of another, which name whose they are. */
    private record Child(TableField<?, UUID> column, TableField<?, UUID> key, TableField<?, UUID> whose) {
        Condition of(UUID person) {
            return ((Field<UUID>) column)
                    .in(DSL.select((Field<UUID>) key)
                            .from(Objects.requireNonNull(key.getTable()))
                            .where(((Field<UUID>) whose).eq(person)));
        }
    }

    private static final List<Child> CHILDREN = List.of(
            new Child(LABEL_PRINT.RUN_ID, LABEL_RUN.ID, LABEL_RUN.MADE_BY),
            new Child(LEAVING_THING.LEAVING_ID, LEAVING.ID, LEAVING.MEMBER_ID),
            new Child(PROGRAM_ANSWER.TOKEN_ID, PROGRAM_TOKEN.ID, PROGRAM_TOKEN.MEMBER_ID),
            new Child(PUSH_NOTICE.ADDRESS_ID, PUSH_ADDRESS.ID, PUSH_ADDRESS.MEMBER_ID),
            new Child(THERMOMETER_NIGHT.THERMOMETER_ID, THERMOMETER.ID, THERMOMETER.MEMBER_ID),
            new Child(FROST_IMPORT_PROBLEM.IMPORT_ID, FROST_IMPORT.ID, FROST_IMPORT.STARTED_BY),
            new Child(GERMINATION_TEST.LOT_ID, LOT.ID, LOT.OWNER_ID),
            new Child(ENTRY.SOWING_ID, SOWING.ID, SOWING.MEMBER_ID),
            new Child(LOT_REQUEST.SOWING_ID, SOWING.ID, SOWING.MEMBER_ID),
            new Child(REQUEST_RANK.SOWING_ID, SOWING.ID, SOWING.MEMBER_ID),
            new Child(SOWING_MESSAGE.SOWING_ID, SOWING.ID, SOWING.MEMBER_ID),
            new Child(SOWING_RESULT.SOWING_ID, SOWING.ID, SOWING.MEMBER_ID),
            new Child(SPACE_REQUEST.SOWING_ID, SOWING.ID, SOWING.MEMBER_ID),
            new Child(STAY.SOWING_ID, SOWING.ID, SOWING.MEMBER_ID),
            new Child(SURPLUS_OFFER.SOWING_ID, SOWING.ID, SOWING.MEMBER_ID),
            new Child(SURPLUS_TAKING.SOWING_ID, SOWING.ID, SOWING.MEMBER_ID),
            new Child(SHORT_CODE.SUBJECT_ID, SOWING.ID, SOWING.MEMBER_ID),
            new Child(TRIAL_SOWING.SOWING_ID, SOWING.ID, SOWING.MEMBER_ID),
            new Child(WITHDRAWAL.SOWING_ID, SOWING.ID, SOWING.MEMBER_ID));

    /** What is the group's or the program's and tells nothing of anybody. */
    private static final List<Table<?>> OF_NOBODY = List.of(
            DUTY_SITE,
            FREED_SPACE,
            FROST_EVIDENCE_VERSION,
            FROST_STATION_DATE,
            FROST_STATION_SEASON,
            GROUP_PROFILE,
            MAT,
            MAT_DAY,
            PLACE,
            POSTCODE_PLACE,
            QUARTER_DAY,
            RACK,
            SEASON_PLAN_BEFORE,
            SEASON_PLAN_FREED,
            SEASON_PLAN_STAY,
            SEASON_PLAN_WARMTH,
            SHELF,
            SITE,
            TRIAL_WAY,
            WITHDRAWAL_STAY);

    /** What is about everybody at once, so that one person's part of it cannot be told from others'. */
    private static final Set<TableField<?, ?>> OF_EVERYBODY = Set.of(SEASON_PLAN.PLAN);

    private PersonalRows() {}

    /** The tables that tell something of people, by name. */
    public static List<Table<?>> tables() {
        return DefaultSchema.DEFAULT_SCHEMA.getTables().stream()
                .filter(table -> of(table, new UUID(0, 0)).isPresent())
                .toList();
    }

    /** The tables that tell nothing of anybody. */
    public static List<Table<?>> ofNobody() {
        return OF_NOBODY;
    }

    /** Which rows of a table tell something of a person; empty where none ever does. */
    public static Optional<Condition> of(Table<?> table, UUID person) {
        List<Condition> ways = new ArrayList<>();
        if (table.equals(MEMBER)) {
            ways.add(MEMBER.ID.eq(person));
        }
        if (table.equals(AUDIT_LINE)) {
            ways.add(AUDIT_LINE.SUBJECT.eq("member").and(AUDIT_LINE.SUBJECT_ID.eq(person.toString())));
        }
        PersonalTraces.all().stream()
                .filter(trace -> trace.table().equals(table))
                .forEach(trace -> ways.add(((Field<UUID>) trace.column()).eq(person)));
        CHILDREN.stream()
                .filter(child -> table.equals(child.column().getTable()))
                .forEach(child -> ways.add(child.of(person)));
        return ways.isEmpty() ? Optional.empty() : Optional.of(DSL.or(ways));
    }

    /** Whether a column may be told to a person whose rows it is in. */
    public static boolean isTold(Field<?> field) {
        return !TableOwnership.isSecret(
                        Objects.requireNonNull(((TableField<?, ?>) field).getTable())
                                .getName(),
                        field.getName())
                && OF_EVERYBODY.stream().noneMatch(field::equals);
    }

    /** Whether a column names a person. */
    public static boolean namesAPerson(Field<?> field) {
        return PersonalTraces.all().stream().anyMatch(trace -> trace.column().equals(field));
    }
}
