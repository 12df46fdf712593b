package warmshelf.sowing;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Band;
import warmshelf.allocation.FirstFit;
import warmshelf.allocation.SpaceAnswer;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.allocation.SpaceOffer;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.SpaceWish;
import warmshelf.crop.Crop;
import warmshelf.crop.Hardiness;
import warmshelf.crop.HeatNeed;
import warmshelf.crop.Method;
import warmshelf.crop.ProspectWords;
import warmshelf.decision.Decision;
import warmshelf.seed.AgedSeed;
import warmshelf.seed.BalanceWords;
import warmshelf.seed.GerminationShare;
import warmshelf.seed.GerminationTest;
import warmshelf.seed.LotBalance;
import warmshelf.seed.SeedExpectation;
import warmshelf.seed.SeedsToACell;
import warmshelf.timeline.BulbKind;
import warmshelf.timeline.SeasonPart;
import warmshelf.timeline.Seen;
import warmshelf.timeline.Slips;
import warmshelf.timeline.Step;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.TimelineStep;
import warmshelf.timeline.Verdict;
import warmshelf.words.Message;

/** Turns an asking into a plan: seeds, dates with reasons, and where there is warm room. Pure: the board is handed in. */
public final class AskPlanner {
    private static final SowingSentences SAY = SowingSentences.SAY;
    private static final int OFFERS_SHOWN = 4;
    // Seeds lie spread on paper, so a bag has no cells to count; a quarter of a place of paper is plenty for two
    // hundred.
    private static final int SEEDS_IN_A_BAG = 200;

    private final SowingPlanner planner;
    private final Sowing.Grower grower;
    private final LocalDate today;
    private final int season;
    private final Map<Hardiness, Double> acceptedRisks;
    private final Survival survival;

    /** The risks are those that the grower accepts where they are not the usual ones. */
    AskPlanner(
            SowingPlanner planner,
            Sowing.Grower grower,
            LocalDate today,
            int season,
            Map<Hardiness, Double> acceptedRisks,
            Survival survival) {
        this.planner = planner;
        this.grower = grower;
        this.today = today;
        this.season = season;
        this.acceptedRisks = acceptedRisks;
        this.survival = survival;
    }

    /** The plan; a no is an {@link AskRefusal}, which knows the field that it is about. */
    Decision<AskPlan> plan(
            AskForm.Ask ask,
            Crop crop,
            List<GerminationTest> tests,
            @Nullable LotBalance balance,
            SpaceCalendar board) {
        if (ask.seedsPerCell() != AskForm.AS_ADVISED) {
            return planned(ask, crop, tests, balance, board);
        }
        Decision<AskPlan> advised =
                planned(ask.withSeedsPerCell(SeedsToACell.advised().seeds()), crop, tests, balance, board);
        // Where that wants more seed than there is, each seed gets a cell of its own.
        return isShortOfSeed(advised)
                ? planned(ask.withSeedsPerCell(SeedsToACell.FEWEST), crop, tests, balance, board)
                : advised;
    }

    private Decision<AskPlan> planned(
            AskForm.Ask ask,
            Crop crop,
            List<GerminationTest> tests,
            @Nullable LotBalance balance,
            SpaceCalendar board) {
        Optional<String> slips = planner.insteadOfSowing(crop);
        if (slips.isPresent()) {
            String instead = slips.get() + slipsDates(ask, crop);
            return no(ask.lot() == null ? "crop" : "lot", units -> instead);
        }
        Optional<AskRefusal> limit = new SeedLimits(crop, planner.heatNeed(crop)).against(ask);
        if (limit.isPresent()) {
            return new Decision.Refused<>(limit.get());
        }
        int celsius = planner.reckonedC(crop, ask.warm());
        Asking asking = asking(ask, crop, celsius);
        if (ask.part() != null && !planner.parts(asking).contains(ask.part())) {
            String notSo = SAY.notGrownSo(crop.name(), ask.part().words());
            return no("part", units -> notSo);
        }
        SeedExpectation expectation = expectation(ask, crop, tests, asking.season());
        GerminationShare share = expectation.share();
        SeedPlan seeds = seeds(ask, expectation, balance);
        SeedTrouble problem = seeds.problem();
        if (problem != null) {
            return refused(problem, asking, seeds.seeds());
        }
        if (planner.emergence(asking, celsius).isEmpty()) {
            String instead = ProspectWords.instead(
                    crop.name(),
                    planner.units().temperature(celsius),
                    planner.band(crop).words(planner.units()),
                    planner.prospect(crop, celsius));
            return no("heat", units -> instead);
        }
        Optional<Timeline> timeline = planner.timeline(asking, celsius, today, Seen.nothing());
        if (timeline.isEmpty()) {
            return no("where", new AskRefusal.NoFrostDates(grower.postcode(), grower.country()));
        }
        return new Decision.Done<>(planOf(ask, asking, share, seeds, celsius, timeline.get(), balance, board));
    }

