package warmshelf.testing;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.TestInstance;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/**
 * What a store must do on every database. A store's contract extends this; two small classes extend that one and say where
 * it runs: {@code TestDatabase.h2()} and {@code TestDatabase.postgres()}. Each test begins with empty tables.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
public abstract class StoreContract {
    private TestDatabase place;

    /** The clock of {@link #audit()}: 1 March 2027, nine in the morning in Duluth, at the start of each test. */
    protected final MutableClock clock = new MutableClock(TestGroup.MORNING);

    /** Where the contract is to hold; called once for the class. */
    protected abstract TestDatabase open();

    protected final Database database() {
        return place.database();
    }

    protected final Audit audit() {
        return new Audit(clock);
    }

    @BeforeAll
    final void openPlace() {
        place = open();
    }

    @BeforeEach
    final void emptyPlace() {
        clock.set(TestGroup.MORNING);
        place.empty();
    }

    @AfterAll
    final void closePlace() {
        if (place != null) {
            place.close();
        }
    }
}
