package warmshelf.sowing;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import warmshelf.allocation.SpaceStore;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Hardiness;
import warmshelf.frost.garden.AcceptedRiskStore;
import warmshelf.seed.BalanceWords;
import warmshelf.seed.GerminationTest;
import warmshelf.seed.Lot;
import warmshelf.seed.LotBalance;
import warmshelf.seed.LotBalanceStore;
import warmshelf.seed.LotStore;
import warmshelf.seed.SeedSource;
import warmshelf.seed.StorageKind;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** Asking for space: the form, the plan it leads to, and sending it. */
public final class AskPages implements Pages {
    /** How far ahead the board is read: a season and a bit. */
    private static final int DAYS_AHEAD = 400;

    private static final String FORM = "sowing/ask.peb";

    private final CropCatalogue crops;
    private final SowingPlanner planner;
    private final LotStore lots;
    private final SpaceStore space;
    private final AskStore asks;
    private final AcceptedRiskStore risks;
    private final LotUseStore use;
    private final LotBalanceStore balances;

    AskPages(
            CropCatalogue crops,
            SowingPlanner planner,
            LotStore lots,
            SpaceStore space,
            AskStore asks,
            AcceptedRiskStore risks,
            LotUseStore use,
            LotBalanceStore balances) {
        this.crops = crops;
        this.planner = planner;
        this.lots = lots;
        this.space = space;
        this.asks = asks;
        this.risks = risks;
        this.use = use;
        this.balances = balances;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/ask", this::form, Role.MEMBER);
        routes.get("/ask/plan", this::plan, Role.MEMBER);
        routes.post("/sowings", this::send, Role.MEMBER);
    }

    private void form(Context ctx) {
        Map<String, List<String>> typed = new HashMap<>(ctx.queryParamMap());
        typed.putIfAbsent("method", List.of("cells"));
        typed.putIfAbsent("heat", List.of("warm"));
        typed.putIfAbsent("after", List.of("light"));
        typed.putIfAbsent("container", List.of("half-tray"));
        typed.putIfAbsent("where", List.of("outdoors"));
        typed.putIfAbsent("source", List.of(SeedSource.PACKET.word()));
        typed.putIfAbsent("storage", List.of(StorageKind.UNKNOWN.word()));
        typed.putIfAbsent("cellsInATray", List.of("72"));
        typed.putIfAbsent("risk", List.of(""));
        Respond.page(ctx, FORM, formPage(ctx, new FormReader(typed)));
    }

    private void plan(Context ctx) {
        Map<String, List<String>> typed = ctx.queryParamMap();
        Reading reading = read(ctx, typed);
        if (reading.plan().isEmpty()) {
            Respond.again(ctx, FORM, formPage(ctx, reading.form()));
            return;
        }
        AskPlan plan = reading.plan().get();
        Visitor visitor = Visitor.of(ctx);
        Respond.page(
                ctx,
                "sowing/plan.peb",
                new AskPlanPage(
                        plan,
                        StepLine.of(
                                plan.timeline(),
                                plan.asking(),
                                plan.asking().crop().hazardsOf(plan.ask().treated()),
                                crops,
                                visitor.units()),
                        plan.canBeSent() ? List.of() : instead(visitor, plan),
                        firstOfEach(typed),
                        "/ask?" + ctx.queryString()));
    }

    /**
     * What would come of a request.
     *
     * @param instead what is still in time, where this is not
     * @param typed what was asked for, to be sent on
     * @param changeAddress back to the form
     */
    private record AskPlanPage(
            AskPlan plan,
            List<StepLine> steps,
            List<StillInTime.Other> instead,
            Map<String, String> typed,
            String changeAddress) {}

    private List<StillInTime.Other> instead(Visitor visitor, AskPlan plan) {
        Map<Hardiness, Double> accepted = risks.of(visitor.memberId());
        return new StillInTime(planner, crops, each -> accepted.getOrDefault(each, each.usualRisk()))
                .insteadOf(plan.asking(), balances.freeFor(visitor.memberId()), visitor.today());
    }

    private void send(Context ctx) {
        Reading reading = read(ctx, ctx.formParamMap());
        if (reading.plan().isEmpty()) {
            Respond.again(ctx, FORM, formPage(ctx, reading.form()));
            return;
        }
        AskPlan plan = reading.plan().get();
        Visitor visitor = Visitor.of(ctx);
        AskStore.Sent sent = asks.send(plan, visitor.today(), visitor.memberId());
        if (sent.claim() instanceof SeedClaimStore.Claim.TooFewSeeds few) {
            reading.form().refuse("plants", "Somebody was quicker. " + few.sentence(visitor.memberId()));
            Respond.again(ctx, FORM, formPage(ctx, reading.form()));
            return;
        }
        String place = plan.wish() == null
                ? "Kept. It needs no mat, so it stands in your sowings right away."
                : "Sent. A coordinator will find it a place; you see here when it has one.";
        String seed = sent.claim() instanceof SeedClaimStore.Claim.Asked asked
                ? " %s is asked for the seed, and the answer shows here too.".formatted(asked.owner())
                : "";
        Respond.seeOther(ctx, "/sowings/" + sent.sowingId(), place + seed);
    }

