package warmshelf.privacy;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.ACCESS_LINK;
import static warmshelf.db.generated.Tables.DUTY_AWAY;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.FROST_CORRECTION;
import static warmshelf.db.generated.Tables.GARDEN_POINT;
import static warmshelf.db.generated.Tables.LETTER;
import static warmshelf.db.generated.Tables.MAIL_WISH;
import static warmshelf.db.generated.Tables.PHOTO;
import static warmshelf.db.generated.Tables.PUSH_ADDRESS;
import static warmshelf.db.generated.Tables.PUSH_NOTICE;
import static warmshelf.db.generated.Tables.SUPPLY_PROMISE;
import static warmshelf.db.generated.Tables.THERMOMETER;
import static warmshelf.db.generated.Tables.THERMOMETER_NIGHT;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import warmshelf.loop.Cellar;
import warmshelf.testing.TestGroup;

/** The member Tom Okafor, of whom the group knows all that it can know of anybody, in words that stand nowhere else. */
final class KnownPerson {
    static final String EMAIL = "tom.okafor@example.org";
    static final String PHONE = "Pixel of the kitchen";
    static final String SCRIPT = "sensor of the attic";
    static final List<String> NOTES =
            List.of("marigold-note", "cornflower-note", "foxglove-note", "yarrow-note", "teasel-note");

    final String sowing;
    final String waiting;
    final UUID photo = UUID.randomUUID();
    private final DSLContext sql;
    private final UUID tom;
    private final OffsetDateTime now;

    private KnownPerson(Cellar cellar) {
        TestGroup group = cellar.group();
        this.sql = group.database().sql();
        this.tom = group.member().id();
        this.now = group.audit().now();
        Map<String, String> asked = new HashMap<>(Cellar.peppers());
        asked.put("note", NOTES.get(0));
        sowing = cellar.ask(asked);
        assertThat(cellar.placeAsSuggested(sowing).status()).isEqualTo(303);
        waiting = cellar.ask(asked);
        entryWithPhoto();
        tellBy();
        garden();
        assertThat(cellar.member().post("/reminders/calendar").status()).isEqualTo(200);
        assertThat(cellar.coordinator()
                        .post("/people/links", Map.of("note", "Tom Okafor", "role", "member"))
                        .status())
                .isEqualTo(303);
        assertThat(cellar.member()
                        .post("/tokens", Map.of("name", SCRIPT, "readings-write", "yes"))
                        .status())
                .isEqualTo(200);
        others(group);
    }

    static KnownPerson in(Cellar cellar) {
        return new KnownPerson(cellar);
    }

    /** Whole words that only this person's records hold. */
    static List<String> words(TestGroup group) {
        return Stream.concat(
                        Stream.of(
                                group.member().name(),
                                group.member().postcode(),
                                EMAIL,
                                PHONE,
                                SCRIPT,
                                "Okafor",
                                "46.8123"),
                        NOTES.stream())
                .toList();
    }

