package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.stream.Collectors;
import warmshelf.allocation.Stay;
import warmshelf.web.Decisions;
import warmshelf.web.Notice;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.DayWords;

/** Withdrawing a sowing: what would be given up, then the withdrawal, and for a day the way back. */
final class WithdrawalPages implements Pages {
    private final HistoryStore histories;
    private final WithdrawalStore withdrawals;

    WithdrawalPages(HistoryStore histories) {
        this.histories = histories;
        this.withdrawals = histories.withdrawals();
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/sowings/{id}/withdrawal", this::ask, Role.MEMBER);
        routes.post("/sowings/{id}/withdrawal", this::withdraw, Role.MEMBER);
        routes.post("/sowings/{id}/withdrawal/undoing", this::takeBack, Role.MEMBER);
    }

    /** Whether a visitor may withdraw somebody's sowing, or take that back. */
    static boolean isOurs(Visitor visitor, Sowing sowing) {
        return visitor.coordinator()
                || visitor.memberId().equals(sowing.grower().memberId());
    }

    private void ask(Context ctx) {
        History history = ours(ctx);
        if (!history.sowing().stage().isBeforeSowing()) {
            Sowing sowing = history.sowing();
            throw Refusal.conflict(
                    SAY.notToWithdraw(sowing.title(), sowing.stage().title()));
        }
        Respond.page(ctx, "sowing/withdraw.peb", new WithdrawalPage(history, history.sowing()));
    }

    /** What would be given up. */
    private record WithdrawalPage(History history, Sowing sowing) {}

    private void withdraw(Context ctx) {
        Sowing sowing = ours(ctx).sowing();
        Visitor visitor = Visitor.of(ctx);
        WithdrawalStore.GivenUp givenUp =
                Decisions.doneOr(withdrawals.withdraw(sowing.id(), visitor.memberId()), visitor.units());
        Notice.leaveUndo(ctx, "/sowings/" + sowing.id() + "/withdrawal/undoing");
        Respond.seeOther(ctx, "/sowings/" + sowing.id(), said(givenUp.places()));
    }

    private static String said(List<Stay> places) {
        return places.isEmpty() ? SAY.withdrawnWithoutPlace() : SAY.withdrawn(words(places));
    }

    private static String words(List<Stay> places) {
        return places.stream()
                .map(stay -> "%s, %s".formatted(stay.where(), DayWords.span(stay.from(), stay.to())))
                .collect(Collectors.joining("; "));
    }

    private void takeBack(Context ctx) {
        Sowing sowing = ours(ctx).sowing();
        Visitor visitor = Visitor.of(ctx);
        WithdrawalStore.TakenBack back =
                Decisions.doneOr(withdrawals.takeBack(sowing.id(), visitor.memberId()), visitor.units());
        Respond.seeOther(
                ctx,
                "/sowings/" + sowing.id(),
                "%s %s"
                        .formatted(said(back), back.seed().words(visitor.units()))
                        .strip());
    }

    private static String said(WithdrawalStore.TakenBack back) {
        if (back.lostPlace()) {
            return SAY.waitsForAnother();
        }
        if (back.places().isEmpty()) {
            return back.seed() == SeedAgain.HELD ? SAY.standsAsItDid() : SAY.notWithdrawn();
        }
        return back.lostLight() ? SAY.hasItsPlaceNotLight(words(back.places())) : SAY.hasItsPlace(words(back.places()));
    }

    private History ours(Context ctx) {
        History history = histories.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        Sowing sowing = history.sowing();
        if (!isOurs(Visitor.of(ctx), sowing)) {
            throw Refusal.forbidden(SAY.onlyGrowerWithdraws(sowing.grower().name()));
        }
        return history;
    }
}
