package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.GROUP_PROFILE;
import static warmshelf.db.generated.Tables.SOWING;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Objects;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

/** What the migration makes of sowings that were kept with the year of their day under cover. */
abstract class SeasonAskedForContract extends StoreContract {
    private static final String MIGRATION = "/db/migration/V20261130040100__season_asked_for.sql";

    private GrowRoom room;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
    }

    @Test
    void what_goes_out_in_january_belongs_to_the_season_asked_for_before_and_after_it() {
        sowing("2026-08-01T12:00Z", 2026, null);
        UUID january = sowing("2026-10-01T12:00Z", 2027, LocalDate.of(2027, 1, 10));
        sowing("2026-11-01T12:00Z", 2026, null);
        groupWorksTowards(2027);

        migrate();

        assertThat(season(january)).isEqualTo(2026);
    }

    @Test
    void what_goes_out_in_december_belongs_to_the_season_that_the_group_has_already_turned_to() {
        sowing("2026-10-01T12:00Z", 2027, null);
        UUID december = sowing("2026-11-01T12:00Z", 2026, LocalDate.of(2026, 12, 20));
        groupWorksTowards(2027);

        migrate();

        assertThat(season(december)).isEqualTo(2027);
    }

    @Test
    void where_the_group_turned_to_another_season_in_between_the_year_of_the_day_is_the_best_guess() {
        sowing("2026-08-01T12:00Z", 2026, null);
        UUID cover = sowing("2026-10-01T12:00Z", 2027, LocalDate.of(2027, 3, 1));
        sowing("2027-01-01T12:00Z", 2027, null);
        groupWorksTowards(2028);

        migrate();

        assertThat(season(cover)).isEqualTo(2027);
    }

    @Test
    void where_nothing_was_asked_for_outdoors_the_groups_season_counts_and_outdoors_nothing_changes() {
        UUID cover = sowing("2026-11-01T12:00Z", 2026, LocalDate.of(2026, 12, 20));
        groupWorksTowards(2027);
        migrate();
        UUID outdoors = sowing("2026-11-02T12:00Z", 2025, null);

        migrate();

        assertThat(season(cover)).isEqualTo(2025);
        assertThat(season(outdoors)).isEqualTo(2025);
    }

    private void migrate() {
        try (InputStream file = Objects.requireNonNull(getClass().getResourceAsStream(MIGRATION))) {
            database().sql().execute(new String(file.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private UUID sowing(String askedAt, int season, @Nullable LocalDate cover) {
        UUID id = room.tomsPeppers();
        database()
                .sql()
                .update(SOWING)
                .set(SOWING.ASKED_AT, OffsetDateTime.parse(askedAt))
                .set(SOWING.SEASON, season)
                .set(SOWING.UNDER_COVER_ON, cover)
                .where(SOWING.ID.eq(id))
                .execute();
        return id;
    }

    private int season(UUID sowing) {
        return room.sowings().find(sowing).orElseThrow().season();
    }

    private void groupWorksTowards(int season) {
        DSLContext sql = database().sql();
        sql.insertInto(GROUP_PROFILE)
                .set(GROUP_PROFILE.ID, 1)
                .set(GROUP_PROFILE.NAME, "Hall")
                .set(GROUP_PROFILE.TIME_ZONE, "America/Chicago")
                .set(GROUP_PROFILE.TEMPERATURE_UNIT, "F")
                .set(GROUP_PROFILE.LENGTH_UNIT, "in")
                .set(GROUP_PROFILE.COUNTRY, "US")
                .set(GROUP_PROFILE.HOME_POSTCODE, "55806")
                .set(GROUP_PROFILE.SEASON, season)
                .set(GROUP_PROFILE.VERSION, 1)
                .execute();
    }
}
