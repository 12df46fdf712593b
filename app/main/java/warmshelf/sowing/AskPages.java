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
import warmshelf.seed.KeepingForm;
import warmshelf.seed.Lot;
import warmshelf.seed.LotBalance;
import warmshelf.seed.LotBalanceStore;
import warmshelf.seed.LotStore;
import warmshelf.seed.SeedSource;
import warmshelf.seed.SeedsToACell;
import warmshelf.seed.StorageKind;
import warmshelf.web.FormReader;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;

/** Asking for space: the form, the plan it leads to, and sending it. */
public final class AskPages implements Pages {
    /** How far ahead the board is read: a season and a bit. */
    private static final int DAYS_AHEAD = 400;

    private static final List<Choice> METHODS = List.of(
            new Choice("cells", "Cells: sown in a tray"),
            new Choice("bag", "Bag: pre-sprouted in damp paper on the mat, then moved into cells"));
    private static final List<Choice> HEATS = List.of(
            new Choice("warm", "Warm: on one of the group’s mats"),
            new Choice("room", "Not warm: at room temperature"));
    private static final List<Choice> AFTERS = List.of(
            new Choice("light", "Under the group’s lights, as long as there is room"),
            new Choice("home", "Home with me"));
    private static final List<Choice> CONTAINERS = List.of(
            new Choice("half-tray", "Half a tray"),
            new Choice("tray", "A whole tray"),
            new Choice("own", "A tray of my own, with these sides:"));
    private static final List<Choice> WHERES = List.of(
            new Choice("outdoors", "Outdoors, when my frost dates allow"),
            new Choice("cover", "Under cover, on a day I name"));
    private static final List<Choice> RISKS = List.of(
            new Choice("", "As set for my garden; else as usual, one year in ten for tender crops"),
            new Choice("0.1", "One year in ten"),
            new Choice("0.3", "Three years in ten"),
            new Choice("0.5", "Every other year"));

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
        ctx.render("sowing/ask.peb", formModel(ctx, new FormReader(typed)));
    }

    private void plan(Context ctx) {
        Map<String, List<String>> typed = ctx.queryParamMap();
        Reading reading = read(ctx, typed);
        if (reading.plan().isEmpty()) {
            Respond.again(ctx, "sowing/ask.peb", formModel(ctx, reading.form()));
            return;
        }
        AskPlan plan = reading.plan().get();
        Map<String, Object> model = new HashMap<>();
        model.put("plan", plan);
        model.put(
                "steps",
                StepLine.of(
                        plan.timeline(),
                        plan.asking(),
                        plan.asking().crop().hazardsOf(plan.ask().treated()),
                        crops,
                        Visitor.of(ctx).units()));
        model.put("instead", plan.canBeSent() ? List.of() : instead(Visitor.of(ctx), plan));
        model.put("typed", firstOfEach(typed));
        model.put("changeAddress", "/ask?" + ctx.queryString());
        ctx.render("sowing/plan.peb", model);
    }

    private List<StillInTime.Other> instead(Visitor visitor, AskPlan plan) {
        Map<Hardiness, Double> accepted = risks.of(visitor.memberId());
        return new StillInTime(planner, crops, each -> accepted.getOrDefault(each, each.usualRisk()))
                .insteadOf(plan.asking(), balances.freeFor(visitor.memberId()), visitor.today());
    }

    private void send(Context ctx) {
        Reading reading = read(ctx, ctx.formParamMap());
        if (reading.plan().isEmpty()) {
            Respond.again(ctx, "sowing/ask.peb", formModel(ctx, reading.form()));
            return;
        }
        AskPlan plan = reading.plan().get();
        Visitor visitor = Visitor.of(ctx);
        AskStore.Sent sent = asks.send(plan, visitor.today(), visitor.memberId());
        if (sent.claim() instanceof SeedClaimStore.Claim.TooFewSeeds few) {
            reading.form().refuse("plants", "Somebody was quicker. " + few.sentence(visitor.memberId()));
            Respond.again(ctx, "sowing/ask.peb", formModel(ctx, reading.form()));
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
                visitor.units().length().equals("in"));
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
                : java.util.Objects.requireNonNull(ask.packet()).crop();
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

    private Map<String, Object> formModel(Context ctx, FormReader form) {
        Map<String, Object> model = new HashMap<>();
        model.put("form", form);
        model.put("frostKnown", planner.climate(grower(Visitor.of(ctx))).isPresent());
        model.put("lots", lotChoices(Visitor.of(ctx).memberId(), form.text("lot")));
        model.put(
                "crops",
                crops.fromSeed().stream()
                        .map(crop -> new Choice(crop.id(), crop.name()))
                        .toList());
        SeedsToACell advised = SeedsToACell.advised();
        model.put(
                "advisedPerCell",
                "Empty: %d, %s; %d where seed is scarce"
                        .formatted(advised.seeds(), advised.why(), SeedsToACell.FEWEST));
        model.put("fromSlips", crops.fromSlips());
        model.put("sources", KeepingForm.SOURCES);
        model.put("storages", KeepingForm.IN_WORDS);
        model.put("methods", METHODS);
        model.put("heats", HEATS);
        model.put("afters", AFTERS);
        model.put("containers", CONTAINERS);
        model.put("wheres", WHERES);
        model.put("risks", RISKS);
        model.put(
                "cellCounts",
                AskForm.CELLS_IN_A_TRAY.stream()
                        .map(count -> new Choice(count, count))
                        .toList());
        model.put("inches", Visitor.of(ctx).units().length().equals("in"));
        return model;
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
