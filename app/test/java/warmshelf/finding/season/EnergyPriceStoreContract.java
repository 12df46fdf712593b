package warmshelf.finding.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.db.generated.Tables.AUDIT_LINE;

import java.util.UUID;
import org.jooq.exception.DataAccessException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

/** What electricity costs, on every database. */
abstract class EnergyPriceStoreContract extends StoreContract {
    private EnergyPriceStore prices;
    private UUID tom;

    @BeforeEach
    void moveIn() {
        tom = new GrowRoom(database(), audit()).tom();
        prices = new EnergyPriceStore(database(), audit());
    }

    @Test
    void the_last_one_set_counts_and_each_season_has_its_own() {
        prices.set(2027, new EnergyPrice(0.2, "USD"), tom);
        prices.set(2027, new EnergyPrice(0.25, "USD"), tom);

        assertThat(prices.find(2027)).contains(new EnergyPrice(0.25, "USD"));
        assertThat(prices.find(2028)).isEmpty();
    }

    @Test
    void a_change_that_breaks_off_leaves_the_price_that_was() {
        prices.set(2027, new EnergyPrice(0.2, "USD"), tom);
        int lines = database().sql().fetchCount(AUDIT_LINE);
        UUID nobody = UUID.randomUUID();

        assertThatThrownBy(() -> prices.set(2027, new EnergyPrice(0.3, "USD"), nobody))
                .isInstanceOf(DataAccessException.class);

        assertThat(prices.find(2027)).contains(new EnergyPrice(0.2, "USD"));
        assertThat(database().sql().fetchCount(AUDIT_LINE)).isEqualTo(lines);
    }
}
