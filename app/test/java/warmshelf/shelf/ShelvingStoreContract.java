package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.testing.Decided.done;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.StoreContract;

/** Sites with all that stands there, read at once. */
abstract class ShelvingStoreContract extends StoreContract {
    private static final SiteDraft CELLAR = new SiteDraft("Hall cellar", 2, new Circuit(15, 120), "Key with Ilse");
    private static final MatDraft MAT = new MatDraft("M1", 1, 4, 18, 32, 107, 25);

    private ShelvingStore shelving;
    private SiteStore sites;
    private RackStore racks;
    private ShelfStore shelves;
    private MatStore mats;
    private ShelfCast cast;

    @BeforeEach
    void prepare() {
        shelving = new ShelvingStore(database().sql());
        sites = new SiteStore(database().sql(), audit());
        racks = new RackStore(database().sql(), audit());
        shelves = new ShelfStore(database().sql(), audit());
        mats = new MatStore(database().sql(), audit());
        cast = new ShelfCast(database(), audit());
    }

    @Test
    void sites_are_read_in_walking_order_with_everything_that_stands_there() {
        UUID cellar = done(sites.add(CELLAR, cast.ilse()));
        sites.add(new SiteDraft("Garage", 1, new Circuit(10, 230), ""), cast.ilse());
        UUID second = done(racks.add(cellar, new RackDraft("B", 2), cast.ilse()));
        racks.add(cellar, new RackDraft("A", 1), cast.ilse());
        UUID lower = done(shelves.add(second, new ShelfDraft(2, 0, 0), cast.ilse()));
        shelves.add(second, new ShelfDraft(1, 3, 160), cast.ilse());
        mats.add(lower, new MatDraft("M2", 2, 2, 18, 32, 45, 22), cast.ilse());
        mats.add(lower, MAT, cast.ilse());

        List<Site> all = shelving.all();

        assertThat(all).extracting(Site::name).containsExactly("Garage", "Hall cellar");
        assertThat(all.get(1).racks()).extracting(Rack::name).containsExactly("A", "B");
        List<Shelf> shelves = all.get(1).racks().get(1).shelves();
        assertThat(shelves).extracting(Shelf::fromTop).containsExactly(1, 2);
        assertThat(shelves.get(0).litPlaces()).extracting(Place::number).containsExactly(1, 2, 3);
        assertThat(shelves.get(1).mats()).extracting(Mat::name).containsExactly("M1", "M2");
        assertThat(shelves.get(1).mats().get(0).places())
                .extracting(Place::number)
                .containsExactly(1, 2, 3, 4);
        assertThat(all.get(1).connectedWatts()).isEqualTo(160 + 45 + 107);
    }
}
