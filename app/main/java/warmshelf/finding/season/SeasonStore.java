package warmshelf.finding.season;

import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;
import static warmshelf.db.generated.Tables.SURPLUS_TAKING;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.shelf.Place;
import warmshelf.shelf.Rack;
import warmshelf.shelf.Shelf;
import warmshelf.shelf.ShelvingStore;
import warmshelf.shelf.Site;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStore;

/** Reads what a season left behind: its sowings with their entries, and the space they took. */
public final class SeasonStore {
    private static final Field<BigDecimal> MEAN_C = DSL.avg(QUARTER_DAY.CELSIUS).as("mean_c");
    private static final Field<Integer> QUARTERS = DSL.count().as("quarters");
    private static final Field<UUID> SPACE =
            DSL.coalesce(PLACE.MAT_ID, PLACE.LIT_SHELF_ID).as("space_id");

    private static final int HOURS = 24;

    private final DSLContext sql;
    private final SowingStore sowings;
    private final EntryStore entries;
    private final ShelvingStore shelving;

    public SeasonStore(DSLContext sql, SowingStore sowings, EntryStore entries) {
        this.sql = sql;
        this.sowings = sowings;
        this.entries = entries;
        this.shelving = new ShelvingStore(sql);
    }

    /** The years by which seasons with sowings are named, the latest first. */
    public List<Integer> seasons() {
        return sql.selectDistinct(SOWING.SEASON)
                .from(SOWING)
                .orderBy(SOWING.SEASON.desc())
                .fetch(SOWING.SEASON);
    }

    /** A season looked back on, or on so far. */
    public SeasonFinding find(int season) {
        List<Site> sites = shelving.all();
        return SeasonFinding.of(season, sowings(season), whereabouts(sites), SpaceWeek.of(spaces(sites), used(season)));
    }

    /** The space a season took, week by week. */
    List<SpaceWeek> weeks(int season) {
        return SpaceWeek.of(spaces(shelving.all()), used(season));
    }

    /** Where each place is that still stands. */
    Map<UUID, SeasonFinding.Whereabouts> whereabouts() {
        return whereabouts(shelving.all());
    }

    /** Hands on each entry of a season that still counts, as it is read: five seasons of them need no more memory than one page. */
    public void forEachEntry(int season, EntryStore.Reader reader) throws IOException {
        entries.forEachOf(sql, SowingStore.ofSeason(season), reader);
    }

    /** The sowings of a season with what was seen of them, the newest first. */
    public List<SeasonSowing> sowings(int season) {
        List<Sowing> found = sowings.inSeason(sql, season);
        if (found.isEmpty()) {
            return List.of();
        }
        Map<UUID, List<Entry>> entriesOf =
                entries.ofSowings(sql, found.stream().map(Sowing::id).toList());
        Map<UUID, Lay> lays = lays(season);
        Map<UUID, String> lots = lots(season);
        Map<UUID, String> composts = composts(season);
        Map<UUID, Integer> given = given(season);
        return found.stream()
                .map(sowing -> {
                    Lay lay = lays.get(sowing.id());
                    return SeasonSowing.of(
                                    sowing,
                                    entriesOf.getOrDefault(sowing.id(), List.of()),
                                    lots.getOrDefault(sowing.lotId(), sowing.variety()),
                                    lay == null ? null : lay.placeId(),
                                    lay == null ? null : lay.meanC(),
                                    composts.get(sowing.id()))
                            .giving(given.getOrDefault(sowing.id(), 0));
                })
                .toList();
    }

    /** The compost of each sowing at which it was noted. */
    private Map<UUID, String> composts(int season) {
        return sql.select(SOWING.ID, SOWING.COMPOST)
                .from(SOWING)
                .where(SowingStore.ofSeason(season), SOWING.COMPOST.isNotNull())
                .fetchMap(SOWING.ID, SOWING.COMPOST);
    }

    /** How many plants of each sowing were handed over to other members. */
    private Map<UUID, Integer> given(int season) {
        Field<BigDecimal> plants = DSL.sum(SURPLUS_TAKING.PLANTS);
        return sql.select(SURPLUS_TAKING.SOWING_ID, plants)
                .from(SURPLUS_TAKING)
                .join(SOWING)
                .on(SOWING.ID.eq(SURPLUS_TAKING.SOWING_ID))
                .where(SowingStore.ofSeason(season), SURPLUS_TAKING.HANDED_OVER_AT.isNotNull())
                .groupBy(SURPLUS_TAKING.SOWING_ID)
                .fetchMap(
                        SURPLUS_TAKING.SOWING_ID,
                        row -> Objects.requireNonNull(row.value2()).intValue());
    }

