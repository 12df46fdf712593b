package warmshelf.shelf;

import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;
import static warmshelf.testing.Decided.done;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;

/** A coordinator and what she lays on places, written straight into the tables that other features keep. */
final class ShelfCast {
    private final Database database;
    private final Audit audit;
    private final UUID ilse;
    private final UUID lot = UUID.randomUUID();

    /** Begins with Ilse and a jar of her pepper seed. */
    ShelfCast(Database database, Audit audit) {
        this(
                database,
                audit,
                new MemberStore(database, audit)
                        .add(database.sql(), new NewMember("Ilse Brandt", "US", "55803", "none"), true, "for a test"));
    }

    /** Begins with a jar of pepper seed of someone who is there already. */
    ShelfCast(Database database, Audit audit, UUID ilse) {
        this.database = database;
        this.audit = audit;
        this.ilse = ilse;
        database.sql()
                .insertInto(LOT)
                .set(LOT.ID, lot)
                .set(LOT.CROP_ID, "pepper")
                .set(LOT.VARIETY, "Long red")
                .set(LOT.SEED_YEAR, 2026)
                .set(LOT.TREATED, false)
                .set(LOT.NOTE, "")
                .set(LOT.MADE_BY, ilse)
                .set(LOT.MADE_AT, audit.now())
                .set(LOT.VERSION, 1)
                .execute();
    }

    UUID ilse() {
        return ilse;
    }

    /** A rack A at a site called Hall cellar. */
    UUID rack() {
        UUID site = done(new SiteStore(database.sql(), audit)
                .add(new SiteDraft("Hall cellar", 1, new Circuit(15, 120), ""), ilse));
        return done(new RackStore(database.sql(), audit).add(site, new RackDraft("A", 1), ilse));
    }

    /** Lays pepper seed on a place; the answer is the id of both the sowing and the stay. */
    UUID stay(UUID place, int firstQuarter, int quarters, LocalDate from, int days) {
        UUID sowing = sowing(quarters);
        database.sql()
                .insertInto(STAY)
                .set(STAY.ID, sowing)
                .set(STAY.SOWING_ID, sowing)
                .set(STAY.PLACE_ID, place)
                .set(STAY.FIRST_QUARTER, firstQuarter)
                .set(STAY.QUARTERS, quarters)
                .set(STAY.FROM_DAY, from)
                .set(STAY.TO_DAY, from.plusDays(days))
                .set(STAY.MADE_BY, ilse)
                .set(STAY.MADE_AT, audit.now())
                .set(STAY.VERSION, 1)
                .execute();
        return sowing;
    }

    void setPoint(UUID mat, LocalDate day, double celsius) {
        database.sql()
                .insertInto(MAT_DAY)
                .set(MAT_DAY.MAT_ID, mat)
                .set(MAT_DAY.ON_DAY, day)
                .set(MAT_DAY.CELSIUS, celsius)
                .execute();
    }

    private UUID sowing(int quarters) {
        UUID sowing = UUID.randomUUID();
        database.sql()
                .insertInto(SOWING)
                .set(SOWING.ID, sowing)
                .set(SOWING.MEMBER_ID, ilse)
                .set(SOWING.SEASON, 2027)
                .set(SOWING.CROP_ID, "pepper")
                .set(SOWING.LOT_ID, lot)
                .set(SOWING.PLANTS_WANTED, 6)
                .set(SOWING.METHOD, quarters == 1 ? "bag" : "cells")
                .set(SOWING.WARM, true)
                .set(SOWING.CONTAINER, quarters == 4 ? "tray" : quarters == 2 ? "half-tray" : "bag")
                .set(SOWING.QUARTERS, quarters)
                .set(SOWING.SEEDS, 12)
                .set(SOWING.SEEDS_PER_CELL, 1)
                .set(SOWING.CELLS, 12)
                .set(SOWING.RISK, new BigDecimal("0.100"))
                .set(SOWING.STAGE, "sown")
                .set(SOWING.ASKED_AT, audit.now())
                .set(SOWING.NOTE, "")
                .set(SOWING.VERSION, 1)
                .execute();
        return sowing;
    }
}
