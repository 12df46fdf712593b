package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.testing.Decided.done;

import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Decision;
import warmshelf.testing.StoreContract;

/** Racks, kept and read again. */
abstract class RackStoreContract extends StoreContract {
    private static final SiteDraft CELLAR = new SiteDraft("Hall cellar", 2, new Circuit(15, 120), "Key with Ilse");

    private SiteStore sites;
    private RackStore racks;
    private ShelfCast cast;

    @BeforeEach
    void prepare() {
        sites = new SiteStore(database().sql(), audit());
        racks = new RackStore(database().sql(), audit());
        cast = new ShelfCast(database(), audit());
    }

    @Test
    void two_sites_may_each_have_a_rack_a_but_one_site_only_one() {
        UUID cellar = done(sites.add(CELLAR, cast.ilse()));
        UUID garage = done(sites.add(new SiteDraft("Garage", 1, new Circuit(10, 230), ""), cast.ilse()));
        RackDraft a = new RackDraft("A", 1);

        assertThat(racks.add(cellar, a, cast.ilse())).isInstanceOf(Decision.Done.class);
        assertThat(racks.add(garage, a, cast.ilse())).isInstanceOf(Decision.Done.class);
        assertThat(racks.add(cellar, a, cast.ilse()).refusal()).contains(new ShelfRefusal.RackNameTaken("A"));
    }

    @Test
    void a_change_over_a_newer_one_is_not_made() {
        assertThat(racks.change(cast.rack(), 9, new RackDraft("Z", 1), UUID.randomUUID(), cast.ilse()))
                .isInstanceOf(Decision.Overtaken.class);
    }
}
