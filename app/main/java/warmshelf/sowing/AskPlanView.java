package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import warmshelf.allocation.SpaceStore;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.decision.Decision;
import warmshelf.frost.garden.AcceptedRiskStore;
import warmshelf.seed.GerminationTest;
import warmshelf.seed.LotBalanceStore;
import warmshelf.seed.LotStore;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Reads what was asked for, and works out what would come of it. */
final class AskPlanView {
    /** How far ahead the board is read: a season and a bit. */
    private static final int DAYS_AHEAD = 400;

    private final CropCatalogue crops;
    private final SowingPlanner planner;
    private final LotStore lots;
    private final SpaceStore space;
    private final AcceptedRiskStore risks;
    private final LotUseStore use;
    private final LotBalanceStore balances;

    AskPlanView(SowingStores stores, AcceptedRiskStore risks) {
        this.crops = stores.crops();
        this.planner = stores.planner();
        this.lots = stores.lots();
        this.space = stores.space();
        this.risks = risks;
        this.use = stores.use();
        this.balances = stores.balances();
    }

    /**
     * What was typed, and what would come of it.
     *
     * @param plan empty when the form says what is wrong
     */
    record Reading(FormReader form, Optional<AskPlan> plan) {}

    Reading read(Visitor visitor, Map<String, List<String>> typed) {
        AskForm form = new AskForm(
                typed,
                crops,
                lots.withSeed(),
                visitor.today(),
                visitor.season(),
                visitor.units().length());
        Optional<AskForm.Ask> ask = form.ask();
        if (ask.isEmpty()) {
            return new Reading(form.reader(), Optional.empty());
        }
        Decision<AskPlan> decision = plan(visitor, ask.get());
        if (decision instanceof Decision.Refused<AskPlan> refused && refused.reason() instanceof AskRefusal no) {
            form.reader().refuse(no.field(), no.words(visitor.units()));
        }
        return new Reading(
                form.reader(),
                decision instanceof Decision.Done<AskPlan> done ? Optional.of(done.value()) : Optional.empty());
    }

    /** The same for what is to be sent or kept to be sent: what is too late has no plan then. */
    Reading readToSend(Visitor visitor, Map<String, List<String>> typed) {
        Reading reading = read(visitor, typed);
        if (reading.plan().filter(plan -> !plan.canBeSent()).isEmpty()) {
            return reading;
        }
        reading.form().refuse("plants", SAY.tooLateToSow());
        return new Reading(reading.form(), Optional.empty());
    }

    private Decision<AskPlan> plan(Visitor visitor, AskForm.Ask ask) {
        Crop crop = ask.lot() != null
                ? crops.ofVariety(ask.lot().cropId(), ask.variety())
                : Objects.requireNonNull(ask.packet()).crop();
        List<GerminationTest> tests = ask.lot() == null ? List.of() : use.evidence(lots, ask.lot());
        return new AskPlanner(
                        planner.inUnits(visitor.units()),
                        grower(visitor),
                        visitor.today(),
                        visitor.season(),
                        risks.of(visitor.memberId()),
                        use.survival(visitor.season()))
                .plan(
                        ask,
                        crop,
                        tests,
                        ask.lot() == null ? null : balances.of(ask.lot()),
                        space.board(visitor.today(), visitor.today().plusDays(DAYS_AHEAD)));
    }

    static Sowing.Grower grower(Visitor visitor) {
        return new Sowing.Grower(visitor.memberId(), visitor.called(), visitor.country(), visitor.postcode());
    }
}
