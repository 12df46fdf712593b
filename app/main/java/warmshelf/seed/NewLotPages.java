package warmshelf.seed;

import static warmshelf.seed.SeedSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import java.util.UUID;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.VarietyStore;
import warmshelf.decision.Decision;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** Putting a lot into the seed box. */
final class NewLotPages implements Pages {
    private static final String TEMPLATE = "seed/new.peb";

    private final LotStore lots;
    private final CropCatalogue crops;
    private final VarietyStore varieties;

    NewLotPages(LotStore lots, CropCatalogue crops, VarietyStore varieties) {
        this.lots = lots;
        this.crops = crops;
        this.varieties = varieties;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/seeds/new", this::blank, Role.MEMBER);
        routes.post("/seeds", this::add, Role.MEMBER);
    }

    private void blank(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Respond.page(ctx, TEMPLATE, NewLotPage.of(LotForm.blank(visitor.season()), crops, visitor.units()));
    }

    private void add(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        int latestYear = Math.max(visitor.season(), visitor.today().getYear());
        LotForm form = LotForm.of(ctx.formParamMap(), crops, latestYear, visitor.memberId(), visitor.units());
        if (form.lot().isEmpty()) {
            Respond.again(ctx, TEMPLATE, NewLotPage.of(form, crops, visitor.units()));
            return;
        }
        NewLot lot = form.lot().get();
        UUID id = lots.add(lot, visitor.memberId());
        Respond.seeOther(
                ctx,
                "/seeds/" + id,
                SAY.lotInBox(noteMaturity(lot, form.maturity(), visitor)).strip());
    }

    /** What a packet says of its variety counts for the group, unless more is known already. */
    private String noteMaturity(NewLot lot, Optional<DaysToMaturity> maturity, Visitor visitor) {
        if (maturity.isEmpty()) {
            return "";
        }
        Decision<Integer> written =
                varieties.write(lot.cropId(), lot.variety(), maturity.get(), "the packet", 0, visitor.memberId());
        return written instanceof Decision.Done
                        || crops.ofVariety(lot.cropId(), lot.variety())
                                .maturity()
                                .equals(maturity)
                ? SAY.datesByPacket(lot.variety())
                : SAY.datesKnown(lot.variety());
    }
}
