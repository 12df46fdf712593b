package warmshelf.placing;

import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;
import static warmshelf.db.generated.Tables.STAY;
import static warmshelf.db.generated.Tables.TRIAL;
import static warmshelf.db.generated.Tables.TRIAL_SOWING;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Record;
import warmshelf.allocation.CandidatePlace;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.QuarterDayStore;
import warmshelf.allocation.SpaceStore;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.allocation.Surroundings;
import warmshelf.allocation.SurroundingsStore;
import warmshelf.allocation.WarmthNeed;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.db.Database;
import warmshelf.decision.Reach;
import warmshelf.shelf.OnSiteStore;
import warmshelf.sowing.TrialPart;

/** Reads a stay that may be moved, where it could go, and what lies there. */
public final class LyingStore {
    private static final List<String> UNSOWN = List.of("planned", "soaked");

    private final DSLContext sql;
    private final CropCatalogue crops;
    private final SpaceStore space;
    private final SurroundingsStore surroundings;

    public LyingStore(Database database, CropCatalogue crops, SpaceStore space) {
        this.sql = database.sql();
        this.crops = crops;
        this.space = space;
        this.surroundings = new SurroundingsStore(crops);
    }

    /** The stay of that id; one that was cancelled, and so lasts no day, is gone. */
    public Optional<LyingStay> find(UUID id) {
        return StayBookStore.find(sql, id).map(this::lying);
    }

    /** The place under a light that is booked for the day on which a stay on a mat ends. */
    public Optional<Stay> bookedAfter(LyingStay lying) {
        return StayBookStore.ofSowing(sql, lying.stay().sowingId()).stream()
                .filter(stay -> lying.stay().isOnMat() && !stay.isOnMat())
                .filter(stay -> stay.from().equals(lying.stay().to()))
                .findFirst();
    }

    private LyingStay lying(Stay stay) {
        Record about = sql.select(
                        SOWING.CROP_ID,
                        SOWING.STAGE,
                        LOT.VARIETY,
                        MEMBER.CALLED,
                        PLACE.MAT_ID,
                        SPACE_REQUEST.NEEDS_LIGHT)
                .select(TRIAL.NUMBER, TRIAL_SOWING.LETTER)
                .from(STAY)
                .join(SOWING)
                .on(SOWING.ID.eq(STAY.SOWING_ID))
                .join(LOT)
                .on(LOT.ID.eq(SOWING.LOT_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(SOWING.MEMBER_ID))
                .join(PLACE)
                .on(PLACE.ID.eq(STAY.PLACE_ID))
                .leftJoin(SPACE_REQUEST)
                .on(SPACE_REQUEST.SOWING_ID.eq(STAY.SOWING_ID))
                .leftJoin(TRIAL_SOWING)
                .on(TRIAL_SOWING.SOWING_ID.eq(STAY.SOWING_ID))
                .leftJoin(TRIAL)
                .on(TRIAL.ID.eq(TRIAL_SOWING.TRIAL_ID))
                .where(STAY.ID.eq(stay.id()))
                .fetchSingle();
        Optional<WarmthNeed> warmth =
                stay.isOnMat() ? Optional.of(QuarterDayStore.warmthOf(sql, stay)) : Optional.empty();
        return new LyingStay(
                stay,
                what(about),
                about.get(MEMBER.CALLED),
                isSown(about.get(SOWING.STAGE)),
                about.get(PLACE.MAT_ID),
                warmth.map(WarmthNeed::days).orElse(null),
                warmth.map(WarmthNeed::band).orElse(null),
                Boolean.TRUE.equals(about.get(SPACE_REQUEST.NEEDS_LIGHT)));
    }

    /** Whether seed of a sowing at that stage is in compost or paper. */
    static boolean isSown(String stage) {
        return !UNSOWN.contains(stage);
    }

    private String what(Record about) {
        String variety = about.get(LOT.VARIETY);
        String title = variety.isEmpty() ? cropName(about) : cropName(about) + " · " + variety;
        Integer trial = about.get(TRIAL.NUMBER);
        return trial == null ? title : title + " · " + TrialPart.words(trial, about.get(TRIAL_SOWING.LETTER));
    }

    private String cropName(Record about) {
        String id = about.get(SOWING.CROP_ID);
        return crops.find(id).map(Crop::name).orElse(id);
    }

    /** Every place, in walking order, those on mats first. */
    public List<CandidatePlace> places() {
        return places(Reach.WHOLE_GROUP);
    }

    /** Those on which somebody may decide. */
    public List<CandidatePlace> places(Reach reach) {
        List<CandidatePlace> places = new ArrayList<>();
        for (MatSpace mat : space.mats(reach)) {
            for (int number = 1; number <= mat.places().size(); number++) {
                places.add(new CandidatePlace(mat.places().get(number - 1), number, mat.where(), mat));
            }
        }
        OnSiteStore.ofLitPlaces(sql.select(PLACE.ID, PLACE.NUMBER, SITE.NAME, RACK.NAME, SHELF.FROM_TOP, SITE.ID)
                        .from(PLACE))
                .orderBy(SITE.WALK_ORDER, SITE.NAME, RACK.WALK_ORDER, RACK.NAME, SHELF.FROM_TOP, PLACE.NUMBER)
                .fetch()
                .stream()
                .filter(lit -> reach.covers(lit.value6()))
                .forEach(lit -> places.add(new CandidatePlace(
                        lit.value1(),
                        lit.value2(),
                        "%s · %s · shelf %d".formatted(lit.value3(), lit.value4(), lit.value5()),
                        null)));
        return places;
    }

    /**
     * What others do on some places and their mats, from one day up to but not on another; the stay to be moved does not
     * count.
     */
    public Surroundings around(UUID stay, List<CandidatePlace> places, LocalDate from, LocalDate to) {
        return around(Set.of(stay), places, from, to);
    }

    /** The same where several stays are to be moved; none of them counts. */
    public Surroundings around(Set<UUID> stays, List<CandidatePlace> places, LocalDate from, LocalDate to) {
        return surroundings.around(sql, stays, places, from, to);
    }
}
