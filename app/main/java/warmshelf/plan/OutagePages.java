package warmshelf.plan;

import static warmshelf.plan.PlanSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.SpaceStore;
import warmshelf.decision.Decision;
import warmshelf.finding.trial.TrialWarmthStore;
import warmshelf.placing.LyingStay;
import warmshelf.placing.MoveStore;
import warmshelf.shelf.AddressedSiteStore;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.SiteRight;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** Days on which a mat cannot be used: every member sees them, coordinators say them and move what lies there. */
final class OutagePages implements Pages {
    private static final String ALL = "plan/out.peb";
    private static final String ONE = "plan/out-mat.peb";

    private final OutageDecisionStore outs;
    private final DisplacedList displaced;
    private final MoveStore moves;
    private final SpaceStore space;
    private final TrialWarmthStore trials;
    private final AddressedSiteStore sites;

    OutagePages(
            OutageDecisionStore outs,
            DisplacedList displaced,
            MoveStore moves,
            SpaceStore space,
            TrialWarmthStore trials,
            AddressedSiteStore sites) {
        this.outs = outs;
        this.displaced = displaced;
        this.moves = moves;
        this.space = space;
        this.trials = trials;
        this.sites = sites;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/plans/out-of-service", this::all, Role.MEMBER);
        routes.get("/plans/out-of-service/{id}", this::one, Role.MEMBER);
        routes.post("/plans/out-of-service", this::takeOut, Role.SITE_COORDINATOR);
        routes.post("/plans/out-of-service/{id}/moves", this::move, Role.SITE_COORDINATOR);
        routes.post("/plans/out-of-service/{id}/end", this::end, Role.SITE_COORDINATOR);
    }

    /** An outage with how many stays lie there. */
    public record Line(OutageDecisionStore.Out out, int stays) {}

    private void all(Context ctx) {
        Respond.page(ctx, ALL, page(ctx, new FormReader(Map.of())));
    }

    /** The outages that are not over, and the form that adds one. */
    private record OutagesPage(List<Line> outs, List<Choice> mats, FormReader form) {}

    private OutagesPage page(Context ctx, FormReader form) {
        LocalDate today = Visitor.of(ctx).today();
        return new OutagesPage(
                outs.reachingBeyond(today).stream()
                        .map(out -> new Line(out, outs.staysOn(out, today).size()))
                        .toList(),
                mats(space.mats(Visitor.of(ctx).reach())),
                form);
    }

    private static List<Choice> mats(List<MatSpace> mats) {
        return mats.stream()
                .map(mat -> new Choice(mat.id().toString(), "%s · %s".formatted(mat.name(), mat.where())))
                .toList();
    }

    private void takeOut(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        FormReader form = new FormReader(ctx.formParamMap());
        Optional<OutForm.Days> days = OutForm.read(form, mats(space.mats()), visitor.today());
        if (days.isEmpty()) {
            Respond.again(ctx, ALL, page(ctx, form));
            return;
        }
        OutForm.Days read = days.get();
        SiteRight.require(visitor, sites.ofMat(read.mat()));
        UUID out = outs.takeOut(read.mat(), read.from(), read.to(), read.reason(), visitor.memberId());
        int lying = outs.find(out)
                .map(found -> outs.staysOn(found, visitor.today()).size())
                .orElse(0);
        if (lying == 0) {
            Respond.seeOther(ctx, "/plans/out-of-service", SAY.outWithNothing());
        } else {
            Respond.seeOther(ctx, "/plans/out-of-service/" + out, SAY.outWithStays(lying));
        }
    }

    private void one(Context ctx) {
        Respond.page(ctx, ONE, page(ctx, out(ctx), List.of()));
    }

    private OutageDecisionStore.Out out(Context ctx) {
        return outs.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    /**
     * One outage.
     *
     * @param over whether its days are over
     * @param decides whether the reader may move what lies there, and end it
     * @param stays what lies there, for members
     * @param proposals where that could go, for coordinators
     * @param warnings what the proposals would do to trials, for coordinators
     * @param problems why what was just tried could not be done, or empty
     */
    private record OutagePage(
            OutageDecisionStore.Out out,
            boolean over,
            boolean decides,
            List<LyingStay> stays,
            DisplacedList.Proposals proposals,
            List<String> warnings,
            List<String> problems) {}

    private OutagePage page(Context ctx, OutageDecisionStore.Out out, List<String> problems) {
        Visitor visitor = Visitor.of(ctx);
        boolean decides = visitor.reach().covers(out.site());
        DisplacedList.Proposals proposals =
                decides ? displaced.proposals(out, visitor.today(), visitor.reach()) : DisplacedList.Proposals.NONE;
        return new OutagePage(
                out,
                !out.to().isAfter(visitor.today()),
                decides,
                decides ? List.of() : displaced.lying(out, visitor.today()),
                proposals,
                trials.apart(proposals.warmth()).stream()
                        .map(apart -> apart.words(visitor.units()))
                        .toList(),
                problems);
    }

    /** Moves what was shown and chosen, all or none; when anything has changed since, nothing moves and it is shown anew. */
    private void move(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        OutageDecisionStore.Out out = out(ctx);
        List<String> shown = List.of(
                Objects.requireNonNullElse(ctx.formParam("take"), "").strip().split(" +"));
        List<MoveStore.Change> wanted = displaced.proposals(out, visitor.today(), visitor.reach()).placed().stream()
                .filter(proposal -> shown.contains(proposal.key()))
                .map(DisplacedList.Proposal::change)
                .toList();
        Decision<Integer> moved = wanted.isEmpty() || wanted.size() != shown.size()
                ? new Decision.Overtaken<>(new PlanRefusal.ChangedSince())
                : moves.moveAll(wanted, visitor.today(), visitor.memberId());
        if (!(moved instanceof Decision.Done)) {
            Respond.overtaken(ctx, ONE, page(ctx, out, List.of(Decisions.words(moved, visitor.units()))));
            return;
        }
        int left = outs.staysOn(out, visitor.today()).size();
        Respond.seeOther(
                ctx,
                "/plans/out-of-service/" + out.id(),
                left == 0 ? SAY.allMoved(wanted.size()) : SAY.someMoved(wanted.size(), left));
    }

    private void end(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Decisions.doneOr(outs.end(Respond.id(ctx, "id"), visitor.today(), visitor.memberId()), visitor.units());
        Respond.seeOther(ctx, "/plans/out-of-service", SAY.backInService());
    }
}
