package warmshelf.sowing;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.stream.Collectors;
import warmshelf.allocation.Stay;
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
            throw tooLate(history.sowing());
        }
        Respond.page(ctx, "sowing/withdraw.peb", new WithdrawalPage(history, history.sowing()));
    }

    /** What would be given up. */
    private record WithdrawalPage(History history, Sowing sowing) {}

    private void withdraw(Context ctx) {
        Sowing sowing = ours(ctx).sowing();
        WithdrawalStore.GivenUp givenUp =
                withdrawals.withdraw(sowing.id(), Visitor.of(ctx).memberId()).orElseThrow(() -> tooLate(sowing));
        Notice.leaveUndo(ctx, "/sowings/" + sowing.id() + "/withdrawal/undoing");
        Respond.seeOther(ctx, "/sowings/" + sowing.id(), said(givenUp.places()));
    }

    private static String said(List<Stay> places) {
        return places.isEmpty()
                ? "Withdrawn. It had no place, so none comes free."
                : "Withdrawn. Free again: %s.".formatted(words(places));
    }

    private static String words(List<Stay> places) {
        return places.stream()
                .map(stay -> "%s, %s".formatted(stay.where(), DayWords.span(stay.from(), stay.to())))
                .collect(Collectors.joining("; "));
    }

    private void takeBack(Context ctx) {
        Sowing sowing = ours(ctx).sowing();
        WithdrawalStore.TakenBack back = withdrawals
                .takeBack(sowing.id(), Visitor.of(ctx).memberId())
                .orElseThrow(
                        () -> Refusal.conflict("There is no withdrawal of %s to take back; that is possible for a day."
                                .formatted(sowing.title())));
        Respond.seeOther(
                ctx,
                "/sowings/" + sowing.id(),
                "%s %s".formatted(said(back), back.seed()).strip());
    }

    private static String said(WithdrawalStore.TakenBack back) {
        if (back.lostPlace()) {
            return "Not withdrawn any more. Its place is not to be had again, so it waits for another.";
        }
        if (back.places().isEmpty()) {
            return back.seed().isEmpty() ? "Not withdrawn any more; it stands as it did." : "Not withdrawn any more.";
        }
        String light = back.lostLight() ? " Its place under the light is not to be had again." : "";
        return "Not withdrawn any more. It has its place again: %s.%s".formatted(words(back.places()), light);
    }

    private History ours(Context ctx) {
        History history = histories.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        Sowing sowing = history.sowing();
        if (!isOurs(Visitor.of(ctx), sowing)) {
            throw Refusal.forbidden("Only %s or a coordinator can withdraw this sowing."
                    .formatted(sowing.grower().name()));
        }
        return history;
    }

    private static Refusal tooLate(Sowing sowing) {
        return Refusal.conflict("%s is %s; only what has not been sown can be withdrawn."
                .formatted(sowing.title(), sowing.stage().title()));
    }
}
