package warmshelf.db;

import static warmshelf.db.PersonalTrace.Topic.CALENDARS;
import static warmshelf.db.PersonalTrace.Topic.CHANGES;
import static warmshelf.db.PersonalTrace.Topic.DEVICES;
import static warmshelf.db.PersonalTrace.Topic.ENTRIES;
import static warmshelf.db.PersonalTrace.Topic.GARDEN;
import static warmshelf.db.PersonalTrace.Topic.MESSAGES;
import static warmshelf.db.PersonalTrace.Topic.OTHER_WORK;
import static warmshelf.db.PersonalTrace.Topic.PHOTOS;
import static warmshelf.db.PersonalTrace.Topic.PROMISES;
import static warmshelf.db.PersonalTrace.Topic.SEED;
import static warmshelf.db.PersonalTrace.Topic.SIGN_INS;
import static warmshelf.db.PersonalTrace.Topic.SOWINGS;
import static warmshelf.db.PersonalTrace.Topic.WISHES;
import static warmshelf.db.PersonalTrace.emptied;
import static warmshelf.db.PersonalTrace.goes;
import static warmshelf.db.PersonalTrace.goesWhere;
import static warmshelf.db.PersonalTrace.nameless;
import static warmshelf.db.generated.Tables.ACCEPTED_RISK;
import static warmshelf.db.generated.Tables.ACCESS_LINK;
import static warmshelf.db.generated.Tables.ARCHIVE_FILE;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.BOARD_LOOK;
import static warmshelf.db.generated.Tables.CALENDAR_ADDRESS;
import static warmshelf.db.generated.Tables.CALENDAR_EVENT;
import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.DUTY_AWAY;
import static warmshelf.db.generated.Tables.DUTY_STAND_IN;
import static warmshelf.db.generated.Tables.DUTY_SWAP;
import static warmshelf.db.generated.Tables.DUTY_SWAP_REFUSAL;
import static warmshelf.db.generated.Tables.DUTY_WILLING;
import static warmshelf.db.generated.Tables.ENERGY_PRICE;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.FROST_CORRECTION;
import static warmshelf.db.generated.Tables.FROST_IMPORT;
import static warmshelf.db.generated.Tables.FROST_STATION;
import static warmshelf.db.generated.Tables.GARDEN_POINT;
import static warmshelf.db.generated.Tables.GATHERED;
import static warmshelf.db.generated.Tables.GERMINATION_TEST;
import static warmshelf.db.generated.Tables.HARVEST_REPORT;
import static warmshelf.db.generated.Tables.INCOMING_TABLE;
import static warmshelf.db.generated.Tables.LABEL_PRINTER;
import static warmshelf.db.generated.Tables.LABEL_RUN;
import static warmshelf.db.generated.Tables.LABEL_STOCK;
import static warmshelf.db.generated.Tables.LEAVING;
import static warmshelf.db.generated.Tables.LETTER;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.LOT_REQUEST;
import static warmshelf.db.generated.Tables.MAIL_WISH;
import static warmshelf.db.generated.Tables.MAT_OUT;
import static warmshelf.db.generated.Tables.MEMBER_SESSION;
import static warmshelf.db.generated.Tables.NEWS;
import static warmshelf.db.generated.Tables.OWN_CROP;
import static warmshelf.db.generated.Tables.PASSKEY;
import static warmshelf.db.generated.Tables.PASSKEY_CHALLENGE;
import static warmshelf.db.generated.Tables.PHOTO;
import static warmshelf.db.generated.Tables.PLAN_NOTE;
import static warmshelf.db.generated.Tables.PROBLEM_ANSWER;
import static warmshelf.db.generated.Tables.PROGRAM_TOKEN;
import static warmshelf.db.generated.Tables.PUSH_ADDRESS;
import static warmshelf.db.generated.Tables.PUSH_NOTICE;
import static warmshelf.db.generated.Tables.PUSH_WISH;
import static warmshelf.db.generated.Tables.QUARANTINE_SHELF;
import static warmshelf.db.generated.Tables.RACK_HOLD;
import static warmshelf.db.generated.Tables.SEASON_CLOSING;
import static warmshelf.db.generated.Tables.SEASON_PLAN;
import static warmshelf.db.generated.Tables.SEASON_PLAN_EDIT;
import static warmshelf.db.generated.Tables.SHORT_CODE;
import static warmshelf.db.generated.Tables.SITE_COORDINATOR;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SOWING_MESSAGE;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;
import static warmshelf.db.generated.Tables.STAY;
import static warmshelf.db.generated.Tables.STAY_MOVE;
import static warmshelf.db.generated.Tables.SUBMISSION;
import static warmshelf.db.generated.Tables.SUPPLY_PROMISE;
import static warmshelf.db.generated.Tables.SURPLUS_OFFER;
import static warmshelf.db.generated.Tables.SURPLUS_TAKING;
import static warmshelf.db.generated.Tables.TABLET;
import static warmshelf.db.generated.Tables.THERMOMETER;
import static warmshelf.db.generated.Tables.THERMOMETER_NIGHT;
import static warmshelf.db.generated.Tables.TRIAL;
import static warmshelf.db.generated.Tables.TRIAL_BLOCK;
import static warmshelf.db.generated.Tables.VARIETY;
import static warmshelf.db.generated.Tables.WITHDRAWAL;

