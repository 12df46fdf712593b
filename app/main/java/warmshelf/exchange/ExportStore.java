package warmshelf.exchange;

import java.io.IOException;
import warmshelf.crop.CropCatalogue;
import warmshelf.db.Database;
import warmshelf.table.TableWriter;

/** Writes every table that can be taken out. */
final class ExportStore {
    private final LotExportStore lots;
    private final SowingExportStore sowings;
    private final PeopleExportStore people;

    ExportStore(Database database, CropCatalogue crops) {
        lots = new LotExportStore(database, crops);
        sowings = new SowingExportStore(database);
        people = new PeopleExportStore(database);
    }

    void write(OutgoingTable which, Taker taker, TableWriter table) throws IOException {
        switch (which) {
            case LOTS -> lots.lots(taker, table);
            case SEED_PASSPORTS -> lots.passports(taker, table);
            case SOWINGS -> sowings.sowings(taker, table);
            case ENTRIES -> sowings.entries(taker, table);
            case STAYS -> sowings.stays(taker, table);
            case NIGHTS -> people.nights(taker, table);
            case MEMBERS -> people.members(taker, table);
        }
    }
}
