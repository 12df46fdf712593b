package warmshelf.finding.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.seed.Lot;
import warmshelf.sowing.Sowing;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** A trial as one visitor would carry a block of it. */
final class TrialVisitView {
    private static final int DAYS_ON_THE_BOARD = 120;

    private final Trials trials;
    private final Visitor visitor;
    private final TrialPlanner planner;

    TrialVisitView(Trials trials, Visitor visitor) {
        this.trials = trials;
        this.visitor = visitor;
        this.planner = trials.planner(visitor.units());
    }

    TrialPlanner planner() {
        return planner;
    }

    double share(Lot lot) {
        return trials.share(planner, lot, visitor.season());
    }

    /** What a form asks for, where its crop can be tried. */
    Optional<TrialDesign> design(TrialForm form) {
        Optional<TrialDesign> design = form.design();
        design.flatMap(each -> planner.problem(each.lot(), each.ways()))
                .ifPresent(problem -> form.reader().refuse("lot", problem));
        return form.reader().ok() ? design : Optional.empty();
    }

    /** Makes the blocks of a trial that is being declared. */
    TrialStore.BlockMaking blocksOf(TrialDesign design) {
        return making(TrialPlanner.Question.of(design, share(design.lot())), design.sowOn());
    }

    /** Makes a block of a trial that was declared. */
    TrialStore.BlockMaking blockOf(Trial trial, LocalDate sowOn) {
        return making(TrialPlanner.Question.of(trial, share(trial.lot())), sowOn);
    }

    private TrialStore.BlockMaking making(TrialPlanner.Question question, LocalDate sowOn) {
        TrialPlanner.Carried carried = new TrialPlanner.Carried(
                new Sowing.Grower(visitor.memberId(), visitor.called(), visitor.country(), visitor.postcode()),
                visitor.season(),
                trials.risk(planner, question.lot(), visitor.memberId()),
                visitor.today(),
                sowOn);
        return (number, draw) -> planner.block(question, carried, number, draw);
    }

    /** Which ways of a trial that is being declared have no place on its day, each with why. */
    List<String> withoutRoom(TrialDesign design) {
        TrialDraw draw =
                TrialDraw.of(1, design.ways().stream().map(TrialWay::letter).toList(), design.seedsEach());
        List<PlannedWay> planned = new ArrayList<>();
        for (int block = 0; block < design.blocks(); block++) {
            planned.addAll(blocksOf(design).block(0, draw));
        }
        SpaceCalendar board =
                trials.stores().space().board(visitor.today(), design.sowOn().plusDays(DAYS_ON_THE_BOARD));
        return planner.withoutRoom(planned, board, visitor.today());
    }

    /** The form as typed, read with the seed box as it stands. */
    TrialForm read(Map<String, List<String>> typed) {
        return new TrialForm(
                typed,
                trials.box(),
                trials.stores().crops(),
                new TrialForm.Who(visitor.memberId(), visitor.coordinator()),
                visitor.today(),
                visitor.units());
    }

    /** The day of sowing of a block, as typed. */
    LocalDate sowOn(FormReader form, Trial trial) {
        return TrialForm.sowOn(form, visitor.today(), trial.kind() == TrialKind.SOAK);
    }
}
