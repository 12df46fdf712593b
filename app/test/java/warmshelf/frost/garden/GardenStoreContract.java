package warmshelf.frost.garden;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.FROST_EVIDENCE_VERSION;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.crop.Hardiness;
import warmshelf.decision.Decision;
import warmshelf.frost.garden.FrostCorrection.Area;
import warmshelf.frost.garden.FrostCorrection.Change;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;
import warmshelf.testing.StoreContract;

abstract class GardenStoreContract extends StoreContract {
    private static final GardenPoint HILL = new GardenPoint(46.84, -92.22, 428.5);
    private static final GardenPoint SHORE = new GardenPoint(46.79, -92.05, 190);

    private static final Decision<Integer> OVERTAKEN = new Decision.Overtaken<>(new PointChanged());

    private GardenStore gardens;
    private CorrectionStore corrections;
    private AcceptedRiskStore risks;
    private UUID tom;
    private UUID priya;

    @BeforeEach
    void moveIn() {
        // the migrations leave this row, which emptying the tables takes away
        database().sql().insertInto(FROST_EVIDENCE_VERSION).values(1, 1L).execute();
        gardens = new GardenStore(database(), audit());
        corrections = new CorrectionStore(database(), audit());
        risks = new AcceptedRiskStore(database(), audit());
        tom = member("Tom Okafor");
        priya = member("Priya Nair");
    }

    @Test
    void a_point_comes_out_as_it_went_in() {
        assertThat(gardens.point(tom)).isEmpty();
        assertThat(gardens.setPoint(tom, HILL, 0, tom)).isEqualTo(new Decision.Done<>(version()));

        assertThat(gardens.point(tom)).contains(HILL);
        assertThat(gardens.point(priya)).isEmpty();
    }

    @Test
    void a_point_is_changed_only_by_who_saw_it_as_it_is() {
        gardens.setPoint(tom, HILL, 0, tom);
        int seen = version();

        assertThat(gardens.setPoint(tom, SHORE, 0, tom)).isEqualTo(OVERTAKEN);
        assertThat(gardens.setPoint(tom, SHORE, seen, tom)).isInstanceOf(Decision.Done.class);
        assertThat(gardens.setPoint(tom, HILL, seen, tom)).isEqualTo(OVERTAKEN);
        assertThat(gardens.clearPoint(tom, seen, tom)).isEqualTo(OVERTAKEN);
        assertThat(gardens.point(tom)).contains(SHORE);
        assertThat(gardens.clearPoint(tom, version(), tom)).isInstanceOf(Decision.Done.class);
        assertThat(gardens.point(tom)).isEmpty();
        assertThat(gardens.clearPoint(tom, 0, tom)).isEqualTo(OVERTAKEN);
    }

    @Test
    void a_point_set_anew_never_has_the_version_of_one_that_was_cleared() {
        gardens.setPoint(tom, HILL, 0, tom);
        int first = version();
        gardens.clearPoint(tom, first, tom);
        gardens.setPoint(tom, HILL, 0, tom);

        assertThat(version()).isGreaterThan(first);
    }

    @Test
    void corrections_come_out_as_they_went_in() {
        Change.Dates dates = new Change.Dates(MonthDay.of(5, 24), null, MonthDay.of(2, 29), MonthDay.of(9, 1));
        UUID own = corrections.correct(new Area.Garden(tom), dates, "Twenty years of notes", tom);
        UUID area = corrections.correct(new Area.Postcodes("US", "558"), new Change.Shift(-5, 3), "The lake", priya);

        LocalDate today = LocalDate.of(2027, 3, 1);
        assertThat(gardens.corrections())
                .containsExactlyInAnyOrder(
                        new FrostCorrection(own, new Area.Garden(tom), dates, "Twenty years of notes", "Tom", today),
                        new FrostCorrection(
                                area,
                                new Area.Postcodes("US", "558"),
                                new Change.Shift(-5, 3),
                                "The lake",
                                "Priya",
                                today));
    }

