package warmshelf.archive;

import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.FROST_CORRECTION;
import static warmshelf.db.generated.Tables.GARDEN_POINT;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PHOTO;
import static warmshelf.db.generated.Tables.VARIETY;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Database;
import warmshelf.demo.FilledDemo;
import warmshelf.testing.MutableClock;

/** The demo's group with photos, and with texts and figures that are hard to carry. */
final class FullGroup {
    static final Instant MORNING = Instant.parse("2027-05-04T14:00:00Z");
    /** Texts that spreadsheets, JSON, languages and empty cells trip over; and orders in which languages differ. */
    static final List<String> HARD_TEXTS = List.of(
            "=HYPERLINK(\"http://example.org\")",
            "+1",
            "-2",
            "@here",
            "\tindented",
            "'quoted",
            "a, b; \"c\"\r\nnext line\nand \u2028 one",
            "Zürich",
            "zebra",
            "Äpfel",
            "apple",
            "Apple",
            "a b",
            "a-b",
            "ab",
            "\uD83C\uDF45 tomato",
            "\uFF21 wide",
            "\u05D0\u05D1",
            "\\u0041 \\n",
            " spaces around ");

    private FullGroup() {}

    static void fill(Database database) {
        database.together(() -> FilledDemo.in(database, new MutableClock(MORNING)));
        DSLContext sql = database.sql();
        OffsetDateTime at = MORNING.atOffset(ZoneOffset.UTC);
        UUID by = sql.select(MEMBER.ID)
                .from(MEMBER)
                .orderBy(MEMBER.NAME_KEY)
                .limit(1)
                .fetchSingle(MEMBER.ID);
        addTexts(sql, by, at);
        addFigures(sql, by, at);
        addPhotos(sql, by, at);
        addLotsOfLots(sql, by, at);
    }

    private static void addTexts(DSLContext sql, UUID by, OffsetDateTime at) {
        for (String text : HARD_TEXTS) {
            sql.insertInto(VARIETY)
                    .set(VARIETY.CROP_ID, "tomato")
                    .set(VARIETY.NAME_KEY, text)
                    .set(VARIETY.NAME, text)
                    .set(VARIETY.MATURITY_MIN, 60)
                    .set(VARIETY.MATURITY_MAX, 70)
                    .set(VARIETY.MATURITY_BASIS, "transplanting")
                    .set(VARIETY.SOURCE, text)
                    .set(VARIETY.MADE_BY, by)
                    .set(VARIETY.MADE_AT, at)
                    .set(VARIETY.VERSION, 1)
                    .execute();
        }
    }

    private static void addFigures(DSLContext sql, UUID by, OffsetDateTime at) {
        sql.deleteFrom(GARDEN_POINT).where(GARDEN_POINT.MEMBER_ID.eq(by)).execute();
        sql.insertInto(GARDEN_POINT)
                .set(GARDEN_POINT.MEMBER_ID, by)
                .set(GARDEN_POINT.LATITUDE, 46.786671999999996)
                .set(GARDEN_POINT.LONGITUDE, -92.1004853)
                .set(GARDEN_POINT.ELEVATION_M, 2.0e-3)
                .set(GARDEN_POINT.SET_BY, by)
                .set(GARDEN_POINT.SET_AT, at)
                .set(GARDEN_POINT.VERSION, 1)
                .execute();
        sql.insertInto(FROST_CORRECTION)
                .set(FROST_CORRECTION.ID, UUID.randomUUID())
                .set(FROST_CORRECTION.MEMBER_ID, by)
                .set(FROST_CORRECTION.HOW, "shift")
                .set(FROST_CORRECTION.SPRING_SHIFT_DAYS, -3)
                .set(FROST_CORRECTION.REASON, "")
                .set(FROST_CORRECTION.MADE_BY, by)
                .set(FROST_CORRECTION.MADE_AT, at.plusNanos(7_000_000))
                .execute();
    }

    /** Three with entries, one with a lot, and one that was taken out. */
    private static void addPhotos(DSLContext sql, UUID by, OffsetDateTime at) {
        List<UUID> entries = sql.select(ENTRY.ID)
                .from(ENTRY)
                .where(ENTRY.SOWING_ID.isNotNull())
                .orderBy(ENTRY.KEPT_ORDER)
                .limit(4)
                .fetch(ENTRY.ID);
        for (UUID entry : entries) {
            boolean removed = entry.equals(entries.get(3));
            sql.insertInto(PHOTO)
                    .set(PHOTO.ID, UUID.randomUUID())
                    .set(PHOTO.ENTRY_ID, entry)
                    .set(PHOTO.WIDTH, 40)
                    .set(PHOTO.HEIGHT, 30)
                    .set(PHOTO.JPEG, removed ? new byte[0] : picture(entries.indexOf(entry)))
                    .set(PHOTO.ADDED_BY, by)
                    .set(PHOTO.ADDED_AT, at)
                    .set(PHOTO.REMOVED_BY, removed ? by : null)
                    .set(PHOTO.REMOVED_AT, removed ? at : null)
                    .execute();
        }
        sql.insertInto(PHOTO)
                .set(PHOTO.ID, UUID.randomUUID())
                .set(PHOTO.LOT_ID, sql.select(LOT.ID).from(LOT).limit(1).fetchSingle(LOT.ID))
                .set(PHOTO.WIDTH, 40)
                .set(PHOTO.HEIGHT, 30)
                .set(PHOTO.JPEG, picture(9))
                .set(PHOTO.ADDED_BY, by)
                .set(PHOTO.ADDED_AT, at)
                .execute();
    }

    /** Lots that were taken from one another, whose keys come in both orders. */
    private static void addLotsOfLots(DSLContext sql, UUID by, OffsetDateTime at) {
        UUID first = UUID.nameUUIDFromBytes("first".getBytes(StandardCharsets.UTF_8));
        UUID second = UUID.nameUUIDFromBytes("second".getBytes(StandardCharsets.UTF_8));
        UUID third = UUID.nameUUIDFromBytes("third".getBytes(StandardCharsets.UTF_8));
        addLot(sql, first, null, by, at);
        addLot(sql, second, first, by, at);
        addLot(sql, third, second, by, at);
    }

    private static void addLot(DSLContext sql, UUID id, @Nullable UUID from, UUID by, OffsetDateTime at) {
        sql.insertInto(LOT)
                .set(LOT.ID, id)
                .set(LOT.CROP_ID, "tomato")
                .set(LOT.VARIETY, "=1+1")
                .set(LOT.SEED_YEAR, 2026)
                .set(LOT.TREATED, false)
                .set(LOT.NOTE, "")
                .set(LOT.TAKEN_FROM, from)
                .set(LOT.MADE_BY, by)
                .set(LOT.MADE_AT, at)
                .set(LOT.VERSION, 1)
                .execute();
    }

    static byte[] picture(int shade) {
        BufferedImage image = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 40; x++) {
            for (int y = 0; y < 30; y++) {
                image.setRGB(x, y, ((x * 6) << 16) + ((y * 8) << 8) + shade * 20);
            }
        }
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "jpeg", jpeg);
        } catch (IOException neverHappens) {
            throw new UncheckedIOException(neverHappens);
        }
        return jpeg.toByteArray();
    }
}
