package warmshelf.finding.trial;

import static warmshelf.finding.trial.TrialSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import warmshelf.finding.CountTrouble;
import warmshelf.finding.CurveChart;
import warmshelf.finding.Doubt;
import warmshelf.finding.WayFound;
import warmshelf.finding.WaysCompared;
import warmshelf.finding.WaysWords;
import warmshelf.seed.LotBalance;
import warmshelf.web.Visitor;
import warmshelf.words.DayWords;
import warmshelf.words.FormReader;
import warmshelf.words.Numbers;

/** Gathers the page of one trial. */
final class TrialReportView {
    private final Trials trials;

    TrialReportView(Trials trials) {
        this.trials = trials;
    }

    /** The day that a block is offered to be sown on: the trial's own where it still comes. */
    String usualDay(Visitor visitor, Trial trial) {
        LocalDate soonest = visitor.today().plusDays(1);
        LocalDate first = trial.firstDay();
        return (first == null || first.isBefore(soonest) ? soonest : first).toString();
    }

    TrialReportPage page(Visitor visitor, Trial trial, FormReader form) {
        TrialReading reading = reading(visitor, trial);
        TrialState state = reading.state();
        boolean finished = state == TrialState.FINISHED;
        Optional<WaysCompared> comparison = finished ? reading.comparison() : Optional.empty();
        List<TrialReading.Pair> pairs = finished ? reading.pairs() : List.of();
        List<WayFound> ways = comparison.map(WaysCompared::ways).orElseGet(reading::soFar);
        LotBalance balance = trials.stores().balances().of(trial.lot());
        boolean mayJoin =
                reading.refusalToJoin(visitor.memberId(), visitor.season()).isEmpty();
        return new TrialReportPage(
                "Trial %d: %s".formatted(trial.number(), trial.kind().title()),
                trial,
                trials.planner(visitor.units()).crop(trial.lot()).name(),
                state,
                words(reading, state, comparison, pairs),
                WaysWords.doubts(doubts(comparison, pairs)),
                leftOut(reading),
                ways.isEmpty() ? null : chart(reading, ways),
                TrialReportPage.CurveRow.of(ways),
                ways.stream().map(way -> row(reading, way)).toList(),
                pairRows(pairs),
                blocks(reading, visitor.memberId()),
                mayJoin,
                balance.isAskedFor(visitor.memberId())
                        ? String.valueOf(trial.lot().ownerName())
                        : "",
                form);
    }

    /** The trial as it stands today. */
    TrialReading reading(Visitor visitor, Trial trial) {
        return TrialReading.of(
                trial, trials.histories(List.of(trial)), trials.lastDay(), visitor.today(), visitor.units());
    }

    private static List<String> words(
            TrialReading reading, TrialState state, Optional<WaysCompared> comparison, List<TrialReading.Pair> pairs) {
        return switch (state) {
            case NOBODY -> List.of(SAY.nobodyCarries());
            case CALLED_OFF -> List.of(SAY.calledOff());
            case PLANNED -> List.of(SAY.notSownYet(DayWords.day(firstDay(reading.trial()))));
            case UNDER_WAY -> soFar(reading);
            case FINISHED -> {
                if (comparison.isEmpty()) {
                    yield List.of(SAY.nothingCounted());
                }
                yield pairs.isEmpty()
                        ? WaysWords.answer(comparison.get())
                        : List.of(SAY.manyComparisons(2 * pairs.size()));
            }
        };
    }

    private static LocalDate firstDay(Trial trial) {
        return java.util.Objects.requireNonNull(trial.firstDay());
    }

    private static List<String> soFar(TrialReading reading) {
        List<String> words = new ArrayList<>();
        words.add(SAY.notFinished(reading.day(), reading.lastDay()));
        List<WayFound> counted = reading.soFar();
        counted.forEach(way -> words.add(SAY.countsSoFar(
                sentenceCase(way.name()), way.sprouted().came(), way.sprouted().of())));
        reading.trial().ways().stream()
                .filter(way -> counted.stream().noneMatch(each -> each.name().equals(reading.name(way))))
                .forEach(way -> words.add(notCounted(sentenceCase(reading.name(way)), reading.roots(way))));
        return words;
    }

