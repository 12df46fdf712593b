package warmshelf.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.SpaceStore;
import warmshelf.decision.Decision;
import warmshelf.placing.MoveStore;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.Counted;
import warmshelf.words.FormReader;

/** Days on which a mat cannot be used: every member sees them, coordinators say them and move what lies there. */
final class OutagePages implements Pages {
    private static final int FARTHEST_DAYS = 400;

    private final OutageDecisionStore outs;
    private final DisplacedList displaced;
    private final MoveStore moves;
    private final SpaceStore space;

    OutagePages(OutageDecisionStore outs, DisplacedList displaced, MoveStore moves, SpaceStore space) {
        this.outs = outs;
        this.displaced = displaced;
        this.moves = moves;
        this.space = space;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/plans/out-of-service", this::all, Role.MEMBER);
        routes.get("/plans/out-of-service/{id}", this::one, Role.MEMBER);
        routes.post("/plans/out-of-service", this::takeOut, Role.COORDINATOR);
        routes.post("/plans/out-of-service/{id}/moves", this::move, Role.COORDINATOR);
        routes.post("/plans/out-of-service/{id}/end", this::end, Role.COORDINATOR);
    }

    /** An outage with how many stays lie there. */
    public record Line(OutageDecisionStore.Out out, int stays) {}

    private void all(Context ctx) {
        ctx.render("plan/out.peb", model(ctx, new FormReader(Map.of())));
    }

    private Map<String, Object> model(Context ctx, FormReader form) {
        Map<String, Object> model = new HashMap<>();
        LocalDate today = Visitor.of(ctx).today();
        model.put(
                "outs",
                outs.reachingBeyond(today).stream()
                        .map(out -> new Line(out, outs.staysOn(out, today).size()))
                        .toList());
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
        UUID out = outs.takeOut(UUID.fromString(mat), first, last.plusDays(1), reason, visitor.memberId());
        int lying = outs.find(out)
                .map(found -> outs.staysOn(found, visitor.today()).size())
                .orElse(0);
        if (lying == 0) {
            Respond.seeOther(ctx, "/plans/out-of-service", "Out of service. Nothing lies there on those days.");
        } else {
            Respond.seeOther(
                    ctx,
                    "/plans/out-of-service/" + out,
                    "Out of service. %s there on those days; this is where %s could go."
                            .formatted(Counted.of(lying, "stay lies", "stays lie"), lying == 1 ? "it" : "they"));
        }
    }

    private void one(Context ctx) {
        ctx.render("plan/out-mat.peb", model(ctx, out(ctx), List.of()));
    }

    private OutageDecisionStore.Out out(Context ctx) {
        return outs.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private Map<String, Object> model(Context ctx, OutageDecisionStore.Out out, List<String> problems) {
        Visitor visitor = Visitor.of(ctx);
        Map<String, Object> model = new HashMap<>();
        model.put("out", out);
        model.put("over", !out.to().isAfter(visitor.today()));
        model.put("stays", visitor.coordinator() ? List.of() : displaced.lying(out, visitor.today()));
        model.put(
                "proposals",
                visitor.coordinator() ? displaced.proposals(out, visitor.today()) : DisplacedList.Proposals.NONE);
        model.put("problems", problems);
        return model;
    }

    /** Moves what was shown and chosen, all or none; when anything has changed since, nothing moves and it is shown anew. */
    private void move(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        OutageDecisionStore.Out out = out(ctx);
        List<String> shown = List.of(
                Objects.requireNonNullElse(ctx.formParam("take"), "").strip().split(" +"));
        List<MoveStore.Change> wanted = displaced.proposals(out, visitor.today()).placed().stream()
                .filter(proposal -> shown.contains(proposal.key()))
                .map(DisplacedList.Proposal::change)
                .toList();
        Decision<Integer> moved = wanted.isEmpty() || wanted.size() != shown.size()
                ? new Decision.Overtaken<>(new PlanRefusal.ChangedSince())
                : moves.moveAll(wanted, visitor.today(), visitor.memberId());
        if (!(moved instanceof Decision.Done)) {
            showAnew(ctx, out, Decisions.words(moved, visitor.units()));
            return;
        }
        int left = outs.staysOn(out, visitor.today()).size();
        Respond.seeOther(
                ctx,
                "/plans/out-of-service/" + out.id(),
                "%d moved. %s"
                        .formatted(
                                wanted.size(),
                                left == 0
                                        ? "Nothing lies there any more on those days."
                                        : "%d still %s there.".formatted(left, left == 1 ? "lies" : "lie")));
    }

    private void showAnew(Context ctx, OutageDecisionStore.Out out, String sentence) {
        ctx.status(HttpStatus.CONFLICT);
        ctx.render("plan/out-mat.peb", model(ctx, out, List.of(sentence)));
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
