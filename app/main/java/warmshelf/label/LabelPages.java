package warmshelf.label;

import static warmshelf.label.LabelSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.label.paper.LabelPicture;
import warmshelf.label.paper.Lettering;
import warmshelf.web.BrowserSession;
import warmshelf.web.Notice;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Counted;
import warmshelf.words.Units;

/** What has no label yet, and the press that prints it. */
final class LabelPages implements Pages {
    static final String ADDRESS = "/labels";
    private static final String TEMPLATE = "label/print.peb";
    private static final int MOST_LABELS = 1000;

    private final LabelSource source;
    private final LabelRunStore runs;
    private final LabelChoices choices;
    private final BrowserSession browsers;

    LabelPages(LabelSource source, LabelRunStore runs, LabelChoices choices, BrowserSession browsers) {
        this.source = source;
        this.runs = runs;
        this.choices = choices;
        this.browsers = browsers;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(ADDRESS, this::show, Role.MEMBER);
        routes.post(ADDRESS + "/runs", this::print, Role.MEMBER);
        routes.post(ADDRESS + "/by-hand", this::byHand, Role.MEMBER);
    }

    private void show(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        LabelScope scope = scope(ctx, ctx.queryParam("of"));
        boolean again = "yes".equals(ctx.queryParam("again"));
        LabelForm form =
                LabelForm.of(ctx.queryParamMap(), choices.usual(visitor.memberId(), visitor.country()), choices);
        LabelPage page = page(ctx, form, scope, again);
        if (form.form().ok()) {
            Respond.page(ctx, TEMPLATE, page);
        } else {
            Respond.again(ctx, TEMPLATE, page);
        }
    }

    private LabelScope scope(Context ctx, @Nullable String text) {
        LabelScope scope = LabelScope.of(text).orElseThrow(Refusal::notFound);
        if (scope.isForCoordinators() && !Visitor.of(ctx).coordinator()) {
            throw Refusal.forbidden(SAY.forCoordinators());
        }
        return scope;
    }

    private List<LabelItem> items(Context ctx, LabelScope scope, boolean again) {
        Visitor visitor = Visitor.of(ctx);
        List<LabelItem> items = source.of(scope, visitor.memberId(), again, visitor.today());
        if (items.isEmpty() && scope.isOfOneSowing()) {
            throw Refusal.notFound();
        }
        return items;
    }

    private LabelPage page(Context ctx, LabelForm form, LabelScope scope, boolean again) {
        Visitor visitor = Visitor.of(ctx);
        Units units = visitor.units();
        List<LabelItem> items = items(ctx, scope, again);
        LabelWish wish = form.wish();
        List<LabelSet.Coded> coded = source.withKnownCodes(items);
        Optional<LabelSet> set = LabelSet.of(wish.stock(), coded, browsers.wholeAddress(ctx, ""));
        if (set.isEmpty()) {
            form.form().refuse("stock", tooSmall(wish, units));
        }
        return new LabelPage(
                form.form(),
                scope,
                again,
                items,
                LabelPage.counted(items),
                wish,
                wish.stock().words(units),
                set.filter(made -> !made.drawings().isEmpty())
                        .map(made ->
                                LabelPicture.of(wish.stock(), made.drawings().get(0), Lettering.bundled()))
                        .orElse(null),
                coded.stream().limit(1).anyMatch(first -> first.code().equals(ShortCode.WIDEST)),
                set.map(made -> notes(ctx, made)).orElse(List.of()),
                choices.stocks(visitor.country(), units, wish.stock()),
                choices.printers(),
                source.sites(),
                LabelScreenPages.ruler(ctx),
                String.valueOf(ctx.queryParam("open")),
                browsers.wholeAddress(ctx, ""));
    }

    private static String tooSmall(LabelWish wish, Units units) {
        return SAY.tooSmall(wish.stock().measures(units));
    }

    private List<String> notes(Context ctx, LabelSet made) {
        List<String> notes = new ArrayList<>();
        if (made.withoutQr() > 0) {
            notes.add(SAY.withoutQr());
        }
        if (!made.leftOut().isEmpty()) {
            notes.add(SAY.leftOut(
                    Counted.all(made.leftOut().stream().map(LabelWords::of).toList())));
        }
        if (!made.unwritable().isEmpty()) {
            notes.add(SAY.unwritable(Counted.all(List.copyOf(made.unwritable()))));
        }
        boolean coordinator = Visitor.of(ctx).coordinator();
        browsers.addressOfThisMachineOnly(ctx)
                .ifPresent(address -> notes.add(coordinator ? SAY.ownAddressToSet(address) : SAY.ownAddress(address)));
        return notes;
    }

    private void print(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        LabelForm form =
                LabelForm.of(ctx.formParamMap(), choices.usual(visitor.memberId(), visitor.country()), choices);
        LabelScope scope = scope(ctx, form.form().text("of"));
        List<LabelItem> chosen = chosen(ctx, form, scope);
        int labels = LabelPage.labels(chosen);
        if (labels > MOST_LABELS) {
            form.form().refuse("take", SAY.tooMany(labels, MOST_LABELS));
        }
        if (LabelSet.of(form.wish().stock(), List.of(), browsers.wholeAddress(ctx, ""))
                .isEmpty()) {
            form.form().refuse("stock", tooSmall(form.wish(), visitor.units()));
        }
        if (!form.form().ok()) {
            Respond.again(ctx, TEMPLATE, page(ctx, form, scope, true));
            return;
        }
        source.coded(chosen, visitor.memberId());
        UUID run = runs.keep(form.wish().manner(), lines(chosen), visitor.memberId());
        Respond.seeOther(ctx, LabelRunPages.address(run) + "?fresh=yes", SAY.marked(LabelPage.counted(chosen)));
    }

    private List<LabelItem> chosen(Context ctx, LabelForm form, LabelScope scope) {
        List<LabelItem> chosen = form.chosen(items(ctx, scope, true), ctx.formParams("take"));
        if (chosen.isEmpty()) {
            form.form().refuse("take", SAY.nothingTicked());
        }
        return chosen;
    }

    private static List<LabelRun.Line> lines(List<LabelItem> items) {
        return items.stream().map(LabelRun.Line::of).toList();
    }

    private void byHand(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        LabelForm form =
                LabelForm.of(ctx.formParamMap(), choices.usual(visitor.memberId(), visitor.country()), choices);
        LabelScope scope = scope(ctx, form.form().text("of"));
        List<LabelItem> chosen = chosen(ctx, form, scope);
        if (!form.form().ok()) {
            Respond.again(ctx, TEMPLATE, page(ctx, form, scope, true));
            return;
        }
        List<LabelItem> written = chosen.stream().map(item -> item.times(0)).toList();
        UUID run = runs.keep(LabelRunStore.Manner.BY_HAND, lines(written), visitor.memberId());
        Notice.leaveUndo(ctx, LabelRunPages.address(run) + "/undoing");
        Respond.seeOther(ctx, ADDRESS + "?of=" + scope.text(), SAY.byHand(LabelPage.counted(chosen)));
    }
}
