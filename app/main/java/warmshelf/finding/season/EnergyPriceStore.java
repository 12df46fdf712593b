package warmshelf.finding.season;

import static warmshelf.db.generated.Tables.ENERGY_PRICE;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.UUID;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** Keeps the price of electricity, one for each season; the last one set counts. */
public final class EnergyPriceStore {
    private final Database database;
    private final Audit audit;

    public EnergyPriceStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
    }

    Optional<EnergyPrice> find(int season) {
        return database.sql()
                .selectFrom(ENERGY_PRICE)
                .where(ENERGY_PRICE.SEASON.eq(season))
                .fetchOptional(row -> new EnergyPrice(row.getPerKwh().doubleValue(), row.getCurrency()));
    }

    void set(int season, EnergyPrice price, UUID by) {
        database.sql().transaction(work -> {
            work.dsl()
                    .deleteFrom(ENERGY_PRICE)
                    .where(ENERGY_PRICE.SEASON.eq(season))
                    .execute();
            work.dsl()
                    .insertInto(ENERGY_PRICE)
                    .set(ENERGY_PRICE.SEASON, season)
                    .set(ENERGY_PRICE.PER_KWH, BigDecimal.valueOf(price.perKilowattHour()))
                    .set(ENERGY_PRICE.CURRENCY, price.currency())
                    .set(ENERGY_PRICE.MADE_BY, by)
                    .set(ENERGY_PRICE.MADE_AT, audit.now())
                    .execute();
            audit.write(work.dsl(), by, "set price of electricity", "season", season, price.of(1));
        });
    }
}
