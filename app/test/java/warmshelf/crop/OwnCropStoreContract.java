package warmshelf.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.AUDIT_LINE;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.crop.Crop.Basis;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.decision.Decision;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;
import warmshelf.testing.StoreContract;

abstract class OwnCropStoreContract extends StoreContract {
    private static final OwnEmergence STATED = new OwnEmergence.Stated(7, 21, new CelsiusRange(20, 28));
    private static final DaysToMaturity QUICK = new DaysToMaturity(58, 62, Basis.TRANSPLANTING);

    private OwnCropStore store;
    private CropCatalogue crops;
    private UUID maria;

    @BeforeEach
    void moveIn() {
        store = new OwnCropStore(database(), audit());
        crops = store.catalogue();
        NewMember member = new NewMember("Maria", "US", "55812", "not a hash");
        maria = new MemberStore(database(), audit()).add(database().sql(), member, true, "for a test");
    }

    @Test
    void a_new_crop_comes_out_as_it_went_in_and_is_offered_last() {
        Crop ulluco = ulluco();

        assertThat(store.write(ulluco, STATED, 0, maria)).isEqualTo(new Decision.Done<>(1));

        assertThat(crops.find("ulluco")).contains(ulluco);
        assertThat(crops.all()).last().isEqualTo(ulluco);
        assertThat(crops.responseOf(ulluco).at(24).orElseThrow().days()).isBetween(7.0, 21.0);
        assertThat(crops.written("ulluco")).contains(new OwnCrop(ulluco, STATED, true, 1, "Maria", audit().now()));
    }

    @Test
    void figures_over_the_reference_count_until_they_are_taken_back() {
        Crop pepper = CropCatalogue.bundled().get("pepper");
        Crop later = ulluco("pepper", "Pepper of ours");

        store.write(later, new OwnEmergence.AsReference(), 0, maria);
        assertThat(crops.get("pepper").name()).isEqualTo("Pepper of ours");
        assertThat(crops.get("pepper").legalMinimumPercent()).isEqualTo(pepper.legalMinimumPercent());
        assertThat(crops.responseOf(pepper).bestC())
                .isEqualTo(CropCatalogue.bundled().responseOf(pepper).bestC());

        store.takeBack(crops.written(later.id()).orElseThrow(), 1, maria);
        assertThat(crops.get("pepper")).isEqualTo(pepper);
        assertThat(crops.all())
                .containsExactlyElementsOf(CropCatalogue.bundled().all());
    }

    @Test
    void a_crop_that_is_no_longer_offered_is_still_found_by_what_was_sown_of_it() {
        store.write(ulluco(), STATED, 0, maria);
        store.takeBack(crops.written("ulluco").orElseThrow(), 1, maria);

        assertThat(crops.all()).extracting(Crop::id).doesNotContain("ulluco");
        assertThat(crops.orUnlisted("ulluco").name()).isEqualTo("Ulluco");
        assertThat(crops.lists(ulluco())).isTrue();
    }

