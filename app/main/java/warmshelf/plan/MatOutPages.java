package warmshelf.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.SpaceStore;
import warmshelf.web.Choice;
import warmshelf.web.FormReader;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** Days on which a mat cannot be used: every member sees them, coordinators say them. */
final class MatOutPages implements Pages {
    private static final int FARTHEST_DAYS = 400;

    private final MatOutStore outs;
    private final SpaceStore space;

    MatOutPages(MatOutStore outs, SpaceStore space) {
        this.outs = outs;
        this.space = space;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/plans/out-of-service", this::show, Role.MEMBER);
        routes.post("/plans/out-of-service", this::takeOut, Role.COORDINATOR);
        routes.post("/plans/out-of-service/{id}/end", this::end, Role.COORDINATOR);
    }

    private void show(Context ctx) {
        ctx.render("plan/out.peb", model(ctx, new FormReader(Map.of())));
    }

    private Map<String, Object> model(Context ctx, FormReader form) {
        Map<String, Object> model = new HashMap<>();
        model.put("outs", outs.reachingBeyond(Visitor.of(ctx).today()));
        model.put("mats", mats(space.mats()));
        model.put("form", form);
        return model;
    }

    private static List<Choice> mats(List<MatSpace> mats) {
        return mats.stream()
                .map(mat -> new Choice(mat.id().toString(), "%s · %s".formatted(mat.name(), mat.where())))
                .toList();
    }

    private void takeOut(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        FormReader form = new FormReader(ctx.formParamMap());
        String mat = form.text("mat");
        if (mats(space.mats()).stream().noneMatch(choice -> choice.value().equals(mat))) {
            form.refuse("mat", "The mat is not one of the group's; choose one from the list.");
        }
        LocalDate first = form.date("first", "The first day");
        LocalDate last = form.date("last", "The last day");
        String reason = form.requiredText("reason", "The reason", 200);
        if (form.ok()) {
            refuseOddDays(form, first, last, visitor.today());
        }
        if (!form.ok()) {
            Respond.again(ctx, "plan/out.peb", model(ctx, form));
            return;
        }
        int lying = outs.takeOut(UUID.fromString(mat), first, last.plusDays(1), reason, visitor.memberId());
        String there = lying == 0
                ? "Nothing lies there on those days."
                : "%d %s there on those days; please move %s."
                        .formatted(lying, lying == 1 ? "stay lies" : "stays lie", lying == 1 ? "it" : "them");
        Respond.seeOther(ctx, "/plans/out-of-service", "Out of service. " + there);
    }

    private static void refuseOddDays(FormReader form, LocalDate first, LocalDate last, LocalDate today) {
        LocalDate farthest = today.plusDays(FARTHEST_DAYS);
        if (first.isBefore(today) || first.isAfter(farthest)) {
            form.refuse(
                    "first",
                    "The first day was %s; a day from %s to %s is accepted.".formatted(first, today, farthest));
        } else if (last.isBefore(first) || last.isAfter(farthest)) {
            form.refuse(
                    "last", "The last day was %s; a day from %s to %s is accepted.".formatted(last, first, farthest));
        }
    }

    private void end(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        if (!outs.end(Respond.id(ctx, "id"), visitor.today(), visitor.memberId())) {
            throw Refusal.notFound();
        }
        Respond.seeOther(ctx, "/plans/out-of-service", "It is back in service.");
    }
}
