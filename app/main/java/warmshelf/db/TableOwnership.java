package warmshelf.db;

import static warmshelf.db.generated.Tables.ACCEPTED_RISK;
import static warmshelf.db.generated.Tables.ACCESS_LINK;
import static warmshelf.db.generated.Tables.ARCHIVE_FILE;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.BOARD_LOOK;
import static warmshelf.db.generated.Tables.CALENDAR_ADDRESS;
import static warmshelf.db.generated.Tables.CALENDAR_EVENT;
import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.DUTY_AWAY;
import static warmshelf.db.generated.Tables.DUTY_SITE;
import static warmshelf.db.generated.Tables.DUTY_STAND_IN;
import static warmshelf.db.generated.Tables.DUTY_SWAP;
import static warmshelf.db.generated.Tables.DUTY_SWAP_REFUSAL;
import static warmshelf.db.generated.Tables.DUTY_WILLING;
import static warmshelf.db.generated.Tables.ENERGY_PRICE;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.FREED_SPACE;
import static warmshelf.db.generated.Tables.FROST_CORRECTION;
import static warmshelf.db.generated.Tables.FROST_EVIDENCE_VERSION;
import static warmshelf.db.generated.Tables.FROST_IMPORT;
import static warmshelf.db.generated.Tables.FROST_IMPORT_PROBLEM;
import static warmshelf.db.generated.Tables.FROST_STATION;
import static warmshelf.db.generated.Tables.FROST_STATION_DATE;
import static warmshelf.db.generated.Tables.FROST_STATION_SEASON;
import static warmshelf.db.generated.Tables.GARDEN_POINT;
import static warmshelf.db.generated.Tables.GATHERED;
import static warmshelf.db.generated.Tables.GERMINATION_TEST;
import static warmshelf.db.generated.Tables.GROUP_PROFILE;
import static warmshelf.db.generated.Tables.HARVEST_REPORT;
import static warmshelf.db.generated.Tables.INCOMING_TABLE;
import static warmshelf.db.generated.Tables.LABEL_PRINT;
import static warmshelf.db.generated.Tables.LABEL_PRINTER;
import static warmshelf.db.generated.Tables.LABEL_RUN;
import static warmshelf.db.generated.Tables.LABEL_STOCK;
import static warmshelf.db.generated.Tables.LEAVING;
import static warmshelf.db.generated.Tables.LEAVING_THING;
import static warmshelf.db.generated.Tables.LETTER;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.LOT_REQUEST;
import static warmshelf.db.generated.Tables.MAIL_WISH;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.MAT_OUT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.MEMBER_SESSION;
import static warmshelf.db.generated.Tables.NEWS;
import static warmshelf.db.generated.Tables.OWN_CROP;
import static warmshelf.db.generated.Tables.PASSKEY;
import static warmshelf.db.generated.Tables.PASSKEY_CHALLENGE;
import static warmshelf.db.generated.Tables.PHOTO;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.PLAN_NOTE;
import static warmshelf.db.generated.Tables.POSTCODE_PLACE;
import static warmshelf.db.generated.Tables.PROBLEM_ANSWER;
import static warmshelf.db.generated.Tables.PROGRAM_ANSWER;
import static warmshelf.db.generated.Tables.PROGRAM_TOKEN;
import static warmshelf.db.generated.Tables.PUSH_ADDRESS;
import static warmshelf.db.generated.Tables.PUSH_NOTICE;
import static warmshelf.db.generated.Tables.PUSH_WISH;
import static warmshelf.db.generated.Tables.QUARANTINE_SHELF;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.RACK_HOLD;
import static warmshelf.db.generated.Tables.REQUEST_RANK;
import static warmshelf.db.generated.Tables.SEASON_CLOSING;
import static warmshelf.db.generated.Tables.SEASON_PLAN;
import static warmshelf.db.generated.Tables.SEASON_PLAN_BEFORE;
import static warmshelf.db.generated.Tables.SEASON_PLAN_EDIT;
import static warmshelf.db.generated.Tables.SEASON_PLAN_FREED;
import static warmshelf.db.generated.Tables.SEASON_PLAN_STAY;
import static warmshelf.db.generated.Tables.SEASON_PLAN_WARMTH;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SHORT_CODE;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.SITE_COORDINATOR;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SOWING_MESSAGE;
import static warmshelf.db.generated.Tables.SOWING_RESULT;
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
import static warmshelf.db.generated.Tables.TRIAL_SOWING;
import static warmshelf.db.generated.Tables.TRIAL_WAY;
import static warmshelf.db.generated.Tables.VARIETY;
import static warmshelf.db.generated.Tables.WITHDRAWAL;
import static warmshelf.db.generated.Tables.WITHDRAWAL_STAY;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jooq.Table;
import org.jooq.TableField;

/**
 * Whose each table is: the one place that says what travels when the group does. A table that comes later has to be named here,
 * or a test fails.
 */
