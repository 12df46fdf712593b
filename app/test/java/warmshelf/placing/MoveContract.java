package warmshelf.placing;

import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.testing.Decided.done;

import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import warmshelf.allocation.Band;
import warmshelf.allocation.ClashStore;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.RequestStore;
import warmshelf.allocation.Slot;
import warmshelf.allocation.SpaceStore;
import warmshelf.allocation.StayStore;
import warmshelf.allocation.WarmDays;
import warmshelf.crop.CropCatalogue;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

/** What the contracts of moving stays share: a cellar, and the steps that their tests are told in. */
abstract class MoveContract extends StoreContract {
    static final Band WARM = new Band(24, 30);
    static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    static final Slot LEFT = new Slot(1, 2);
    static final Slot RIGHT = new Slot(3, 2);
    GrowRoom room;
    StayStore stays;
    MoveStore moves;
    LyingStore lying;
    RequestStore requests;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        stays = new StayStore(audit(), new ClashStore(CropCatalogue.bundled()));
        requests = new RequestStore(database(), audit());
        moves = new MoveStore(database(), audit(), stays, requests);
        lying = new LyingStore(database(), CropCatalogue.bundled(), new SpaceStore(database()));
    }

    MoveStore.Change change(UUID stay, PlaceAndDays to) {
        return new MoveStore.Change(find(stay), to, at26(to));
    }

    void freeAll(LyingStay... seen) {
        for (LyingStay each : seen) {
            done(moves.free(find(each.stay().id()), "next round", TODAY, room.priya()));
        }
    }

    UUID move(UUID stay, PlaceAndDays spot, int celsius, UUID by) {
        return done(moves.move(find(stay), spot, throughout(spot, celsius), TODAY, by));
    }

    static WarmDays at26(PlaceAndDays spot) {
        return throughout(spot, 26);
    }

    static WarmDays throughout(PlaceAndDays spot, int celsius) {
        return WarmDays.throughout(spot.from(), spot.to(), celsius);
    }

    LyingStay find(UUID stay) {
        return lying.find(stay).orElseThrow();
    }

    UUID lay(UUID sowing, UUID place, Slot slot, int first, int afterLast) {
        return database()
                .sql()
                .transactionResult(tx ->
                        stays.layOnMat(tx.dsl(), sowing, spot(place, slot, first, afterLast), 26, WARM, room.priya()));
    }

    UUID layMild(UUID sowing, UUID place, Band band) {
        return database()
                .sql()
                .transactionResult(
                        tx -> stays.layOnMat(tx.dsl(), sowing, spot(place, LEFT, 10, 12), 21, band, room.priya()));
    }

    void sown(UUID sowing) {
        database()
                .sql()
                .update(SOWING)
                .set(SOWING.STAGE, "sown")
                .where(SOWING.ID.eq(sowing))
                .execute();
    }

    int rows(UUID stay) {
        return database().sql().fetchCount(QUARTER_DAY, QUARTER_DAY.STAY_ID.eq(stay));
    }

    static PlaceAndDays spot(UUID place, Slot slot, int first, int afterLast) {
        return new PlaceAndDays(place, slot, march(first), march(afterLast));
    }

    static LocalDate march(int day) {
        return LocalDate.of(2027, 3, day);
    }
}