    @Test
    void of_two_who_change_the_same_figures_one_is_told() throws Exception {
        store.write(ulluco(), STATED, 0, maria);
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            List<Future<Decision<Integer>>> answers = two.invokeAll(List.of(
                    () -> store.write(ulluco(), STATED, 1, maria),
                    () -> store.write(ulluco(), new OwnEmergence.Like("tomato"), 1, maria)));

            assertThat(List.of(answers.get(0).get(), answers.get(1).get()))
                    .containsExactlyInAnyOrder(
                            new Decision.Done<>(2), new Decision.Overtaken<>(new CropChanged("Maria")));
        } finally {
            two.shutdown();
        }
        assertThat(crops.written("ulluco").orElseThrow().version()).isEqualTo(2);
    }

    @Test
    void what_was_written_meanwhile_is_not_taken_back_unseen() {
        store.write(ulluco(), STATED, 0, maria);
        OwnCrop seen = crops.written("ulluco").orElseThrow();
        store.write(ulluco(), new OwnEmergence.Like("tomato"), 1, maria);

        assertThat(store.takeBack(seen, 1, maria)).isEqualTo(new Decision.Overtaken<>(new TakenBackTooLate()));
        assertThat(crops.written("ulluco").orElseThrow().kept()).isTrue();
    }

    @Test
    void what_another_process_wrote_shows_within_moments() throws Exception {
        new OwnCropStore(database(), audit()).write(ulluco(), STATED, 0, maria);

        long deadline = System.nanoTime() + java.time.Duration.ofSeconds(20).toNanos();
        while (crops.find("ulluco").isEmpty() && System.nanoTime() < deadline) {
            Thread.sleep(100);
        }

        assertThat(crops.find("ulluco")).contains(ulluco());
    }

    @Test
    void every_write_says_who_and_when() {
        store.write(ulluco(), STATED, 0, maria);
        store.varieties().write("pepper", "Harbour Light", QUICK, "the packet", 0, maria);

        assertThat(database()
                        .sql()
                        .selectFrom(AUDIT_LINE)
                        .where(AUDIT_LINE.MEMBER_ID.eq(maria))
                        .fetch(AUDIT_LINE.SUBJECT))
                .contains("crop", "variety");
    }

    @Test
    void a_varietys_days_count_instead_of_its_crops_however_its_name_is_written() {
        store.varieties().write("pepper", "Harbour Light", QUICK, "the packet", 0, maria);

        assertThat(crops.ofVariety("pepper", " harbour  LIGHT").maturity())
                .contains(new DaysToMaturity(58, 62, Basis.TRANSPLANTING, true));
        assertThat(crops.ofVariety("pepper", "Other").maturity())
                .isEqualTo(crops.get("pepper").maturity());
        assertThat(crops.ofVariety("tomato", "Harbour Light").maturity())
                .isEqualTo(crops.get("tomato").maturity());
        assertThat(crops.varieties("pepper"))
                .containsExactly(
                        new Variety("pepper", "Harbour Light", QUICK, "the packet", 1, "Maria", audit().now()));
    }

    @Test
    void a_variety_is_changed_only_by_who_saw_what_stands() {
        VarietyStore varieties = store.varieties();
        varieties.write("pepper", "Harbour Light", QUICK, "the packet", 0, maria);
        DaysToMaturity slow = new DaysToMaturity(90, 90, Basis.SOWING);

        assertThat(varieties.write("pepper", "harbour light", slow, "our own note", 0, maria))
                .isEqualTo(new Decision.Overtaken<>(new VarietyChanged()));
        assertThat(varieties.write("pepper", "harbour light", slow, "our own note", 1, maria))
                .isEqualTo(new Decision.Done<>(2));
        assertThat(varieties.write("pepper", "harbour light", QUICK, "the packet", 1, maria))
                .isEqualTo(new Decision.Overtaken<>(new VarietyChanged()));
        assertThat(crops.variety("pepper", "Harbour Light").orElseThrow().maturity())
                .isEqualTo(slow);
    }

    private static Crop ulluco() {
        return ulluco("ulluco", "Ulluco");
    }

    private static Crop ulluco(String id, String name) {
        return new Crop(
                id,
                name,
                "Ullucus tuberosus",
                Hardiness.HALF_HARDY,
                4,
                6,
                -7,
                14,
                7.2,
                12.5,
                SeedLight.NOT_KNOWN,
                RaisedFrom.SEED,
                new SeedTreatment(
                        Soak.HELPS,
                        new SeedTreatment.Span(null, 12),
                        true,
                        new SeedTreatment.Span(2, 4),
                        List.of(),
                        "sing to it"),
                EnumSet.of(CropHazard.POISONOUS, CropHazard.IRRITATES),
                Optional.of(new DaysToMaturity(150, 180, Basis.SOWING)),
                id.equals("pepper") ? Integer.valueOf(55) : null,
                3,
                Set.of(),
                "needs short days",
                "our own years of growing it",
                "https://example.org/ulluco",
                Standing.PUBLISHED);
    }
}