public final class TableOwnership {
    /**
     * What the group has and knows, wherever it lives. Hashes of passphrases are with it, so that the same people sign in; hashes of
     * calendars' addresses, so that what subscribes to them goes on; letters, so that nobody is told one thing twice.
     */
    private static final List<Table<?>> OF_THE_GROUP = List.of(
            ACCEPTED_RISK,
            AUDIT_LINE,
            BOARD_LOOK,
            CALENDAR_ADDRESS,
            CALENDAR_EVENT,
            DUTY,
            DUTY_AWAY,
            DUTY_SITE,
            DUTY_STAND_IN,
            DUTY_SWAP,
            DUTY_SWAP_REFUSAL,
            DUTY_WILLING,
            ENERGY_PRICE,
            ENTRY,
            FREED_SPACE,
            FROST_CORRECTION,
            FROST_EVIDENCE_VERSION,
            FROST_IMPORT,
            FROST_IMPORT_PROBLEM,
            FROST_STATION,
            FROST_STATION_DATE,
            FROST_STATION_SEASON,
            GARDEN_POINT,
            GATHERED,
            GERMINATION_TEST,
            GROUP_PROFILE,
            HARVEST_REPORT,
            INCOMING_TABLE,
            LABEL_PRINT,
            LABEL_PRINTER,
            LABEL_RUN,
            LABEL_STOCK,
            LEAVING,
            LEAVING_THING,
            LETTER,
            LOT,
            LOT_REQUEST,
            MAIL_WISH,
            MAT,
            MAT_DAY,
            MAT_OUT,
            MEMBER,
            NEWS,
            OWN_CROP,
            PHOTO,
            PLACE,
            PLAN_NOTE,
            POSTCODE_PLACE,
            PROBLEM_ANSWER,
            PUSH_WISH,
            QUARANTINE_SHELF,
            QUARTER_DAY,
            RACK,
            RACK_HOLD,
            REQUEST_RANK,
            SEASON_CLOSING,
            SEASON_PLAN,
            SEASON_PLAN_BEFORE,
            SEASON_PLAN_EDIT,
            SEASON_PLAN_FREED,
            SEASON_PLAN_STAY,
            SEASON_PLAN_WARMTH,
            SHELF,
            SHORT_CODE,
            SITE,
            SITE_COORDINATOR,
            SOWING,
            SOWING_MESSAGE,
            SOWING_RESULT,
            SPACE_REQUEST,
            STAY,
            STAY_MOVE,
            SUPPLY_PROMISE,
            SURPLUS_OFFER,
            SURPLUS_TAKING,
            TABLET,
            THERMOMETER,
            THERMOMETER_NIGHT,
            TRIAL,
            TRIAL_BLOCK,
            TRIAL_SOWING,
            TRIAL_WAY,
            VARIETY,
            WITHDRAWAL,
            WITHDRAWAL_STAY);

    /**
     * What opens or serves this one installation, and is made anew where the group moves in: sign-ins and the links that let
     * somebody in; passkeys, which are made for this address; tokens of scripts, which know this address, and what those were answered; devices, which are tied to a sign-in, to the keys of this server and to its address, and what was or is to be
     * sent to them; forms that this server has answered; the files that were made or taken in here.
     */
    private static final List<Table<?>> OF_THE_INSTALLATION = List.of(
            MEMBER_SESSION,
            ACCESS_LINK,
            PASSKEY,
            PASSKEY_CHALLENGE,
            PROGRAM_TOKEN,
            PROGRAM_ANSWER,
            PUSH_ADDRESS,
            PUSH_NOTICE,
            SUBMISSION,
            ARCHIVE_FILE);

    /** What nobody reads and only the program needs, because it lets somebody in. Tables for people leave it out. */
    private static final Set<TableField<?, ?>> SECRET = Set.of(
            MEMBER.PASSPHRASE_HASH,
            CALENDAR_ADDRESS.TOKEN_HASH,
            ACCESS_LINK.TOKEN_HASH,
            MEMBER_SESSION.TOKEN_HASH,
            MEMBER_SESSION.CSRF_TOKEN,
            PASSKEY.CREDENTIAL_ID,
            PASSKEY.CREDENTIAL_DATA,
            PASSKEY_CHALLENGE.CHALLENGE_HASH,
            PROGRAM_TOKEN.TOKEN_HASH,
            PUSH_ADDRESS.ENDPOINT_HASH,
            PUSH_ADDRESS.P256DH,
            PUSH_ADDRESS.AUTH,
            PUSH_ADDRESS.SESSION_HASH);

    private static final Set<String> NAMES_OF_THE_INSTALLATION =
            OF_THE_INSTALLATION.stream().map(Table::getName).collect(Collectors.toUnmodifiableSet());

    private TableOwnership() {}

    public static List<Table<?>> ofTheGroup() {
        return OF_THE_GROUP;
    }

    public static List<Table<?>> ofTheInstallation() {
        return OF_THE_INSTALLATION;
    }

    /** Whether a table, of this program's or of an earlier one's, belongs to the group. */
    public static boolean isTheGroups(String table) {
        return !NAMES_OF_THE_INSTALLATION.contains(table);
    }

    public static boolean isSecret(String table, String column) {
        return SECRET.stream()
                .anyMatch(secret -> secret.getName().equals(column)
                        && Objects.requireNonNull(secret.getTable()).getName().equals(table));
    }
}
