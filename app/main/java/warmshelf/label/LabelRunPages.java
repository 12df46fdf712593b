package warmshelf.label;

import static warmshelf.label.LabelSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import warmshelf.label.paper.LabelPdf;
import warmshelf.label.paper.LabelStock;
import warmshelf.web.BrowserSession;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** Labels that were made: their PDF, and whether they came out. */
final class LabelRunPages implements Pages {
    private static final String ADDRESS = LabelPages.ADDRESS + "/runs/{id}";

    private final LabelSource source;
    private final LabelRunStore runs;
    private final LabelChoices choices;
    private final BrowserSession browsers;

    LabelRunPages(LabelSource source, LabelRunStore runs, LabelChoices choices, BrowserSession browsers) {
        this.source = source;
        this.runs = runs;
        this.choices = choices;
        this.browsers = browsers;
    }

    /** The page of labels that were made. */
    static String address(UUID run) {
        return LabelPages.ADDRESS + "/runs/" + run;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(ADDRESS, this::show, Role.MEMBER);
        routes.get(ADDRESS + "/labels.pdf", this::pdf, Role.MEMBER);
        routes.post(ADDRESS + "/undoing", this::undo, Role.MEMBER);
    }

    /**
     * Labels that were made.
     *
     * @param stockWords on what, in words
     * @param left how many labels of the last sheet stay blank
     */
    private record RunPage(
            LabelRun run,
            List<LabelSet.Coded> labels,
            String stockWords,
            String measures,
            LabelWish wish,
            int left,
            String counted,
            boolean mayUndo) {}

    private void show(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        LabelRun run = printed(ctx);
        LabelWish wish = wish(run);
        List<LabelItem> items = source.of(run);
        if ("yes".equals(ctx.queryParam("fresh"))) {
            // Starts the download beside the page, so that printing is one press; the page has the same link for who
            // blocks it.
            ctx.header("Refresh", "0; url=" + address(run.id()) + "/labels.pdf?save=yes");
        }
        Respond.page(
                ctx,
                "label/run.peb",
                new RunPage(
                        run,
                        source.withKnownCodes(items),
                        wish.stock().words(visitor.units()),
                        wish.stock().measures(visitor.units()),
                        wish,
                        wish.leftAfter(run.labels()),
                        LabelPage.counted(items),
                        run.mayBeUndoneBy(visitor.memberId(), visitor.coordinator())));
    }

    private LabelRun printed(Context ctx) {
        LabelRun run = runs.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        if (run.stock().equals(LabelRun.BY_HAND)) {
            throw Refusal.notFound();
        }
        return run;
    }

    private LabelWish wish(LabelRun run) {
        LabelStock stock = choices.stock(run.stock()).orElseThrow(Refusal::notFound);
        return new LabelWish(
                stock,
                Optional.ofNullable(run.printer()).flatMap(choices::printer).orElse(null),
                run.startAt(),
                run.cuttingLines());
    }

    private void pdf(Context ctx) {
        LabelRun run = printed(ctx);
        LabelWish wish = wish(run);
        List<LabelSet.Coded> coded =
                source.coded(source.of(run), Visitor.of(ctx).memberId());
        LabelSet set = LabelSet.of(wish.stock(), coded, browsers.wholeAddress(ctx, ""))
                .orElseThrow(() -> Refusal.conflict(
                        SAY.tooSmall(wish.stock().measures(Visitor.of(ctx).units()))));
        send(
                ctx,
                LabelPdf.of(
                        wish.setting(),
                        set.drawings(),
                        SAY.pdfTitle(Visitor.of(ctx).groupName())),
                "labels.pdf");
    }

    /** Sends a PDF to be shown, or with 'save' in the address to be kept. */
    static void send(Context ctx, byte[] pdf, String name) {
        String how = "yes".equals(ctx.queryParam("save")) ? "attachment" : "inline";
        ctx.contentType("application/pdf")
                .header("Content-Disposition", "%s; filename=\"%s\"".formatted(how, name))
                .result(pdf);
    }

    private void undo(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Decisions.doneOr(runs.undo(Respond.id(ctx, "id"), visitor.memberId(), visitor.coordinator()), visitor.units());
        Respond.seeOther(ctx, LabelPages.ADDRESS, SAY.undone());
    }
}