    private Reading read(Context ctx, Map<String, List<String>> typed) {
        Visitor visitor = Visitor.of(ctx);
        List<Lot> box = lots.withSeed();
        AskForm form = new AskForm(
                typed,
                crops,
                box,
                visitor.today(),
                visitor.season(),
                visitor.units().length());
        Optional<AskForm.Ask> ask = form.ask();
        if (ask.isEmpty()) {
            return new Reading(form.reader(), Optional.empty());
        }
        AskPlanner.Outcome outcome = plan(visitor, ask.get());
        outcome.problems().forEach(form.reader()::refuse);
        if (outcome.plan() != null
                && !outcome.plan().canBeSent()
                && ctx.method().name().equals("POST")) {
            form.reader()
                    .refuse(
                            "plants",
                            "It is too late to sow this for the season; see the plan for what to do instead.");
            return new Reading(form.reader(), Optional.empty());
        }
        return new Reading(form.reader(), Optional.ofNullable(outcome.plan()));
    }

    private static Sowing.Grower grower(Visitor visitor) {
        return new Sowing.Grower(visitor.memberId(), visitor.name(), visitor.country(), visitor.postcode());
    }

    private AskPlanner.Outcome plan(Visitor visitor, AskForm.Ask ask) {
        Crop crop = ask.lot() != null
                ? crops.ofVariety(ask.lot().cropId(), ask.variety())
                : Objects.requireNonNull(ask.packet()).crop();
        List<GerminationTest> tests = ask.lot() == null ? List.of() : evidence(ask.lot());
        LocalDate today = visitor.today();
        return new AskPlanner(
                        planner.inUnits(visitor.units()),
                        grower(visitor),
                        today,
                        visitor.season(),
                        risks.of(visitor.memberId()),
                        use.survival(visitor.season()))
                .plan(
                        ask,
                        crop,
                        tests,
                        ask.lot() == null ? null : balances.of(ask.lot()),
                        space.board(today, today.plusDays(DAYS_AHEAD)));
    }

    /** Tests of the lot, and what came of it in sowings that are finished. */
    private List<GerminationTest> evidence(Lot lot) {
        List<GerminationTest> evidence = new ArrayList<>(lots.tests(lot.id()));
        evidence.addAll(use.results(List.of(lot.id())).getOrDefault(lot.id(), List.of()));
        return evidence;
    }

    private AskFormPage formPage(Context ctx, FormReader form) {
        Visitor visitor = Visitor.of(ctx);
        return new AskFormPage(
                form,
                planner.climate(grower(visitor)).isPresent(),
                lotChoices(visitor.memberId(), form.text("lot")),
                crops.fromSeed().stream()
                        .map(crop -> new Choice(crop.id(), crop.name()))
                        .toList(),
                crops.fromSlips(),
                visitor.units().inInches());
    }

    /** The lots of which this member may plan on something, and the one chosen already. */
    private List<Choice> lotChoices(UUID member, String chosen) {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice(AskForm.NEW_PACKET, "A new packet, described below"));
        List<Lot> box = lots.withSeed();
        Map<UUID, LotBalance> all = balances.of(box);
        for (Lot lot : box) {
            LotBalance balance = Objects.requireNonNull(all.get(lot.id()));
            if (balance.isUsedUpFor(member) && !lot.id().toString().equals(chosen)) {
                continue;
            }
            String crop = crops.find(lot.cropId()).map(Crop::name).orElse(lot.cropId());
            String whose = new BalanceWords(balance).whoseAndFree(member);
            choices.add(new Choice(
                    lot.id().toString(), "%s · %s %d (%s)".formatted(crop, lot.variety(), lot.seedYear(), whose)));
        }
        return choices;
    }

    private static Map<String, String> firstOfEach(Map<String, List<String>> typed) {
        Map<String, String> texts = new LinkedHashMap<>();
        typed.forEach((name, values) -> {
            if (!name.equals("csrf") && !values.isEmpty()) {
                texts.put(name, values.get(0));
            }
        });
        return texts;
    }

    private record Reading(FormReader form, Optional<AskPlan> plan) {}
}