import java.util.List;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.Field;
import org.jooq.TableField;

/**
 * Where the database names people, and what becomes of each such place when one of them is erased: the one place that says so. A
 * column that comes later and names a person has to be decided here, or a test fails.
 */
public final class PersonalTraces {
    /** Of rows that several columns bind to a person the first decides. */
    private static final List<PersonalTrace> ALL = List.of(
            goes(ACCEPTED_RISK.MEMBER_ID, GARDEN),
            goes(ACCESS_LINK.MEMBER_ID, SIGN_INS),
            goes(ACCESS_LINK.USED_BY, SIGN_INS),
            goes(BOARD_LOOK.MEMBER_ID, SIGN_INS),
            goes(CALENDAR_ADDRESS.MEMBER_ID, CALENDARS),
            goes(CALENDAR_EVENT.MEMBER_ID, CALENDARS),
            goes(DUTY_AWAY.MEMBER_ID, WISHES),
            goes(DUTY_STAND_IN.MEMBER_ID, WISHES),
            goes(DUTY_SWAP_REFUSAL.MEMBER_ID, WISHES),
            goes(DUTY_WILLING.MEMBER_ID, WISHES),
            goes(FROST_CORRECTION.MEMBER_ID, GARDEN),
            goes(GARDEN_POINT.MEMBER_ID, GARDEN),
            goes(GATHERED.MEMBER_ID, WISHES),
            goes(LEAVING.MEMBER_ID, WISHES),
            goes(LETTER.MEMBER_ID, MESSAGES),
            goes(MAIL_WISH.MEMBER_ID, WISHES),
            goes(MEMBER_SESSION.MEMBER_ID, SIGN_INS),
            goes(NEWS.MEMBER_ID, MESSAGES),
            goes(PASSKEY.MEMBER_ID, SIGN_INS),
            goes(PASSKEY_CHALLENGE.MEMBER_ID, SIGN_INS),
            goes(PLAN_NOTE.MEMBER_ID, MESSAGES),
            goes(PROGRAM_TOKEN.MEMBER_ID, SIGN_INS),
            goes(PUSH_NOTICE.MEMBER_ID, MESSAGES),
            goes(PUSH_ADDRESS.MEMBER_ID, DEVICES),
            goes(PUSH_ADDRESS.ADDED_BY, DEVICES),
            goes(PUSH_WISH.MEMBER_ID, WISHES),
            goes(SITE_COORDINATOR.MEMBER_ID, WISHES),
            goes(SUBMISSION.MEMBER_ID, SIGN_INS),
            goes(THERMOMETER.MEMBER_ID, GARDEN),
            goesWhere(SUPPLY_PROMISE.MEMBER_ID, PROMISES, SUPPLY_PROMISE.BROUGHT_AT.isNull()),
            emptied(LOT.OWNER_ID, SEED),
            nameless(ACCESS_LINK.MADE_BY, OTHER_WORK),
            nameless(ARCHIVE_FILE.MADE_BY, OTHER_WORK),
            nameless(AUDIT_LINE.MEMBER_ID, CHANGES),
            nameless(DUTY.MEMBER_ID, OTHER_WORK),
            nameless(DUTY.MADE_BY, OTHER_WORK),
            nameless(DUTY_AWAY.MADE_BY, OTHER_WORK),
            nameless(DUTY_SWAP.ASKED_BY, OTHER_WORK),
            nameless(DUTY_SWAP.ASKED_OF, OTHER_WORK),
            nameless(DUTY_SWAP.TAKEN_BY, OTHER_WORK),
            nameless(ENERGY_PRICE.MADE_BY, OTHER_WORK),
            nameless(ENTRY.MADE_BY, ENTRIES),
            nameless(ENTRY.TYPED_BY, OTHER_WORK),
            nameless(FROST_CORRECTION.MADE_BY, OTHER_WORK),
            nameless(FROST_CORRECTION.ENDED_BY, OTHER_WORK),
            nameless(FROST_IMPORT.STARTED_BY, OTHER_WORK),
            nameless(FROST_IMPORT.DECIDED_BY, OTHER_WORK),
            nameless(FROST_STATION.ADDED_BY, OTHER_WORK),
            nameless(FROST_STATION.REMOVED_BY, OTHER_WORK),
            nameless(GARDEN_POINT.SET_BY, OTHER_WORK),
            nameless(GERMINATION_TEST.MADE_BY, ENTRIES),
            nameless(HARVEST_REPORT.MADE_BY, ENTRIES),
            nameless(HARVEST_REPORT.MEMBER_ID, ENTRIES),
            nameless(INCOMING_TABLE.TAKEN_BY, OTHER_WORK),
            nameless(LABEL_PRINTER.MEASURED_BY, OTHER_WORK),
            nameless(LABEL_PRINTER.REMOVED_BY, OTHER_WORK),
            nameless(LABEL_RUN.MADE_BY, OTHER_WORK),
            nameless(LABEL_RUN.UNDONE_BY, OTHER_WORK),
            nameless(LABEL_STOCK.MADE_BY, OTHER_WORK),
            nameless(LABEL_STOCK.REMOVED_BY, OTHER_WORK),
            nameless(LEAVING.RECEIVER_ID, OTHER_WORK),
            nameless(LEAVING.MADE_BY, OTHER_WORK),
            nameless(LEAVING.UNDONE_BY, OTHER_WORK),
            nameless(LOT.MADE_BY, OTHER_WORK),
            nameless(LOT_REQUEST.ASKED_BY, OTHER_WORK),
            nameless(LOT_REQUEST.ANSWERED_BY, OTHER_WORK),
            nameless(MAT_OUT.MADE_BY, OTHER_WORK),
            nameless(MAT_OUT.ENDED_BY, OTHER_WORK),
            nameless(NEWS.CAUSED_BY, OTHER_WORK),
            nameless(OWN_CROP.MADE_BY, OTHER_WORK),
            nameless(PHOTO.ADDED_BY, PHOTOS),
            nameless(PHOTO.REMOVED_BY, OTHER_WORK),
            nameless(PROBLEM_ANSWER.MADE_BY, OTHER_WORK),
            nameless(PROGRAM_TOKEN.REVOKED_BY, OTHER_WORK),
            nameless(QUARANTINE_SHELF.MADE_BY, OTHER_WORK),
            nameless(RACK_HOLD.CLEARED_BY, OTHER_WORK),
            nameless(SEASON_CLOSING.CLOSED_BY, OTHER_WORK),
            nameless(SEASON_CLOSING.TAKEN_BACK_BY, OTHER_WORK),
            nameless(SEASON_CLOSING.OPENED_BY, OTHER_WORK),
            nameless(SEASON_PLAN.ASKED_BY, OTHER_WORK),
            nameless(SEASON_PLAN.PUBLISHED_BY, OTHER_WORK),
            nameless(SEASON_PLAN.UNDONE_BY, OTHER_WORK),
            nameless(SEASON_PLAN_EDIT.MADE_BY, OTHER_WORK),
            nameless(SHORT_CODE.MADE_BY, OTHER_WORK),
            nameless(SITE_COORDINATOR.MADE_BY, OTHER_WORK),
            nameless(SOWING.MEMBER_ID, SOWINGS),
            nameless(SOWING_MESSAGE.WRITTEN_BY, MESSAGES),
            nameless(SOWING_MESSAGE.WRITTEN_TO, MESSAGES),
            nameless(SPACE_REQUEST.DECIDED_BY, OTHER_WORK),
            nameless(STAY.MADE_BY, OTHER_WORK),
            nameless(STAY_MOVE.MOVED_BY, OTHER_WORK),
            nameless(SUPPLY_PROMISE.MADE_BY, OTHER_WORK),
            nameless(SUPPLY_PROMISE.BROUGHT_BY, OTHER_WORK),
            nameless(SUPPLY_PROMISE.TAKEN_BACK_BY, OTHER_WORK),
            nameless(SURPLUS_OFFER.OFFERED_BY, OTHER_WORK),
            nameless(SURPLUS_TAKING.MEMBER_ID, OTHER_WORK),
            nameless(SURPLUS_TAKING.HANDED_OVER_BY, OTHER_WORK),
            nameless(SURPLUS_TAKING.ENDED_BY, OTHER_WORK),
            // no person's: the author that stands for the tablet
            nameless(TABLET.ID, OTHER_WORK),
            nameless(TABLET.MADE_BY, OTHER_WORK),
            nameless(TABLET.ENDED_BY, OTHER_WORK),
            nameless(THERMOMETER.ADDED_BY, OTHER_WORK),
            nameless(THERMOMETER.RETIRED_BY, OTHER_WORK),
            nameless(THERMOMETER_NIGHT.NOTED_BY, OTHER_WORK),
            nameless(TRIAL.DECLARED_BY, OTHER_WORK),
            nameless(TRIAL_BLOCK.MEMBER_ID, OTHER_WORK),
            nameless(VARIETY.MADE_BY, OTHER_WORK),
            nameless(WITHDRAWAL.MADE_BY, OTHER_WORK),
            nameless(WITHDRAWAL.TAKEN_BACK_BY, OTHER_WORK));