    /** Roots in a bag are no seedlings yet, but whoever counted them should find them. */
    private static String notCounted(String way, int roots) {
        return roots == 0 ? SAY.notCountedYet(way) : SAY.rootsSoFar(way, roots);
    }

    private static Set<Doubt> doubts(Optional<WaysCompared> comparison, List<TrialReading.Pair> pairs) {
        Set<Doubt> doubts = EnumSet.noneOf(Doubt.class);
        comparison.ifPresent(compared -> doubts.addAll(compared.doubts()));
        pairs.forEach(pair -> doubts.addAll(pair.comparison().doubts()));
        return doubts;
    }

    private static List<TrialReportPage.PairRow> pairRows(List<TrialReading.Pair> pairs) {
        return pairs.stream()
                .map(pair -> new TrialReportPage.PairRow(
                        SAY.pair(sentenceCase(pair.first()), pair.second()),
                        WaysWords.ofSeveral(pair.comparison(), pair.speedChance(), pair.shareChance())))
                .toList();
    }

    private static CurveChart chart(TrialReading reading, List<WayFound> ways) {
        return CurveChart.of(ways.stream()
                .map(way -> new CurveChart.Named(letter(reading, way), way.name(), way.curve()))
                .toList());
    }

    private static String letter(TrialReading reading, WayFound found) {
        return reading.trial().ways().stream()
                .filter(way -> reading.name(way).equals(found.name()))
                .map(TrialWay::letter)
                .findFirst()
                .orElseThrow();
    }

    private static TrialReportPage.WayRow row(TrialReading reading, WayFound way) {
        return new TrialReportPage.WayRow(
                letter(reading, way),
                way.name(),
                way.sprouted().came(),
                way.sprouted().of(),
                way.sprouted().value(),
                way.sprouted().wilson().low(),
                way.sprouted().wilson().high(),
                way.half().isPresent() ? Numbers.oneDecimalAtMost(way.half().getAsDouble()) : "");
    }

    private static List<TrialReportPage.BlockRow> blocks(TrialReading reading, UUID visitor) {
        List<TrialReportPage.BlockRow> rows = new ArrayList<>();
        for (int i = 0; i < reading.blocks().size(); i++) {
            Trial.Block block = reading.trial().blocks().get(i);
            rows.add(new TrialReportPage.BlockRow(
                    block.number(),
                    block.member(),
                    block.memberId().equals(visitor),
                    block.sowOn(),
                    block.draw(),
                    reading.blocks().get(i).stream()
                            .map(way -> new TrialReportPage.SowingRow(
                                    way.history().sowing().id(),
                                    way.way().letter(),
                                    reading.name(way.way()),
                                    way.history().sowing().stage().word(),
                                    way.progress().up(),
                                    way.history().sowing().seeds()))
                            .toList()));
        }
        return rows;
    }

    private static List<String> leftOut(TrialReading reading) {
        List<String> words = new ArrayList<>();
        boolean finished = reading.state() == TrialState.FINISHED;
        for (int i = 0; i < reading.blocks().size(); i++) {
            int block = reading.trial().blocks().get(i).number();
            for (WayOfBlock way : reading.blocks().get(i)) {
                way.leftOut()
                        .filter(why -> finished || why != WayOfBlock.LeftOut.NOT_COUNTED)
                        .ifPresent(why -> words.add(SAY.leftOut(block, way.way().letter(), words(why))));
                if (way.seeds().troubles().contains(CountTrouble.WEEKS_BETWEEN)) {
                    words.add(SAY.leftOut(block, way.way().letter(), SAY.weeksBetween()));
                }
            }
        }
        return words;
    }

    private static String words(WayOfBlock.LeftOut why) {
        return switch (why) {
            case WITHDRAWN -> SAY.withdrawn();
            case OTHER_LOT -> SAY.otherLot();
            case NOT_COUNTED -> SAY.notCounted();
            case COUNTS_FELL -> SAY.countsFell();
            case MORE_THAN_SOWN -> SAY.moreThanSown();
        };
    }

    private static String sentenceCase(String name) {
        return name.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + name.substring(1);
    }
}