    @Test
    void a_new_correction_ends_the_one_for_the_same_area_and_no_other() {
        Area area = new Area.Postcodes("US", "558");
        UUID first = corrections.correct(area, new Change.Shift(1, 0), "The first", tom);
        corrections.correct(new Area.Postcodes("CA", "558"), new Change.Shift(2, 0), "Another land", tom);
        corrections.correct(new Area.Postcodes("US", "5580"), new Change.Shift(3, 0), "A smaller area", tom);
        corrections.correct(area, new Change.Shift(4, 0), "The second", priya);

        assertThat(gardens.corrections())
                .extracting(FrostCorrection::reason)
                .containsExactly("Another land", "The second", "A smaller area");
        assertThat(corrections.ended(area)).singleElement().satisfies(ended -> {
            assertThat(ended.correction().id()).isEqualTo(first);
            assertThat(ended.endedBy()).isEqualTo("Priya");
            assertThat(ended.endedOn()).isEqualTo(LocalDate.of(2027, 3, 1));
        });
        assertThat(corrections.endedOfAreas()).hasSize(1);
    }

    @Test
    void corrections_made_at_once_leave_one_that_holds() throws Exception {
        Area area = new Area.Postcodes("US", "558");
        ExecutorService people = Executors.newFixedThreadPool(4);
        List<Future<UUID>> made = IntStream.rangeClosed(1, 12)
                .mapToObj(days ->
                        people.submit(() -> corrections.correct(area, new Change.Shift(days, 0), "All at once", tom)))
                .toList();
        for (Future<UUID> each : made) {
            each.get();
        }
        people.shutdown();

        assertThat(gardens.corrections()).hasSize(1);
        assertThat(corrections.ended(area)).hasSize(11);
    }

    @Test
    void a_correction_is_ended_once_by_its_own_kind() {
        UUID own = corrections.correct(new Area.Garden(tom), new Change.Shift(1, 0), "A hollow", tom);
        UUID area = corrections.correct(new Area.Postcodes("US", "558"), new Change.Shift(1, 0), "The lake", tom);

        assertThat(corrections.endOfGarden(own, priya, priya)).isFalse();
        assertThat(corrections.endOfGarden(area, tom, tom)).isFalse();
        assertThat(corrections.endOfArea(own, tom)).isFalse();
        assertThat(gardens.corrections()).hasSize(2);
        assertThat(corrections.endOfGarden(own, tom, tom)).isTrue();
        assertThat(corrections.endOfGarden(own, tom, tom)).isFalse();
        assertThat(corrections.endOfArea(area, priya)).isTrue();
        assertThat(gardens.corrections()).isEmpty();
    }

    @Test
    void risks_are_replaced_as_a_whole() {
        risks.set(tom, Map.of(Hardiness.TENDER, 0.3, Hardiness.VERY_TENDER, 0.5), tom);
        risks.set(tom, Map.of(Hardiness.TENDER, 0.5), tom);

        assertThat(risks.of(tom)).isEqualTo(Map.of(Hardiness.TENDER, 0.5));
        assertThat(risks.of(priya)).isEmpty();
    }

    @Test
    void every_change_counts_up_the_evidence() {
        gardens.setPoint(tom, HILL, 0, tom);
        long before = evidence();
        gardens.setPoint(tom, SHORE, version(), tom);
        gardens.clearPoint(tom, version(), tom);
        UUID own = corrections.correct(new Area.Garden(tom), new Change.Shift(1, 0), "A hollow", tom);
        corrections.endOfGarden(own, tom, tom);
        risks.set(tom, Map.of(), tom);

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

    private int version() {
        return gardens.versioned(tom).orElseThrow().version();
    }

    private UUID member(String name) {
        NewMember member = new NewMember(name, "US", "55804", "not a hash");
        return new MemberStore(database(), audit()).add(database().sql(), member, false, "for a test");
    }
}
