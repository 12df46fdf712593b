package warmshelf.bench;

import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.testing.Decided.done;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import warmshelf.allocation.Band;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.shelf.Circuit;
import warmshelf.shelf.MatDraft;
import warmshelf.shelf.MatStore;
import warmshelf.shelf.RackDraft;
import warmshelf.shelf.RackStore;
import warmshelf.shelf.ShelfDraft;
import warmshelf.shelf.ShelfStore;
import warmshelf.shelf.SiteDraft;
import warmshelf.shelf.SiteStore;

/** Four sites of three racks with some mats and sixteen lit places each, and what of them is still free. */
final class BenchSpace {
    /** Six seasons and those of the seventh that lie ahead. */
    private static final int DAYS_BACK = 2_100;

    private final LocalDate firstDay;
    private final List<UUID> sites = new ArrayList<>();
    private final Map<UUID, Integer> matC = new HashMap<>();
    private final Map<UUID, UUID> matOf = new HashMap<>();
    private final List<UUID> matPlaces = new ArrayList<>();
    private final List<UUID> litPlaces = new ArrayList<>();
    private final Map<UUID, BitSet> taken = new HashMap<>();

    private BenchSpace(LocalDate today) {
        this.firstDay = today.minusDays(DAYS_BACK);
    }

    static BenchSpace build(Database database, Audit audit, UUID by, LocalDate today, int matsOnRack) {
        BenchSpace space = new BenchSpace(today);
        SiteStore sites = new SiteStore(database.sql(), audit);
        RackStore racks = new RackStore(database.sql(), audit);
        ShelfStore shelves = new ShelfStore(database.sql(), audit);
        MatStore mats = new MatStore(database.sql(), audit);
        Map<UUID, Integer> setPoints = new HashMap<>();
        for (int site = 1; site <= 4; site++) {
            UUID siteId = done(sites.add(new SiteDraft("Site " + site, site, new Circuit(20, 120), ""), by));
            space.sites.add(siteId);
            for (int rack = 1; rack <= 3; rack++) {
                UUID rackId = done(racks.add(siteId, new RackDraft("Rack " + site + rack, rack), by));
                shelves.add(rackId, new ShelfDraft(1, 8, 80), by);
                shelves.add(rackId, new ShelfDraft(3, 8, 80), by);
                UUID shelf = done(shelves.add(rackId, new ShelfDraft(2, 0, 0), by));
                for (int mat = 1; mat <= matsOnRack; mat++) {
                    int celsius = mat % 2 == 1 ? 26 : 22;
                    String name = "M%d%d%d".formatted(site, rack, mat);
                    setPoints.put(done(mats.add(shelf, new MatDraft(name, mat, 3, 18, 32, 60, celsius), by)), celsius);
                }
            }
        }
        space.readPlaces(database, setPoints);
        return space;
    }

    List<UUID> sites() {
        return sites;
    }

    /** The set-point of the mat on which the place is, °C. */
    int celsius(UUID matPlace) {
        return matC.getOrDefault(matPlace, 0);
    }

    UUID matOf(UUID matPlace) {
        return Objects.requireNonNull(matOf.get(matPlace));
    }

    /** The first free quarters on a mat that suits the band, which are taken with it. */
    Optional<PlaceAndDays> takeOnMat(Band band, int quarters, LocalDate from, LocalDate to) {
        return matPlaces.stream()
                .filter(place -> band.contains(celsius(place)))
                .flatMap(place -> Slot.of(quarters).stream().map(slot -> new PlaceAndDays(place, slot, from, to)))
                .filter(this::take)
                .findFirst();
    }

    Optional<PlaceAndDays> takeUnderLight(int quarters, LocalDate from, LocalDate to) {
        return litPlaces.stream()
                .flatMap(place -> Slot.of(quarters).stream().map(slot -> new PlaceAndDays(place, slot, from, to)))
                .filter(this::take)
                .findFirst();
    }

    private boolean take(PlaceAndDays spot) {
        BitSet place = taken.computeIfAbsent(spot.placeId(), id -> new BitSet());
        int first = spot.slot().firstQuarter() - 1;
        int days = (int) ChronoUnit.DAYS.between(spot.from(), spot.to());
        int begin = 4 * (int) ChronoUnit.DAYS.between(firstDay, spot.from()) + first;
        for (int day = 0; day < days; day++) {
            int bit = begin + 4 * day;
            int next = place.nextSetBit(bit);
            if (next >= 0 && next < bit + spot.slot().quarters()) {
                return false;
            }
        }
        for (int day = 0; day < days; day++) {
            int bit = begin + 4 * day;
            place.set(bit, bit + spot.slot().quarters());
        }
        return true;
    }

    private void readPlaces(Database database, Map<UUID, Integer> setPoints) {
        database.sql().selectFrom(PLACE).orderBy(PLACE.NUMBER, PLACE.ID).forEach(place -> {
            if (place.getMatId() == null) {
                litPlaces.add(place.getId());
            } else {
                matPlaces.add(place.getId());
                matOf.put(place.getId(), place.getMatId());
                matC.put(place.getId(), setPoints.getOrDefault(place.getMatId(), 0));
            }
        });
    }
}
