package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.decision.Decision;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.DayWords;
import warmshelf.words.FormReader;

/** Coordinators retire a site, rack, shelf or mat from a day on, and bring it back. */
public final class RetirementPages implements Pages {
    private static final int FARTHEST_DAYS = 400;

    private final PartView words;
    private final RetirementStore retirements;

    public RetirementPages(ShelvingStore shelving, RetirementStore retirements) {
        this.words = new PartView(shelving);
        this.retirements = retirements;
    }

    @Override
    public void register(RoutesConfig routes) {
        part(routes, "/sites/{id}/retirement", ShelvingPart.SITE);
        part(routes, "/sites/racks/{id}/retirement", ShelvingPart.RACK);
        part(routes, "/sites/shelves/{id}/retirement", ShelvingPart.SHELF);
        part(routes, "/sites/mats/{id}/retirement", ShelvingPart.MAT);
    }

    private void part(RoutesConfig routes, String address, ShelvingPart part) {
        Role role = part == ShelvingPart.SITE ? Role.COORDINATOR : Role.SITE_COORDINATOR;
        routes.get(address, ctx -> show(ctx, part), role);
        routes.post(address, ctx -> retire(ctx, part), role);
        routes.post(address + "/end", ctx -> bringBack(ctx, part), role);
    }

    /**
     * Asks from when on.
     *
     * @param what it is
     * @param since the day from which it is retired; null: it is in use
     * @param beyond what lies there beyond the day that was asked for
     */
    private record RetirementPage(
            String what, String address, @Nullable LocalDate since, FormReader form, List<StayBeyond> beyond) {}

    private void show(Context ctx, ShelvingPart part) {
        LocalDate today = Visitor.of(ctx).today();
        FormReader form = new FormReader(Map.of("from", List.of(today.toString())));
        UUID id = Respond.id(ctx, "id");
        Respond.page(ctx, "shelf/retirement.peb", page(ctx, part, form, retirements.lyingBeyond(part, id, today)));
    }

    private RetirementPage page(Context ctx, ShelvingPart part, FormReader form, List<StayBeyond> beyond) {
        UUID id = Respond.id(ctx, "id");
        return new RetirementPage(
                words.of(part, id), ctx.path(), retirements.read().parts().get(id), form, beyond);
    }

    private void retire(Context ctx, ShelvingPart part) {
        Visitor visitor = Visitor.of(ctx);
        UUID id = Respond.id(ctx, "id");
        String what = words.of(part, id);
        FormReader form = new FormReader(ctx.formParamMap());
        LocalDate from = form.date("from", SAY.retiredFromField());
        LocalDate farthest = visitor.today().plusDays(FARTHEST_DAYS);
        if (form.ok() && (from.isBefore(visitor.today()) || from.isAfter(farthest))) {
            form.refuse("from", SAY.retiredFromUnfit(from, visitor.today(), farthest));
        }
        if (!form.ok()) {
            Respond.again(ctx, "shelf/retirement.peb", page(ctx, part, form, List.of()));
            return;
        }
        Decision<UUID> decision = retirements.retire(part, id, from, visitor.memberId());
        if (decision instanceof Decision.Refused) {
            form.refuse("from", Decisions.words(decision, visitor.units()));
            Respond.overtaken(
                    ctx, "shelf/retirement.peb", page(ctx, part, form, retirements.lyingBeyond(part, id, from)));
            return;
        }
        Decisions.doneOr(decision, visitor.units());
        Respond.seeOther(ctx, "/sites", SAY.isRetired(what, DayWords.day(from)));
    }

    private void bringBack(Context ctx, ShelvingPart part) {
        Visitor visitor = Visitor.of(ctx);
        UUID id = Respond.id(ctx, "id");
        String what = words.of(part, id);
        Decisions.doneOr(retirements.bringBack(part, id, visitor.memberId()), visitor.units());
        Respond.seeOther(ctx, "/sites", SAY.isInUseAgain(what));
    }
}
