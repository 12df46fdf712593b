package warmshelf.frost.garden;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.FROST_EVIDENCE_VERSION;

import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;
import warmshelf.testing.StoreContract;

abstract class ThermometerStoreContract extends StoreContract {
    private static final GardenPoint HILL = new GardenPoint(46.84, -92.22, 428.5);
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

    private ThermometerStore thermometers;
    private NightStore nights;
    private UUID tom;

    @BeforeEach
    void moveIn() {
        // the migrations leave this row, which emptying the tables takes away
        database().sql().insertInto(FROST_EVIDENCE_VERSION).values(1, 1L).execute();
        thermometers = new ThermometerStore(database(), audit());
        nights = new NightStore(database(), audit());
        NewMember member = new NewMember("Tom Okafor", "US", "55804", "not a hash");
        tom = new MemberStore(database(), audit()).add(database().sql(), member, false, "for a test");
    }

    @Test
    void a_thermometer_comes_out_as_it_went_in() {
        UUID own = add("Shed", tom);
        UUID groups = add("Hall", null);

        assertThat(thermometers.find(own)).contains(new Thermometer(own, "Shed", tom, "Tom", HILL, false));
        assertThat(thermometers.find(groups)).contains(new Thermometer(groups, "Hall", null, null, HILL, false));
        assertThat(thermometers.find(UUID.randomUUID())).isEmpty();
    }

    @Test
    void a_person_sees_the_groups_and_their_own_and_a_coordinator_all() {
        add("shed", tom);
        add("Hall", null);

        assertThat(thermometers.seenBy(UUID.randomUUID(), false))
                .extracting(Thermometer::name)
                .containsExactly("Hall");
        assertThat(thermometers.seenBy(tom, false))
                .extracting(Thermometer::name)
                .containsExactly("Hall", "shed");
        assertThat(thermometers.seenBy(UUID.randomUUID(), true)).hasSize(2);
    }

    @Test
    void retired_ones_come_last_and_are_retired_once() {
        UUID hall = add("Hall", null);
        add("Shed", null);

        assertThat(thermometers.retire(hall, tom)).isTrue();
        assertThat(thermometers.retire(hall, tom)).isFalse();
        assertThat(thermometers.seenBy(tom, false))
                .extracting(Thermometer::name)
                .containsExactly("Shed", "Hall");
    }

    @Test
    void a_night_is_noted_written_over_and_taken_away() {
        UUID shed = add("Shed", tom);

        assertThat(nights.note(shed, TODAY, -2.2, tom)).isEmpty();
        assertThat(nights.note(shed, TODAY, -3.4, tom)).contains(-2.2);
        assertThat(nights.nights(shed, TODAY, TODAY)).containsExactly(new Night(TODAY, -3.4, "Tom"));
        assertThat(nights.forget(shed, TODAY, tom)).contains(-3.4);
        assertThat(nights.forget(shed, TODAY, tom)).isEmpty();
        assertThat(nights.nights(shed, TODAY, TODAY)).isEmpty();
    }

    @Test
    void nights_come_newest_first_between_both_days() {
        UUID shed = add("Shed", tom);
        for (int i = 0; i < 5; i++) {
            nights.note(shed, TODAY.minusDays(i), -i, tom);
        }

        assertThat(nights.nights(shed, TODAY.minusDays(3), TODAY.minusDays(1)))
                .extracting(Night::celsius)
                .containsExactly(-1.0, -2.0, -3.0);
    }

    @Test
    void many_nights_say_how_many_were_there_before() {
        UUID shed = add("Shed", tom);
        nights.note(shed, TODAY, 1, tom);

        int over = nights.noteAll(shed, new TreeMap<>(Map.of(TODAY, -1.0, TODAY.minusDays(1), -4.0)), tom);

        assertThat(over).isEqualTo(1);
        assertThat(nights.nights(shed, TODAY.minusDays(9), TODAY))
                .extracting(Night::celsius)
                .containsExactly(-1.0, -4.0);
    }

    @Test
    void the_list_tells_how_many_nights_and_the_coldest_of_seven() {
        UUID shed = add("Shed", tom);
        UUID old = add("Old", tom);
        nights.note(shed, TODAY, -1, tom);
        nights.note(shed, TODAY.minusDays(6), -8.5, tom);
        nights.note(shed, TODAY.minusDays(7), -20, tom);
        nights.note(old, TODAY.minusDays(7), -20, tom);

        assertThat(thermometers.noted(TODAY))
                .isEqualTo(Map.of(
                        shed, new NotedNights(3, -8.5, TODAY), old, new NotedNights(1, null, TODAY.minusDays(7))));
    }

    @Test
    void all_records_hold_every_night_also_of_retired_ones() {
        UUID shed = add("Shed", tom);
        add("Hall", null);
        nights.note(shed, TODAY, -2.2, tom);
        thermometers.retire(shed, tom);

        assertThat(thermometers.allRecords()).hasSize(2);
        ThermometerRecord hall = thermometers.allRecords().get(0);
        ThermometerRecord record = thermometers.allRecords().get(1);
        assertThat(hall.memberId()).isNull();
        assertThat(hall.minima().size()).isZero();
        assertThat(record.name()).isEqualTo("Shed");
        assertThat(record.memberId()).isEqualTo(tom);
        assertThat(record.point()).isEqualTo(HILL);
        assertThat(record.minima().on(TODAY)).hasValue(-2.2);
    }

    @Test
    void every_change_counts_up_the_evidence() {
        UUID shed = add("Shed", tom);
        long before = evidence();
        nights.note(shed, TODAY, 1, tom);
        nights.noteAll(shed, new TreeMap<>(Map.of(TODAY, -1.0)), tom);
        nights.forget(shed, TODAY, tom);
        add("Hall", null);
        thermometers.retire(shed, tom);

        assertThat(evidence()).isEqualTo(before + 5);
    }

    private long evidence() {
        return database()
                .sql()
                .select(FROST_EVIDENCE_VERSION.VERSION)
                .from(FROST_EVIDENCE_VERSION)
                .fetchSingle()
                .value1();
    }

    private UUID add(String name, @Nullable UUID memberId) {
        return thermometers.add(new NewThermometer(name, memberId, HILL), tom);
    }
}
