package warmshelf.finding.trial;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import warmshelf.crop.Crop;
import warmshelf.decision.Decision;
import warmshelf.seed.BalanceWords;
import warmshelf.seed.LotBalance;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.DayWords;
import warmshelf.words.FormReader;

/** Declaring a trial: the form, what such numbers can show, and the declaration. */
final class TrialDeclarePages implements Pages {
    private static final String FORM = "finding/trial/new.peb";

    private final Trials trials;

    TrialDeclarePages(Trials trials) {
        this.trials = trials;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/trials/new", this::form, Role.MEMBER);
        routes.get("/trials/plan", this::plan, Role.MEMBER);
        routes.post("/trials", this::declare, Role.MEMBER);
    }

    /**
     * @param fewestBlocks 0 where the visitor may leave all blocks to others
     * @param open whether what few need is shown, because it was used
     */
    private record FormPage(
            FormReader form,
            List<Choice> lots,
            List<Choice> kinds,
            List<Choice> methods,
            String degree,
            int fewestBlocks,
            boolean open) {}

    /**
     * What would come of it.
     *
     * @param lines each way with what it lies in and what it asks for
     * @param left how much of the lot is left and spoken for, in words
     * @param withoutRoom which ways have no place that day, each with why
     * @param outlook what such numbers can show, in sentences
     * @param typed to be sent on
     * @param changeAddress back to the form
     */
    private record PlanPage(
            TrialDesign design,
            String crop,
            List<WayLine> lines,
            String left,
            List<String> outlook,
            List<String> withoutRoom,
            Map<String, String> typed,
            String changeAddress) {}

    /** A way before it is declared. */
    public record WayLine(String letter, String name, String liesIn) {}

    private void form(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Map<String, List<String>> typed = new HashMap<>(ctx.queryParamMap());
        typed.putIfAbsent("kind", List.of(TrialKind.METHOD.word()));
        typed.putIfAbsent("method", List.of("cells"));
        typed.putIfAbsent("seedsEach", List.of("20"));
        typed.putIfAbsent("blocks", List.of("1"));
        typed.putIfAbsent("sowOn", List.of(visitor.today().plusDays(1).toString()));
        Respond.page(ctx, FORM, page(visitor, new FormReader(typed)));
    }

    private void plan(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        TrialVisitView visit = new TrialVisitView(trials, visitor);
        TrialForm form = visit.read(ctx.queryParamMap());
        Optional<TrialDesign> design = visit.design(form);
        if (design.isEmpty()) {
            Respond.again(ctx, FORM, page(visitor, form.reader()));
            return;
        }
        Respond.page(ctx, "finding/trial/plan.peb", planned(ctx, visitor, visit, design.get()));
    }

    private PlanPage planned(Context ctx, Visitor visitor, TrialVisitView visit, TrialDesign design) {
        TrialPlanner planner = visit.planner();
        TrialOutlook outlook =
                TrialOutlook.of(design, visit.share(design.lot()), planner.slowest(design.lot(), design.ways()));
        return new PlanPage(
                design,
                planner.crop(design.lot()).name(),
                design.ways().stream()
                        .map(way -> new WayLine(
                                way.letter(),
                                way.name(design.kind(), visitor.units()),
                                way.container(design.seedsEach()).words()))
                        .toList(),
                new BalanceWords(trials.stores().balances().of(design.lot())).left(),
                outlook.words(),
                visit.withoutRoom(design),
                firstOfEach(ctx.queryParamMap()),
                "/trials/new?" + ctx.queryString());
    }

    private void declare(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        TrialVisitView visit = new TrialVisitView(trials, visitor);
        TrialForm form = visit.read(ctx.formParamMap());
        Optional<TrialDesign> design = visit.design(form);
        if (design.isPresent()) {
            Decision<TrialStore.Declared> decision = trials.declaring()
                    .declare(design.get(), visitor.season(), visit.blocksOf(design.get()), visitor.memberId());
            if (decision instanceof Decision.Done<TrialStore.Declared> done) {
                Respond.seeOther(ctx, "/trials/" + done.value().id(), said(done.value(), design.get()));
                return;
            }
            decision.refusal().ifPresent(reason -> form.reader().refuse("seedsEach", reason.words(visitor.units())));
        }
        Respond.again(ctx, FORM, page(visitor, form.reader()));
    }

    private static String said(TrialStore.Declared declared, TrialDesign design) {
        return design.blocks() == 0
                ? "Trial %d is declared. It waits for members who carry blocks of it.".formatted(declared.number())
                : "Trial %d is declared, drawn, and its places for %s are asked for."
                        .formatted(declared.number(), DayWords.day(design.sowOn()));
    }

    private FormPage page(Visitor visitor, FormReader form) {
        return new FormPage(
                form,
                lots(visitor),
                List.of(
                        new Choice("method", "Tray of cells or bag of damp paper"),
                        new Choice("heat", "Mat or room"),
                        new Choice("warmth", "Degrees of the mat"),
                        new Choice("soak", "Soaked the evening before, or dry")),
                List.of(new Choice("cells", "In cells"), new Choice("bag", "In bags")),
                visitor.units().degree(),
                visitor.coordinator() ? 0 : 1,
                form.text("kind").equals(TrialKind.WARMTH.word())
                        || form.text("method").equals("bag"));
    }

    /** The lots that this member may use without asking, and of which something is left. */
    private List<Choice> lots(Visitor visitor) {
        List<Choice> choices = new ArrayList<>();
        for (LotBalance balance : trials.box()) {
            if (balance.isAskedFor(visitor.memberId()) || balance.isUsedUpFor(visitor.memberId())) {
                continue;
            }
            Crop crop = trials.stores().crops().orUnlisted(balance.lot().cropId());
            choices.add(new Choice(
                    balance.lot().id().toString(),
                    "%s · %s %d (%s)"
                            .formatted(
                                    crop.name(),
                                    balance.lot().variety(),
                                    balance.lot().seedYear(),
                                    new BalanceWords(balance).whoseAndFree(visitor.memberId()))));
        }
        return choices;
    }

    private static Map<String, String> firstOfEach(Map<String, List<String>> typed) {
        Map<String, String> texts = new LinkedHashMap<>();
        typed.forEach((name, values) -> {
            if (!name.equals("csrf") && !name.equals("submission") && !values.isEmpty()) {
                texts.put(name, values.get(0));
            }
        });
        return texts;
    }
}
