package warmshelf.supply;

import static warmshelf.db.generated.Tables.SOWING;

import java.util.Map;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Database;

/** Which trays sowings were asked for in. */
final class TrayStore {
    private final DSLContext sql;

    TrayStore(Database database) {
        this.sql = database.sql();
    }

    /** Cells in a whole tray, by sowing; those of which nobody has said are missing. */
    Map<UUID, Integer> cellsInTray() {
        return sql.select(SOWING.ID, SOWING.CELLS_IN_TRAY)
                .from(SOWING)
                .where(SOWING.CELLS_IN_TRAY.isNotNull())
                .fetchMap(SOWING.ID, SOWING.CELLS_IN_TRAY);
    }
}
