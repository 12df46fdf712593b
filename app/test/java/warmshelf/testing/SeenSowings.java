package warmshelf.testing;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Band;
import warmshelf.allocation.ClashStore;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.allocation.StayStore;
import warmshelf.crop.CropCatalogue;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.seed.NewLot;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.SowingResultStore;

/** Pepper sowings in a {@link GrowRoom} that lay on M1 at 26 °C, each some days after the other, with what was seen of them. */
public final class SeenSowings {
    /** When the first of them is sown. */
    public static final LocalDate FIRST = LocalDate.of(2026, 1, 5);

    private static final int DAYS_APART = 30;

    private final Database database;
    private final GrowRoom room;
    private final EntryStore entries;
    private final StayStore stays;
    private LocalDate next = FIRST;

    public SeenSowings(Database database, Audit audit, GrowRoom room) {
        this.database = database;
        this.room = room;
        this.entries = new EntryStore(audit);
        this.stays = new StayStore(audit, new ClashStore(CropCatalogue.bundled()));
    }

    /** A lot of Tom's peppers. */
    public UUID lot() {
        return room.lots().add(new NewLot("pepper", "Lantern Row", 2025, 400, room.tom(), false, ""), room.tom());
    }

    /** Twelve seeds of which none was up the day before a day, ten on it, and which then went under the light. */
    public UUID upOnDay(int day, UUID lot) {
        UUID sowing = onMat(room.peppersOf(lot));
        look(sowing, day - 1, 0);
        look(sowing, day, 10);
        enter(sowing, day + 4, EntryStep.UNDER_LIGHT, null);
        return sowing;
    }

    /** Has a sowing sown on M1, a month after the one before. */
    public UUID onMat(UUID sowing) {
        LocalDate sown = next;
        next = next.plusDays(DAYS_APART);
        PlaceAndDays spot = new PlaceAndDays(room.m1Place1(), new Slot(1, 2), sown, sown.plusDays(21));
        database.sql().transaction(tx -> stays.layOnMat(tx.dsl(), sowing, spot, 26, new Band(24, 30), room.tom()));
        sownOn(sowing, sown);
        return sowing;
    }

    /** Enters that a sowing was sown on a day, wherever it lies. */
    public void sownOn(UUID sowing, LocalDate day) {
        add(sowing, day, EntryStep.SOWN, null);
    }

    public void look(UUID sowing, int day, int sprouted) {
        enter(sowing, day, EntryStep.LOOK, sprouted);
    }

    /** Enters a step so many days after the sowing. */
    public void enter(UUID sowing, int day, EntryStep step, @Nullable Integer sprouted) {
        LocalDate sown = entries.ofSowing(database.sql(), sowing).get(0).seenOn();
        add(sowing, sown.plusDays(day), step, sprouted);
    }

    private void add(UUID sowing, LocalDate day, EntryStep step, @Nullable Integer sprouted) {
        Entry entry = new Entry(
                UUID.randomUUID(),
                sowing,
                step,
                day,
                day.atTime(9, 0).atOffset(ZoneOffset.UTC),
                sprouted,
                null,
                null,
                false,
                null,
                "",
                null,
                room.tom(),
                "Tom");
        database.sql().transaction(inside -> {
            DSLContext tx = inside.dsl();
            List<Entry> before = entries.ofSowing(tx, sowing);
            entries.add(tx, entry);
            SowingResultStore.keep(
                    tx, room.sowings().find(tx, sowing).orElseThrow(), before, entries.ofSowing(tx, sowing), day);
        });
    }
}
