package warmshelf.demo;

import static warmshelf.demo.DemoDecisions.done;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import warmshelf.crop.Crop;
import warmshelf.crop.Method;
import warmshelf.finding.trial.PlannedWay;
import warmshelf.finding.trial.Trial;
import warmshelf.finding.trial.TrialDesign;
import warmshelf.finding.trial.TrialKind;
import warmshelf.finding.trial.TrialPlanner;
import warmshelf.finding.trial.TrialStore;
import warmshelf.finding.trial.TrialWay;
import warmshelf.group.Member;
import warmshelf.seed.Lot;
import warmshelf.sowing.Sowing;
import warmshelf.words.Units;

/** The demo's side-by-side trials: whether a tray or a bag is better, with whoever carries a block of it. */
final class DemoTrials {
    /** Where the numbers of their sowings begin, after those of the table of sowings. */
    private static final int FIRST_NUMBER = 1000;

    private static final List<TrialWay> TRAY_OR_BAG = List.of(
            new TrialWay("A", Method.CELLS, true, null, false), new TrialWay("B", Method.BAG, true, null, false));

    private final DemoHouse house;
    private final DemoSeason season;
    private final int year;
    private final TrialPlanner planner;
    private final Map<String, Member> members;

    DemoTrials(DemoHouse house, DemoSeason season) {
        this.house = house;
        this.season = season;
        this.year = season.today().getYear();
        this.planner = new TrialPlanner(house.planner(), house.crops(), Units.AMERICAN);
        this.members = house.members().all().stream().collect(Collectors.toMap(Member::name, Function.identity()));
    }

    /** Has the trials declared, and joined, that people asked for on a day. */
    void ask(LocalDate day) {
        for (CSVRecord row : DemoTable.rows("trials.csv")) {
            int start = DemoTable.number(row, "start");
            LocalDate askedOn = season.today().plusDays(start - DemoTable.number(row, "asked_days_before"));
            if (askedOn.equals(day)) {
                declare(row, season.today().plusDays(start), askedOn);
            }
        }
    }

    private void declare(CSVRecord row, LocalDate sowOn, LocalDate askedOn) {
        Lot lot = house.lots().withSeed().stream()
                .filter(each -> each.variety().equals(row.get("variety")))
                .findFirst()
                .orElseThrow();
        TrialDesign design =
                new TrialDesign(TrialKind.METHOD, lot, TRAY_OR_BAG, DemoTable.number(row, "seeds"), 1, sowOn);
        Member declares = DemoTable.known(members, row.get("member"));
        var declared =
                done(house.trials().declare(design, year, making(row, design, declares, askedOn), declares.id()));
        if (!row.get("joined_by").isEmpty()) {
            Member joins = DemoTable.known(members, row.get("joined_by"));
            Trial trial = house.trialBook().find(declared.id(), DemoGroup.ZONE).orElseThrow();
            done(house.trials().join(trial, year, sowOn, making(row, design, joins, askedOn), joins.id()));
        }
    }

    private TrialStore.BlockMaking making(CSVRecord row, TrialDesign design, Member member, LocalDate askedOn) {
        Crop crop = house.crops().get(design.lot().cropId());
        double share = design.lot()
                .share(crop, house.lots().tests(design.lot().id()), year)
                .mean();
        TrialPlanner.Carried carried = new TrialPlanner.Carried(
                new Sowing.Grower(member.id(), member.name(), member.country(), member.postcode()),
                year,
                crop.hardiness().usualRisk(),
                askedOn,
                design.sowOn());
        TrialPlanner.Question question = TrialPlanner.Question.of(design, share);
        return (number, draw) -> grown(row, planner.block(question, carried, number, draw), share, askedOn);
    }

    private List<PlannedWay> grown(CSVRecord row, List<PlannedWay> block, double share, LocalDate askedOn) {
        for (PlannedWay planned : block) {
            Sowing sowing = planned.sowing();
            DemoSowing told = new DemoSowing(
                    FIRST_NUMBER + season.plants().size(),
                    sowing.grower().name(),
                    sowing.variety(),
                    sowing.plantsWanted(),
                    sowing.method(),
                    sowing.warm(),
                    sowing.container(),
                    DemoTable.number(row, "start"),
                    DemoTable.number(row, "asked_days_before"),
                    row.get("target"),
                    "",
                    sowing.note());
            season.add(new DemoPlant(
                    told, sowing, season.today().plusDays(told.start()), askedOn, planned.request(), share));
        }
        return block;
    }
}
