package warmshelf.seed;

import static warmshelf.seed.SeedSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import warmshelf.crop.CropCatalogue;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;

/** On what terms others may plan on a lot: asked for or not, and how much is kept back. */
final class SharingPages implements Pages {
    private final LotStore lots;
    private final LotBalanceStore balances;
    private final CropCatalogue crops;

    SharingPages(LotStore lots, LotBalanceStore balances, CropCatalogue crops) {
        this.lots = lots;
        this.balances = balances;
        this.crops = crops;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/seeds/{id}/sharing", this::form, Role.MEMBER);
        routes.post("/seeds/{id}/sharing", this::share, Role.MEMBER);
    }

    private void form(Context ctx) {
        Lot lot = changeable(ctx);
        Respond.page(
                ctx,
                "seed/sharing.peb",
                page(lot, SharingForm.showing(balances.of(lot).sharing())));
    }

    private void share(Context ctx) {
        Lot lot = changeable(ctx);
        SharingForm form = SharingForm.of(ctx.formParamMap(), lot);
        if (form.sharing().isEmpty()) {
            Respond.again(ctx, "seed/sharing.peb", page(lot, form));
            return;
        }
        balances.share(lot.id(), form.sharing().get(), Visitor.of(ctx).memberId());
        Respond.seeOther(ctx, "/seeds/" + lot.id(), SAY.termsKept());
    }

    private Lot changeable(Context ctx) {
        Lot lot = lots.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        Visitor visitor = Visitor.of(ctx);
        if (!lot.mayBeChangedBy(visitor.memberId(), visitor.coordinator())) {
            throw Refusal.forbidden(SAY.onlyOwnerSets());
        }
        return lot;
    }

    /**
     * On what terms others have a lot.
     *
     * @param crop its crop's name
     * @param left what is left of it, in words
     */
    private record FormPage(Lot lot, String crop, String left, SharingForm form, List<Choice> terms) {}

    private FormPage page(Lot lot, SharingForm form) {
        return new FormPage(
                lot,
                crops.orUnlisted(lot.cropId()).name(),
                new BalanceWords(balances.of(lot)).left(),
                form,
                SharingForm.TERMS);
    }
}
