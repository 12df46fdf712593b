package warmshelf.season;

import static warmshelf.season.SeasonTurnSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import warmshelf.decision.Decision;
import warmshelf.finding.season.SeasonTotals;
import warmshelf.web.Decisions;
import warmshelf.web.Notice;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** Closing the season that the group works towards: what is not over is settled in bulk, with exceptions. */
final class SeasonClosingPages implements Pages {
    private static final String ADDRESS = SeasonPages.ADDRESS + "/close";
    private static final String TEMPLATE = "season/close.peb";

    private final SettlementStore settlements;
    private final SeasonTurnStore turns;
    private final GroupFrost frosts;

    SeasonClosingPages(SettlementStore settlements, SeasonTurnStore turns, GroupFrost frosts) {
        this.settlements = settlements;
        this.turns = turns;
        this.frosts = frosts;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(ADDRESS, this::ask, Role.COORDINATOR);
        routes.post(ADDRESS, this::close, Role.COORDINATOR);
        routes.post(ADDRESS + "/undo", this::takeBack, Role.COORDINATOR);
    }

    private void ask(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        int season = visitor.season();
        if (turns.closing(season).isPresent()) {
            throw Refusal.conflict(SAY.closedAlready(season));
        }
        Respond.page(
                ctx,
                TEMPLATE,
                page(
                        visitor,
                        SettlingForm.proposed(visitor.today(), frosts.isBeforeLastFrost(season, visitor.today()))
                                .reader()));
    }

    private void close(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        SettlingForm form = new SettlingForm(new FormReader(ctx.formParamMap()));
        List<OpenSowing> open = settlements.open(visitor.season(), visitor.today());
        int season = form.reader().wholeNumber("season", SAY.seasonField(), 2000, 2200);
        Optional<SettlingForm.Decided> decided = form.decided(open, visitor.today());
        if (decided.isEmpty()) {
            Respond.again(ctx, TEMPLATE, page(visitor, form.reader()));
            return;
        }
        Decision<SeasonTotals> decision = settlements.close(season, decided.get(), visitor.today(), visitor.memberId());
        if (decision instanceof Decision.Refused<SeasonTotals> refused) {
            form.reader().refuse(SettlingForm.OUT_ON, refused.reason().words(visitor.units()));
            Respond.again(ctx, TEMPLATE, page(visitor, form.reader()));
            return;
        }
        Decisions.doneOr(decision, visitor.units());
        Notice.leaveUndo(ctx, ADDRESS + "/undo");
        Respond.seeOther(ctx, SeasonPages.ADDRESS, SAY.closedNow(season));
    }

    private void takeBack(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        int season = Decisions.doneOr(turns.takeClosingBack(visitor.season(), visitor.memberId()), visitor.units());
        Respond.seeOther(ctx, SeasonPages.ADDRESS, SAY.openAgain(season));
    }

    /** Sowings that had come equally far, with what can have become of them. */
    public record OpenGroup(OpenKind kind, List<OpenSowing> sowings, List<Choice> settlements) {}

    /**
     * @param early that the last frost is still to come, while something is not over; empty otherwise
     * @param outOn whether a day of planting out is asked for
     */
    private record ClosePage(int season, FormReader form, List<OpenGroup> groups, String early, boolean outOn) {}

    private ClosePage page(Visitor visitor, FormReader form) {
        List<OpenGroup> groups = groups(settlements.open(visitor.season(), visitor.today()));
        boolean outOn =
                groups.stream().anyMatch(group -> group.kind().settlements().contains(Settlement.PLANTED_OUT));
        boolean early = !groups.isEmpty() && frosts.isBeforeLastFrost(visitor.season(), visitor.today());
        String lastFrost = early ? frosts.lastFrost(visitor.season()).orElse("") : "";
        return new ClosePage(visitor.season(), form, groups, lastFrost, outOn);
    }

    private static List<OpenGroup> groups(List<OpenSowing> open) {
        return Arrays.stream(OpenKind.values())
                .map(kind -> new OpenGroup(
                        kind,
                        open.stream().filter(sowing -> sowing.kind() == kind).toList(),
                        kind.settlements().stream()
                                .map(each -> new Choice(each.word(), each.title()))
                                .toList()))
                .filter(group -> !group.sowings().isEmpty())
                .toList();
    }
}