    private Map<UUID, String> lots(int season) {
        return sql.selectDistinct(LOT.ID, LOT.VARIETY, LOT.SEED_YEAR, MEMBER.CALLED)
                .from(LOT)
                .join(SOWING)
                .on(SOWING.LOT_ID.eq(LOT.ID))
                .leftJoin(MEMBER)
                .on(MEMBER.ID.eq(LOT.OWNER_ID))
                .where(SowingStore.ofSeason(season))
                .fetchMap(row -> row.get(LOT.ID), row -> {
                    String owner = row.get(MEMBER.CALLED);
                    return "%s %d of %s"
                            .formatted(
                                    row.get(LOT.VARIETY), row.get(LOT.SEED_YEAR), owner == null ? "the group" : owner);
                });
    }

    private record Lay(UUID placeId, @Nullable Double meanC) {}

    /** Where each sowing lay first. */
    private Map<UUID, Lay> lays(int season) {
        Map<UUID, Lay> lays = new HashMap<>();
        sql.select(STAY.SOWING_ID, STAY.PLACE_ID, STAY.FROM_DAY, MEAN_C)
                .from(STAY)
                .join(SOWING)
                .on(SOWING.ID.eq(STAY.SOWING_ID))
                .leftJoin(QUARTER_DAY)
                .on(QUARTER_DAY.STAY_ID.eq(STAY.ID))
                .where(SowingStore.ofSeason(season))
                .groupBy(STAY.ID, STAY.SOWING_ID, STAY.PLACE_ID, STAY.FROM_DAY)
                .orderBy(STAY.FROM_DAY, STAY.ID)
                .forEach(row -> {
                    BigDecimal mean = row.get(MEAN_C);
                    lays.putIfAbsent(
                            row.get(STAY.SOWING_ID),
                            new Lay(row.get(STAY.PLACE_ID), mean == null ? null : mean.doubleValue()));
                });
        return lays;
    }

    private List<SpaceWeek.Used> used(int season) {
        return sql.select(SPACE, QUARTER_DAY.ON_DAY, QUARTERS)
                .from(QUARTER_DAY)
                .join(PLACE)
                .on(PLACE.ID.eq(QUARTER_DAY.PLACE_ID))
                .join(STAY)
                .on(STAY.ID.eq(QUARTER_DAY.STAY_ID))
                .join(SOWING)
                .on(SOWING.ID.eq(STAY.SOWING_ID))
                .where(SowingStore.ofSeason(season))
                .groupBy(PLACE.MAT_ID, PLACE.LIT_SHELF_ID, QUARTER_DAY.ON_DAY)
                .fetch(row -> new SpaceWeek.Used(
                        row.get(SPACE), row.get(QUARTER_DAY.ON_DAY, LocalDate.class), row.get(QUARTERS)));
    }

    private static List<SpaceWeek.Space> spaces(List<Site> sites) {
        List<SpaceWeek.Space> spaces = new ArrayList<>();
        for (Shelf shelf : shelves(sites)) {
            shelf.mats()
                    .forEach(mat -> spaces.add(new SpaceWeek.Space(
                            mat.id(), true, mat.places().size() * Place.QUARTERS, HOURS * mat.watts())));
            if (shelf.isLit()) {
                spaces.add(new SpaceWeek.Space(
                        shelf.id(), false, shelf.litPlaces().size() * Place.QUARTERS, lampWattHours(shelf)));
            }
        }
        return spaces;
    }

    private static int lampWattHours(Shelf shelf) {
        Integer hours = shelf.lamp().hours();
        return hours == null ? 0 : hours * shelf.lightWatts();
    }

    private static List<Shelf> shelves(List<Site> sites) {
        return sites.stream()
                .flatMap(site -> site.racks().stream())
                .flatMap(rack -> rack.shelves().stream())
                .toList();
    }

    private static Map<UUID, SeasonFinding.Whereabouts> whereabouts(List<Site> sites) {
        Map<UUID, SeasonFinding.Whereabouts> places = new HashMap<>();
        for (Site site : sites) {
            for (Rack rack : site.racks()) {
                for (Shelf shelf : rack.shelves()) {
                    var here = new SeasonFinding.Whereabouts(
                            site.name(), "%s · %s · shelf %d".formatted(site.name(), rack.name(), shelf.fromTop()));
                    shelf.litPlaces().forEach(place -> places.put(place.id(), here));
                    shelf.mats().forEach(mat -> mat.places().forEach(place -> places.put(place.id(), here)));
                }
            }
        }
        return places;
    }
}