    private String slipsDates(AskForm.Ask ask, Crop crop) {
        int celsius = planner.reckonedC(crop, ask.warm());
        return planner.timeline(asking(ask, crop, celsius), celsius, today, Seen.nothing())
                .flatMap(timeline -> Slips.dates(timeline, planner.units()))
                .map(dates -> " " + dates)
                .orElse("");
    }

    private static Decision<AskPlan> refused(SeedTrouble problem, Asking asking, int seeds) {
        if (!(problem instanceof SeedTrouble.TooFewCells cells)) {
            return no("plants", problem);
        }
        if (asking.method() == Method.BAG) {
            return no("plants", new AskRefusal.BagTooSmall(seeds, SEEDS_IN_A_BAG));
        }
        return no("container", asking.crop().inOwnPot() ? new SeedTrouble.TooFewPots(cells) : problem);
    }

    private static Decision<AskPlan> no(String field, Message why) {
        return new Decision.Refused<>(new AskRefusal(field, why));
    }

    /** Whether there are fewer seeds than the plants wanted need. */
    private static boolean isShortOfSeed(Decision<AskPlan> decision) {
        if (decision instanceof Decision.Done<AskPlan> done) {
            return done.value().seeds().probability() == 0;
        }
        return decision.refusal().orElseThrow() instanceof AskRefusal refusal
                && refusal.field().equals("plants");
    }

    private AskPlan planOf(
            AskForm.Ask ask,
            Asking asking,
            GerminationShare share,
            SeedPlan seeds,
            int celsius,
            Timeline timeline,
            @Nullable LotBalance balance,
            SpaceCalendar board) {
        Band band = planner.band(asking.crop());
        Optional<SpaceWish> wish = wish(ask, asking, timeline, band);
        List<SpaceOffer> offers = wish.map(w -> new FirstFit(board, today).offers(w, OFFERS_SHOWN))
                .orElse(List.of());
        String noSpace = wish.isPresent() && offers.isEmpty() ? noSpace(wish.get(), board) : null;
        return new AskPlan(
                ask,
                asking,
                share,
                share.interval(0.9),
                seeds,
                survival,
                celsius,
                band,
                timeline,
                wish.orElse(null),
                offers,
                balance,
                seeds.testFirst() ? planner.howToTest(asking.crop()).orElse(null) : null,
                planner.climate(grower)
                        .flatMap(climate -> BulbKind.of(asking.crop(), climate.latitude(), planner.units()))
                        .orElse(null),
                roomIsEnough(ask, asking, celsius),
                noSpace);
    }

    private AskPlan.@Nullable RoomIsEnough roomIsEnough(AskForm.Ask ask, Asking asking, int celsius) {
        if (!ask.warm() || planner.heatNeed(asking.crop()) != HeatNeed.ROOM_IS_ENOUGH) {
            return null;
        }
        return planner.emergence(asking, HeatNeed.ROOM_C)
                .flatMap(room -> planner.emergence(asking, celsius)
                        .map(mat -> new AskPlan.RoomIsEnough(
                                HeatNeed.ROOM_C, Math.round(room.days()), Math.round(mat.days()))))
                .orElse(null);
    }

    private @Nullable String noSpace(SpaceWish wish, SpaceCalendar board) {
        SpaceAnswer answer = new FirstFit(board, today).answer(wish);
        return answer instanceof SpaceAnswer.None none ? none.reason().words(planner.units()) : null;
    }