    /**
     * What a person typed for themself or for others to know.
     *
     * @param text is emptied
     * @param writer names who typed it
     */
    public record Note(TableField<?, String> text, TableField<?, UUID> writer) {
        /** The rows in which there is something to empty. */
        public Condition rowsOf(UUID person) {
            return ((Field<UUID>) writer).eq(person).and(((Field<String>) text).ne(""));
        }

        /** Whether people see it on pages; lines of changes are for whoever looks into the tables. */
        public boolean readByPeople() {
            return !text.equals(AUDIT_LINE.DETAIL);
        }
    }

    private static final List<Note> NOTES = List.of(
            new Note(ENTRY.NOTE, ENTRY.MADE_BY),
            new Note(SOWING.NOTE, SOWING.MEMBER_ID),
            new Note(SOWING_MESSAGE.WORDS, SOWING_MESSAGE.WRITTEN_BY),
            new Note(LOT.NOTE, LOT.OWNER_ID),
            new Note(LOT.NOTE, LOT.MADE_BY),
            new Note(HARVEST_REPORT.TROUBLE, HARVEST_REPORT.MADE_BY),
            new Note(LOT_REQUEST.REASON, LOT_REQUEST.ANSWERED_BY),
            new Note(SUPPLY_PROMISE.NOTE, SUPPLY_PROMISE.MADE_BY),
            new Note(SUPPLY_PROMISE.NOTE, SUPPLY_PROMISE.MEMBER_ID),
            new Note(AUDIT_LINE.DETAIL, AUDIT_LINE.MEMBER_ID));

    /** Sentences and names that are written of people, where a single word such as 'Basil' is a name if it is somebody's. */
    private static final List<TableField<?, String>> SENTENCES = List.of(
            ACCESS_LINK.NOTE,
            AUDIT_LINE.DETAIL,
            LETTER.SUBJECT,
            LETTER.WORDS,
            PLAN_NOTE.WORDS,
            PUSH_NOTICE.TITLE,
            PUSH_NOTICE.BODY,
            SEASON_PLAN_EDIT.WORDS);

    private PersonalTraces() {}

    public static boolean isSentence(Field<?> field) {
        return SENTENCES.stream().anyMatch(field::equals);
    }

    public static List<PersonalTrace> all() {
        return ALL;
    }

    public static List<Note> notes() {
        return NOTES;
    }
}
