package warmshelf.finding.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.sowing.CompostStore;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.EntryStore;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.SeenSowings;
import warmshelf.testing.StoreContract;

/** What a season's findings read, on every database. */
abstract class SeasonStoreContract extends StoreContract {
    private GrowRoom room;
    private SeenSowings seen;
    private EntryStore entries;
    private SeasonStore seasons;

    @BeforeEach
    void fill() {
        room = new GrowRoom(database(), audit());
        seen = new SeenSowings(database(), audit(), room);
        entries = new EntryStore(audit());
        seasons = new SeasonStore(database().sql(), room.sowings(), entries);
    }

    @Test
    void a_season_without_sowings_is_empty() {
        assertThat(seasons.seasons()).isEmpty();
        assertThat(seasons.find(2027).totals().sown()).isZero();
        assertThat(seasons.find(2027).weeks()).isEmpty();
    }

    @Test
    void a_sowing_comes_with_its_place_warmth_and_counts() {
        seen.upOnDay(9, seen.lot());

        SeasonSowing sowing = seasons.sowings(2027).get(0);

        assertThat(sowing.placeId()).isEqualTo(room.m1Place1());
        assertThat(sowing.meanC()).isCloseTo(26, within(1e-9));
        assertThat(sowing.lot()).isEqualTo("Lantern Row 2025 of Tom");
        assertThat(sowing.counted().came()).isEqualTo(10);
        assertThat(seasons.seasons()).containsExactly(2027);
        assertThat(seasons.sowings(2026)).isEmpty();
    }

    @Test
    void what_came_is_told_once_nothing_more_is_waited_for() {
        seen.upOnDay(9, seen.lot());
        UUID waiting = seen.onMat(room.peppersOf(seen.lot()));
        seen.look(waiting, 8, 1);

        SeasonFinding finding = seasons.find(2027);

        CropFinding peppers = finding.crops().get(0);
        assertThat(peppers.sowings()).isEqualTo(2);
        assertThat(peppers.waiting()).isEqualTo(1);
        assertThat(peppers.came()).get().satisfies(share -> {
            assertThat(share.came()).isEqualTo(10);
            assertThat(share.of()).isEqualTo(12);
        });
        assertThat(peppers.half().orElseThrow()).isBetween(8.0, 9.0);
    }

    /** 21 days on half a place of a mat of 45 W: two quarters a day, and at most 21 x 24 x 45 Wh. */
    @Test
    void space_and_heat_are_summed_by_week() {
        seen.upOnDay(9, seen.lot());

        List<SpaceWeek> weeks = seasons.weeks(2027);

        assertThat(weeks)
                .extracting(SpaceWeek::monday)
                .startsWith(SeenSowings.FIRST)
                .hasSize(3);
        assertThat(weeks.stream().mapToInt(SpaceWeek::onMats).sum()).isEqualTo(21 * 2);
        assertThat(weeks.get(0).ofMats()).isEqualTo(3 * 4 * 7);
        assertThat(weeks.stream().mapToLong(SpaceWeek::wattHours).sum()).isEqualTo(21L * 24 * 45);
    }

    @Test
    void losses_are_told_by_compost_where_it_was_noted() {
        UUID noted = seen.upOnDay(9, seen.lot());
        seen.upOnDay(9, seen.lot());
        CompostStore composts = new CompostStore(database().sql(), audit());
        database().sql().transaction(tx -> composts.note(tx.dsl(), noted, "Fine peat-free", room.tom()));

        assertThat(seasons.find(2027).losses())
                .filteredOn(losses -> losses.by() == SeasonFinding.By.COMPOST)
                .hasSize(2)
                .allSatisfy(losses -> assertThat(losses.rates()).singleElement().satisfies(rate -> {
                    assertThat(rate.of()).isEqualTo("Fine peat-free");
                    assertThat(rate.noted().of()).isEqualTo(1);
                }));
    }

    @Test
    void entries_are_handed_on_in_order_without_those_that_were_corrected() throws IOException {
        UUID sowing = seen.upOnDay(9, seen.lot());
        Entry wrong = entries.ofSowing(database().sql(), sowing).stream()
                .filter(entry -> Integer.valueOf(10).equals(entry.sprouted()))
                .findFirst()
                .orElseThrow();
        correct(wrong, 9);

        List<Entry> read = new ArrayList<>();
        seasons.forEachEntry(2027, read::add);

        assertThat(read).extracting(Entry::sprouted).containsExactly(null, 0, 9, null);
        assertThat(read).extracting(Entry::step).endsWith(EntryStep.UNDER_LIGHT);
    }

    private void correct(Entry wrong, int sprouted) {
        LocalDate day = wrong.seenOn();
        Entry right = new Entry(
                UUID.randomUUID(),
                wrong.sowingId(),
                EntryStep.LOOK,
                day,
                day.atTime(10, 0).atOffset(ZoneOffset.UTC),
                sprouted,
                null,
                null,
                false,
                null,
                "",
                wrong.id(),
                room.tom(),
                "Tom");
        database().sql().transaction(tx -> entries.add(tx.dsl(), right));
    }
}
