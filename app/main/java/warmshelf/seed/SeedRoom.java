package warmshelf.seed;

import java.util.List;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.VarietyStore;
import warmshelf.web.Pages;

/** The seed box, wired. */
public final class SeedRoom {
    private SeedRoom() {}

    public static List<Pages> pages(
            LotStore lots,
            LotBalanceStore balances,
            OfferStore offers,
            LotUse use,
            CropCatalogue crops,
            VarietyStore varieties,
            PacketPictures pictures,
            GrownBefore grown) {
        return List.of(
                new SeedBoxPages(lots, balances, use, crops),
                new NewLotPages(lots, crops, varieties),
                new LotPages(lots, balances, offers, use, crops, pictures, grown),
                new OfferPages(lots, offers, balances, crops),
                new SharingPages(lots, balances, crops));
    }
}
