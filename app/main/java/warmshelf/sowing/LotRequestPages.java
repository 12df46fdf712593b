package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.decision.Decision;
import warmshelf.seed.Lot;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Another member asks for seed of one's lot: the question, and the answer. */
public final class LotRequestPages implements Pages {
    private static final String TEMPLATE = "sowing/seed-request.peb";
    private static final int LONGEST_REASON = 400;

    private final SowingStores stores;
    private final SeedNews news;

    LotRequestPages(SowingStores stores, SeedNews news) {
        this.stores = stores;
        this.news = news;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/sowings/{id}/seed", this::show, Role.MEMBER);
        routes.post("/sowings/{id}/seed", this::answer, Role.MEMBER);
    }

    private void show(Context ctx) {
        LotRequest request = waiting(ctx);
        FormReader form = new FormReader(Map.of("seeds", List.of(String.valueOf(request.asked()))));
        Respond.page(ctx, TEMPLATE, page(request, form));
    }

    private void answer(Context ctx) {
        LotRequest request = waiting(ctx);
        FormReader form = new FormReader(ctx.formParamMap());
        boolean gives =
                form.choice("answer", SAY.answerField(), List.of("yes", "no")).equals("yes");
        int seeds = gives ? form.wholeNumber("seeds", SAY.seedsGivenField(), 1, request.asked()) : 0;
        String reason = form.optionalText("reason", SAY.reasonField(), LONGEST_REASON);
        if (form.ok()) {
            keep(ctx, request, seeds, reason, form);
        }
        if (!form.ok()) {
            Respond.again(ctx, TEMPLATE, page(request, form));
            return;
        }
        Respond.seeOther(ctx, "/today", said(request, seeds));
    }

    private void keep(Context ctx, LotRequest request, int seeds, String reason, FormReader form) {
        Visitor visitor = Visitor.of(ctx);
        Decision<UUID> answer = stores.claims().answer(request.sowingId(), seeds, reason, visitor.memberId());
        if (answer instanceof Decision.Refused) {
            form.refuse("seeds", Decisions.words(answer, visitor.units()));
        } else {
            Decisions.doneOr(answer, visitor.units());
        }
    }

    private String said(LotRequest request, int seeds) {
        String grower = stores.sowings()
                .find(request.sowingId())
                .map(sowing -> sowing.grower().name())
                .orElseThrow();
        return seeds == 0 ? SAY.keepYourSeed(grower) : SAY.seedsAreTheirs(seeds, grower);
    }

    private LotRequest waiting(Context ctx) {
        LotRequest request = stores.lotRequests().find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        Visitor visitor = Visitor.of(ctx);
        if (!lot(request).mayBeChangedBy(visitor.memberId(), visitor.coordinator())) {
            throw Refusal.forbidden(
                    SAY.onlyOwnerAnswers(request.owner() == null ? SAY.aCoordinator() : request.owner()));
        }
        boolean beforeSowing = stores.sowings()
                .find(request.sowingId())
                .filter(sowing -> sowing.stage().isBeforeSowing())
                .isPresent();
        if (!request.isWaiting() || !beforeSowing) {
            throw Refusal.conflict(new SowingRefusal.NeedsNoAnswer().words(visitor.units()));
        }
        return request;
    }

    private Lot lot(LotRequest request) {
        return stores.lots().find(request.lotId()).orElseThrow();
    }

    private LotRequestPage page(LotRequest request, FormReader form) {
        return new LotRequestPage(news.asked(request), form);
    }

    /** What somebody asks for, and the form that answers. */
    private record LotRequestPage(SeedNews.Asked asked, FormReader form) {}
}