    private void entryWithPhoto() {
        UUID entry = UUID.randomUUID();
        sql.insertInto(ENTRY)
                .set(ENTRY.ID, entry)
                .set(ENTRY.SOWING_ID, UUID.fromString(sowing))
                .set(ENTRY.STEP, "look")
                .set(ENTRY.SEEN_ON, LocalDate.of(2027, 3, 1))
                .set(ENTRY.SEEN_AT, now)
                .set(ENTRY.FINISHED, false)
                .set(ENTRY.NOTE, NOTES.get(1))
                .set(ENTRY.MADE_BY, tom)
                .set(ENTRY.MADE_AT, now)
                .execute();
        sql.insertInto(PHOTO)
                .set(PHOTO.ID, photo)
                .set(PHOTO.ENTRY_ID, entry)
                .set(PHOTO.WIDTH, 2)
                .set(PHOTO.HEIGHT, 1)
                .set(PHOTO.JPEG, new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff, (byte) 0xd9})
                .set(PHOTO.ADDED_BY, tom)
                .set(PHOTO.ADDED_AT, now)
                .execute();
        sql.insertInto(SUPPLY_PROMISE)
                .set(SUPPLY_PROMISE.ID, UUID.randomUUID())
                .set(SUPPLY_PROMISE.SEASON, 2027)
                .set(SUPPLY_PROMISE.ITEM, "labels")
                .set(SUPPLY_PROMISE.AMOUNT, BigDecimal.TEN)
                .set(SUPPLY_PROMISE.MEMBER_ID, tom)
                .set(SUPPLY_PROMISE.NOTE, NOTES.get(2))
                .set(SUPPLY_PROMISE.MADE_BY, tom)
                .set(SUPPLY_PROMISE.MADE_AT, now)
                .execute();
    }

    private void tellBy() {
        sql.insertInto(MAIL_WISH)
                .set(MAIL_WISH.MEMBER_ID, tom)
                .set(MAIL_WISH.ADDRESS, EMAIL)
                .set(MAIL_WISH.IN_THE_MORNING, true)
                .set(MAIL_WISH.IN_THE_EVENING, false)
                .set(MAIL_WISH.OF_ALARMS, true)
                .set(MAIL_WISH.OF_STAND_INS, true)
                .set(MAIL_WISH.CHANGED_AT, now)
                .execute();
        letter(tom, EMAIL, "Good morning, Tom Okafor.");
        UUID device = UUID.randomUUID();
        sql.insertInto(PUSH_ADDRESS)
                .set(PUSH_ADDRESS.ID, device)
                .set(PUSH_ADDRESS.MEMBER_ID, tom)
                .set(PUSH_ADDRESS.ENDPOINT, "https://push.example.org/okafor-device")
                .set(PUSH_ADDRESS.ENDPOINT_HASH, "1".repeat(64))
                .set(PUSH_ADDRESS.P256DH, "key")
                .set(PUSH_ADDRESS.AUTH, "secret")
                .set(PUSH_ADDRESS.NAME, PHONE)
                .set(PUSH_ADDRESS.SESSION_HASH, "2".repeat(64))
                .set(PUSH_ADDRESS.ADDED_BY, tom)
                .set(PUSH_ADDRESS.ADDED_AT, now)
                .execute();
        sql.insertInto(PUSH_NOTICE)
                .set(PUSH_NOTICE.ID, UUID.randomUUID())
                .set(PUSH_NOTICE.ADDRESS_ID, device)
                .set(PUSH_NOTICE.MEMBER_ID, tom)
                .set(PUSH_NOTICE.ABOUT, "morning 2027-03-01")
                .set(PUSH_NOTICE.TITLE, "For Tom Okafor")
                .set(PUSH_NOTICE.BODY, "One tray to look at")
                .set(PUSH_NOTICE.PATH, "/today")
                .set(PUSH_NOTICE.URGENCY, "normal")
                .set(PUSH_NOTICE.TOPIC, "morning")
                .set(PUSH_NOTICE.UNTIL_AT, now)
                .set(PUSH_NOTICE.MADE_AT, now)
                .set(PUSH_NOTICE.DUE_AT, now)
                .set(PUSH_NOTICE.TRIES, 0)
                .execute();
    }

    private void letter(UUID to, String address, String words) {
        sql.insertInto(LETTER)
                .set(LETTER.ID, UUID.randomUUID())
                .set(LETTER.MEMBER_ID, to)
                .set(LETTER.ABOUT, "morning 2027-03-01")
                .set(LETTER.ADDRESS, address)
                .set(LETTER.SUBJECT, "Today")
                .set(LETTER.WORDS, words)
                .set(LETTER.MADE_AT, now)
                .set(LETTER.DUE_AT, now)
                .set(LETTER.TRIES, 0)
                .execute();
    }

    private void garden() {
        sql.insertInto(GARDEN_POINT)
                .set(GARDEN_POINT.MEMBER_ID, tom)
                .set(GARDEN_POINT.LATITUDE, 46.8123)
                .set(GARDEN_POINT.LONGITUDE, -92.1)
                .set(GARDEN_POINT.ELEVATION_M, 300.0)
                .set(GARDEN_POINT.SET_BY, tom)
                .set(GARDEN_POINT.SET_AT, now)
                .set(GARDEN_POINT.VERSION, 1)
                .execute();
        sql.insertInto(FROST_CORRECTION)
                .set(FROST_CORRECTION.ID, UUID.randomUUID())
                .set(FROST_CORRECTION.MEMBER_ID, tom)
                .set(FROST_CORRECTION.HOW, "shift")
                .set(FROST_CORRECTION.SPRING_SHIFT_DAYS, 3)
                .set(FROST_CORRECTION.AUTUMN_SHIFT_DAYS, 0)
                .set(FROST_CORRECTION.REASON, NOTES.get(3))
                .set(FROST_CORRECTION.MADE_BY, tom)
                .set(FROST_CORRECTION.MADE_AT, now)
                .execute();
        UUID thermometer = UUID.randomUUID();
        sql.insertInto(THERMOMETER)
                .set(THERMOMETER.ID, thermometer)
                .set(THERMOMETER.NAME, NOTES.get(4))
                .set(THERMOMETER.MEMBER_ID, tom)
                .set(THERMOMETER.LATITUDE, 46.8123)
                .set(THERMOMETER.LONGITUDE, -92.1)
                .set(THERMOMETER.ELEVATION_M, 300.0)
                .set(THERMOMETER.ADDED_BY, tom)
                .set(THERMOMETER.ADDED_AT, now)
                .execute();
        sql.insertInto(THERMOMETER_NIGHT)
                .set(THERMOMETER_NIGHT.THERMOMETER_ID, thermometer)
                .set(THERMOMETER_NIGHT.ON_DAY, LocalDate.of(2027, 2, 20))
                .set(THERMOMETER_NIGHT.CELSIUS, BigDecimal.valueOf(-3))
                .set(THERMOMETER_NIGHT.NOTED_BY, tom)
                .set(THERMOMETER_NIGHT.NOTED_AT, now)
                .execute();
        sql.insertInto(DUTY_AWAY)
                .set(DUTY_AWAY.ID, UUID.randomUUID())
                .set(DUTY_AWAY.MEMBER_ID, tom)
                .set(DUTY_AWAY.FIRST_DAY, LocalDate.of(2027, 3, 4))
                .set(DUTY_AWAY.LAST_DAY, LocalDate.of(2027, 3, 6))
                .set(DUTY_AWAY.MADE_BY, tom)
                .set(DUTY_AWAY.MADE_AT, now)
                .execute();
    }

    /** What others were told of this person, and the link by which they came. */
    private void others(TestGroup group) {
        letter(
                group.coordinator().id(),
                "ilse@example.org",
                "Please look after TOM OKAFOR’s peppers (" + EMAIL + "). Tom’s tray 3 stands in the hall.");
        sql.insertInto(ACCESS_LINK)
                .set(ACCESS_LINK.TOKEN_HASH, "3".repeat(64))
                .set(ACCESS_LINK.PURPOSE, "join")
                .set(ACCESS_LINK.ROLE, "member")
                .set(ACCESS_LINK.NOTE, "Tommy Okafor, the neighbour")
                .set(ACCESS_LINK.MADE_BY, group.coordinator().id())
                .set(ACCESS_LINK.MADE_AT, now)
                .set(ACCESS_LINK.EXPIRES_AT, now.plusDays(14))
                .set(ACCESS_LINK.USES_LEFT, 0)
                .set(ACCESS_LINK.USED_AT, now)
                .set(ACCESS_LINK.USED_BY, tom)
                .execute();
    }
}
