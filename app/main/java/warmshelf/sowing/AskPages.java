package warmshelf.sowing;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** Asking for space: its two questions, what and how many. */
final class AskPages implements Pages {
    private final AskFormView forms;
    private final GrowView search;
    private final GatheredView gathered;
    private final SeasonGateStore gate;

    AskPages(AskFormView forms, GrowView search, GatheredView gathered, SeasonGateStore gate) {
        this.forms = forms;
        this.gathered = gathered;
        this.gate = gate;
        this.search = search;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/ask", this::ask, Role.MEMBER);
    }

    private void ask(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Map<String, String> answers = AskAddress.answers(ctx.queryParamMap());
        Optional<SowingRefusal> closed = gate.whyClosed(visitor.season());
        if (closed.isPresent()) {
            Respond.page(
                    ctx, "sowing/ask-closed.peb", new ClosedPage(closed.get().words(visitor.units())));
        } else if (answers.containsKey("lot") || answers.containsKey("crop")) {
            howMany(ctx, visitor);
        } else {
            Respond.page(ctx, "sowing/ask.peb", what(visitor, answers));
        }
    }

    /** @param why nothing can be asked for now */
    private record ClosedPage(String why) {}

    private void howMany(Context ctx, Visitor visitor) {
        AskFormPage page = forms.fresh(visitor, ctx.queryParamMap());
        if (page.form().ok()) {
            Respond.page(ctx, AskFormPage.TEMPLATE, page);
        } else {
            Respond.again(ctx, AskFormPage.TEMPLATE, page);
        }
    }

    /**
     * The first question: what.
     *
     * @param every crop, for whoever would rather read than type
     * @param gathered what waits to be sent with this
     * @param rest other answers given before, to be kept
     * @param to the second question with those answers, up to the seed
     */
    private record WhatPage(
            boolean frostKnown,
            GrowView.Found found,
            List<GrowView.CropLine> every,
            List<GatheredView.Line> gathered,
            Map<String, String> rest,
            String to) {}

    private WhatPage what(Visitor visitor, Map<String, String> answers) {
        Map<String, String> rest = AskAddress.withoutSeed(answers);
        return new WhatPage(
                forms.isFrostKnown(visitor),
                search.find(answers.getOrDefault("q", ""), visitor),
                search.everyCrop(),
                gathered.lines(visitor),
                rest,
                AskAddress.of("/ask", rest) + (rest.isEmpty() ? "?" : "&"));
    }
}
