package warmshelf.surplus;

import static warmshelf.surplus.SurplusSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.decision.Decision;
import warmshelf.sowing.Sowing;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Counted;
import warmshelf.words.FormReader;

/** Seedlings to give away: what there is, and offering some of a sowing. */
final class SurplusPages implements Pages {
    private static final String OFFER = "surplus/offer.peb";
    private static final int MOST_PLANTS = 1_000;

    private final SurplusBookStore book;
    private final SurplusStore store;

    SurplusPages(SurplusBookStore book, SurplusStore store) {
        this.book = book;
        this.store = store;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/surplus", this::all, Role.MEMBER);
        routes.get("/sowings/{id}/surplus", this::one, Role.MEMBER);
        routes.post("/sowings/{id}/surplus", this::offer, Role.MEMBER);
        routes.post("/sowings/{id}/surplus/ending", this::end, Role.MEMBER);
    }

    static SurplusStore.Moment moment(Visitor visitor) {
        return new SurplusStore.Moment(visitor.today(), visitor.season());
    }

    static String plants(int plants) {
        return Counted.of(plants, "plant", "plants");
    }

    /**
     * All that is given away.
     *
     * @param free what others give away and nobody takes yet
     * @param own what the visitor gives away
     * @param promised what is still to be handed over to the visitor or by them
     */
    private record ListPage(List<Surplus> free, List<Surplus> own, List<SurplusNews.Between> promised) {}

    private void all(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        UUID me = visitor.memberId();
        List<Surplus> all = book.all(moment(visitor));
        Respond.page(
                ctx,
                "surplus/list.peb",
                new ListPage(
                        all.stream()
                                .filter(each -> each.free() > 0 && !each.isGrownBy(me))
                                .toList(),
                        all.stream()
                                .filter(each -> each.isGrownBy(me) && each.offered() > 0)
                                .toList(),
                        SurplusNews.between(all, me, true)));
    }

    /**
     * Offering some of one sowing.
     *
     * @param most how many can be offered
     * @param closed why nothing can be offered; empty: it can
     */
    private record OfferPage(Surplus surplus, Sowing sowing, int most, String closed, FormReader form) {}

    private void one(Context ctx) {
        Surplus surplus = ours(ctx);
        int plants = surplus.offered() > 0
                ? surplus.offered()
                : Math.max(1, SurplusJudge.beyondWanted(surplus.sowing(), surplus.progress()));
        show(ctx, surplus, new FormReader(Map.of("plants", List.of(String.valueOf(plants)))));
    }

    private void show(Context ctx, Surplus surplus, FormReader form) {
        OfferPage page = new OfferPage(
                surplus,
                surplus.sowing(),
                SurplusJudge.most(surplus.sowing(), surplus.progress()),
                surplus.closed() == null
                        ? ""
                        : surplus.closed().words(Visitor.of(ctx).units()),
                form);
        if (form.ok()) {
            Respond.page(ctx, OFFER, page);
        } else {
            Respond.again(ctx, OFFER, page);
        }
    }

    private void offer(Context ctx) {
        Surplus surplus = ours(ctx);
        Visitor visitor = Visitor.of(ctx);
        FormReader form = new FormReader(ctx.formParamMap());
        int plants = form.wholeNumber("plants", SAY.plantsField(), 1, MOST_PLANTS);
        if (form.ok()) {
            Decision<Sowing> offered = store.offer(surplus.sowing().id(), plants, moment(visitor), visitor.memberId());
            offered.refusal().ifPresent(reason -> form.refuse("plants", reason.words(visitor.units())));
        }
        if (!form.ok()) {
            show(ctx, surplus, form);
            return;
        }
        Respond.seeOther(
                ctx, "/surplus", SAY.offered(plants(plants), surplus.sowing().title()));
    }

    private void end(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Sowing sowing = Decisions.doneOr(store.end(ours(ctx).sowing().id(), visitor.memberId()), visitor.units());
        Respond.seeOther(ctx, "/surplus", SAY.offerEnded(sowing.title()));
    }

    private Surplus ours(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Surplus surplus = book.find(Respond.id(ctx, "id"), moment(visitor)).orElseThrow(Refusal::notFound);
        if (!surplus.isOf(visitor.memberId(), visitor.coordinator())) {
            throw Refusal.forbidden(
                    SAY.onlyGrowerOffers(surplus.sowing().grower().name()));
        }
        return surplus;
    }
}
