package warmshelf.frost.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static warmshelf.db.generated.Tables.FROST_IMPORT;
import static warmshelf.db.generated.Tables.FROST_STATION;
import static warmshelf.db.generated.Tables.FROST_STATION_DATE;
import static warmshelf.db.generated.Tables.GARDEN_POINT;
import static warmshelf.db.generated.Tables.POSTCODE_PLACE;

import java.math.BigDecimal;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.frost.Threshold;
import warmshelf.frost.garden.GardenPoint;
import warmshelf.frost.station.Side;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;
import warmshelf.testing.StoreContract;

abstract class EvidenceStoreContract extends StoreContract {
    private EvidenceStore store;
    private UUID ines;

    @BeforeEach
    void moveIn() {
        store = EvidenceStore.over(database(), audit());
        NewMember member = new NewMember("Ines", "US", "55804", "not a hash");
        ines = new MemberStore(database(), audit()).add(database().sql(), member, true, "for a test");
    }

    @Test
    void a_group_that_has_brought_in_nothing_knows_nothing_beside_the_surface() {
        assertThat(store.evidence().stations()).isEmpty();
        assertThat(store.evidence().gardens()).isEmpty();
        assertThat(store.imported("CA", "K1A0B1")).isEmpty();
    }

    @Test
    void a_station_comes_out_with_its_dates_at_each_threshold() {
        UUID id = station(null);
        date(id, 0.0, "spring", 130.0);
        date(id, -2.2, "spring", 120.0);
        VersionStore.grow(database().sql());

        LocalStation station = store.evidence().stations().get(0);

        assertThat(station.name()).isEqualTo("Pier");
        assertThat(station.kind()).isEqualTo(LocalStation.Kind.PUBLISHED);
        assertThat(station.of(Threshold.FROST, Side.SPRING).medianDay()).hasValue(130);
        assertThat(station.of(Threshold.KILLING, Side.SPRING).medianDay()).hasValue(120);
        assertThat(station.of(Threshold.FROST, Side.SPRING).seasons()).isEmpty();
        assertThat(station.of(Threshold.LIGHT, Side.AUTUMN).medianDay()).isEmpty();
    }

    @Test
    void what_a_file_brought_counts_only_while_it_is_taken() {
        UUID file = file("ready");
        UUID id = station(file);
        date(id, 0.0, "spring", 130.0);
        place(file, "Ottawa", 45.4);

        assertThat(store.evidence().stations()).isEmpty();
        assertThat(store.imported("CA", "K1A")).isEmpty();

        decide(file, "taken");
        assertThat(store.evidence().stations()).hasSize(1);
        assertThat(store.imported("CA", "K1A").orElseThrow().latitude()).isCloseTo(45.4, within(1e-9));

        decide(file, "removed");
        assertThat(store.evidence().stations()).isEmpty();
        assertThat(store.imported("CA", "K1A")).isEmpty();
    }

    @Test
    void the_same_evidence_is_handed_out_until_its_version_grows() {
        GroupEvidence before = store.evidence();
        new MemberStore(database(), audit())
                .add(database().sql(), new NewMember("Tom", "US", "55804", "not a hash"), false, "for a test");

        assertThat(store.evidence()).isSameAs(before);

        VersionStore.grow(database().sql());
        assertThat(store.evidence()).isNotSameAs(before);
    }

    @Test
    void a_member_s_own_point_is_among_the_gardens() {
        database()
                .sql()
                .insertInto(GARDEN_POINT)
                .set(GARDEN_POINT.MEMBER_ID, ines)
                .set(GARDEN_POINT.LATITUDE, 46.8)
                .set(GARDEN_POINT.LONGITUDE, -92.1)
                .set(GARDEN_POINT.ELEVATION_M, 310.0)
                .set(GARDEN_POINT.SET_BY, ines)
                .set(GARDEN_POINT.SET_AT, audit().now())
                .set(GARDEN_POINT.VERSION, 1)
                .execute();
        VersionStore.grow(database().sql());

        assertThat(store.evidence().gardens()).containsEntry(ines, new GardenPoint(46.8, -92.1, 310.0));
        assertThat(new Gardens(store)
                        .ofMember(ines, "US", "55804")
                        .orElseThrow()
                        .exact())
                .isTrue();
    }

    private UUID station(@Nullable UUID file) {
        UUID id = UUID.randomUUID();
        database()
                .sql()
                .insertInto(FROST_STATION)
                .set(FROST_STATION.ID, id)
                .set(FROST_STATION.IMPORT_ID, file)
                .set(FROST_STATION.KIND, "published")
                .set(FROST_STATION.CODE, "P1")
                .set(FROST_STATION.NAME, "Pier")
                .set(FROST_STATION.LATITUDE, 46.8)
                .set(FROST_STATION.LONGITUDE, -92.1)
                .set(FROST_STATION.ELEVATION_M, 185.0)
                .set(FROST_STATION.SOURCE, "1991-2020")
                .set(FROST_STATION.ADDED_BY, ines)
                .set(FROST_STATION.ADDED_AT, audit().now())
                .execute();
        return id;
    }

    private void date(UUID station, double threshold, String side, double day) {
        database()
                .sql()
                .insertInto(FROST_STATION_DATE)
                .set(FROST_STATION_DATE.STATION_ID, station)
                .set(FROST_STATION_DATE.THRESHOLD_C, BigDecimal.valueOf(threshold))
                .set(FROST_STATION_DATE.SIDE, side)
                .set(FROST_STATION_DATE.MEDIAN_DAY, day)
                .execute();
    }

    private UUID file(String state) {
        UUID id = UUID.randomUUID();
        database()
                .sql()
                .insertInto(FROST_IMPORT)
                .set(FROST_IMPORT.ID, id)
                .set(FROST_IMPORT.KIND, "stations")
                .set(FROST_IMPORT.FILE_NAME, "stations.csv")
                .set(FROST_IMPORT.BYTES_TOTAL, 10L)
                .set(FROST_IMPORT.BYTES_READ, 10L)
                .set(FROST_IMPORT.ROWS_READ, 1L)
                .set(FROST_IMPORT.ROWS_GOOD, 1L)
                .set(FROST_IMPORT.STATE, state)
                .set(FROST_IMPORT.WORDS, "")
                .set(FROST_IMPORT.STARTED_BY, ines)
                .set(FROST_IMPORT.STARTED_AT, audit().now())
                .set(FROST_IMPORT.BEAT_AT, audit().now())
                .execute();
        return id;
    }

    private void place(UUID file, String name, double latitude) {
        database()
                .sql()
                .insertInto(POSTCODE_PLACE)
                .set(POSTCODE_PLACE.IMPORT_ID, file)
                .set(POSTCODE_PLACE.COUNTRY, "CA")
                .set(POSTCODE_PLACE.CODE, "K1A")
                .set(POSTCODE_PLACE.PLACE, name)
                .set(POSTCODE_PLACE.REGION, "Ontario")
                .set(POSTCODE_PLACE.LATITUDE, latitude)
                .set(POSTCODE_PLACE.LONGITUDE, -75.7)
                .execute();
    }

    private void decide(UUID file, String state) {
        database()
                .sql()
                .update(FROST_IMPORT)
                .set(FROST_IMPORT.STATE, state)
                .set(FROST_IMPORT.DECIDED_BY, ines)
                .set(FROST_IMPORT.DECIDED_AT, audit().now())
                .where(FROST_IMPORT.ID.eq(file))
                .execute();
        VersionStore.grow(database().sql());
    }
}