    private Optional<SpaceWish> wish(AskForm.Ask ask, Asking asking, Timeline timeline, Band band) {
        Optional<TimelineStep> sow = timeline.step(Step.SOW);
        if (!ask.warm() || sow.isEmpty() || timeline.verdict() == Verdict.TOO_LATE) {
            return Optional.empty();
        }
        LocalDate earliest = later(sow.get().earliest(), today);
        LocalDate ideal = later(sow.get().ideal(), earliest);
        // In a hurry there is no choice of days any more: within the coming week, or not at all.
        LocalDate latest = later(sow.get().latest(), sow.get().latest().isBefore(today) ? today.plusDays(7) : ideal);
        return Optional.of(new SpaceWish(
                UUID.randomUUID(),
                ask.container().quarters(),
                earliest,
                ideal,
                latest,
                band,
                asking.crop().light().isNeeded(),
                planner.daysAt(asking, today, Math.max(1, timeline.warmDays()))));
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }

    private Asking asking(AskForm.Ask ask, Crop crop, int celsius) {
        double risk = ask.chosenRisk() > 0 ? ask.chosenRisk() : acceptedRisk(crop.hardiness());
        SeasonPart chosen = ask.part();
        Asking asking = new Asking(
                grower,
                crop,
                ask.lot() == null ? null : ask.lot().id(),
                ask.method(),
                ask.warm(),
                season,
                chosen == null ? SeasonPart.SPRING : chosen,
                risk,
                ask.underCoverOn(),
                null,
                Math.max(1, ask.seedsPerCell()));
        return chosen == null ? planner.inNextPart(asking, celsius, today) : asking;
    }

    private double acceptedRisk(Hardiness hardiness) {
        return acceptedRisks.getOrDefault(hardiness, hardiness.usualRisk());
    }

    private static SeedExpectation expectation(AskForm.Ask ask, Crop crop, List<GerminationTest> tests, int season) {
        AskForm.Packet packet = ask.packet();
        if (packet == null || ask.lot() != null) {
            return java.util.Objects.requireNonNull(ask.lot()).expectation(crop, tests, season);
        }
        int years = Math.max(0, season - packet.year());
        Integer tested = packet.tested();
        Integer germinated = packet.germinated();
        return tested == null || germinated == null
                ? AgedSeed.expectation(crop, packet.source(), packet.storage(), years)
                : SeedExpectation.known(AgedSeed.of(crop, packet.source(), packet.storage(), years)
                        .afterTest(germinated, tested));
    }

    private SeedPlan seeds(AskForm.Ask ask, SeedExpectation expectation, @Nullable LotBalance balance) {
        if (balance == null) {
            return SeedPlan.of(
                    ask.plants(),
                    expectation,
                    ask.seedsPerCell(),
                    survival.share(),
                    ask.packet() == null ? null : ask.packet().seeds(),
                    capacity(ask),
                    ask.acceptFewer());
        }
        return SeedPlan.of(
                ask.plants(),
                expectation,
                ask.seedsPerCell(),
                survival.share(),
                balance.freeFor(grower.memberId()),
                new BalanceWords(balance).forMember(grower.memberId()),
                capacity(ask),
                ask.acceptFewer());
    }

    private static int capacity(AskForm.Ask ask) {
        return ask.method() == Method.BAG
                ? SEEDS_IN_A_BAG
                : ask.cellsInATray() * ask.container().quarters() / 4;
    }

    /** What the request for space says, for a plan that asks for warmth. */
    static Optional<SpaceRequest> request(AskPlan plan, UUID sowingId) {
        SpaceWish wish = plan.wish();
        return wish == null
                ? Optional.empty()
                : Optional.of(new SpaceRequest(
                        sowingId,
                        SpaceRequest.State.WAITING,
                        wish.earliest(),
                        wish.ideal(),
                        wish.latest(),
                        wish.daysAt().applyAsInt(plan.celsius()),
                        wish.quarters(),
                        wish.band(),
                        plan.ask().underLight(),
                        wish.needsLight(),
                        "",
                        1));
    }
}
