package warmshelf.finding.season;

import static warmshelf.finding.season.SeasonSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import warmshelf.finding.CountTrouble;
import warmshelf.finding.statistics.ConfidenceInterval;
import warmshelf.words.Counted;

/** A season's findings in sentences. */
final class SeasonWords {
    private SeasonWords() {}

    /** What the season came to, one sentence after another. */
    static List<String> of(SeasonTotals totals) {
        if (totals.sown() == 0) {
            return List.of(SAY.nothingSown());
        }
        List<String> words = new ArrayList<>();
        words.add(SAY.sown(
                Counted.of(totals.sown(), "sowing", "sowings"),
                Counted.of(totals.members(), "member", "members"),
                Counted.of(totals.seeds(), "seed", "seeds")));
        if (totals.counted() > 0) {
            words.add(SAY.came(totals.came(), totals.counted(), Math.round(100f * totals.came() / totals.counted())));
        }
        if (totals.plantedOut() > 0 || totals.lost() > 0) {
            words.add(SAY.plants(Counted.of(totals.plantedOut(), "plant", "plants"), totals.lost()));
        }
        if (totals.given() > 0) {
            words.add(SAY.given(Counted.of(totals.given(), "seedling was", "seedlings were")));
        }
        if (totals.givenUp() > 0) {
            words.add(SAY.givenUp(Counted.of(totals.givenUp(), "sowing was", "sowings were"), reasons(totals)));
        }
        if (totals.underWay() > 0) {
            words.add(SAY.underWay(Counted.of(totals.underWay(), "sowing is", "sowings are")));
        }
        return words;
    }

    private static String reasons(SeasonTotals totals) {
        return totals.reasons().isEmpty()
                ? ""
                : totals.reasons().entrySet().stream()
                        .map(each -> SAY.givenUpFor(each.getKey().words().toLowerCase(Locale.ROOT), each.getValue()))
                        .collect(Collectors.joining(", ", " (", ")"));
    }

    /** What is wrong with a sowing's counts. */
    static String of(CountTrouble trouble) {
        return switch (trouble) {
            case NOT_COUNTED -> SAY.notCounted();
            case FELL -> SAY.fell();
            case MORE_THAN_SOWN -> SAY.moreThanSown();
            case WEEKS_BETWEEN -> SAY.weeksBetween();
        };
    }

    /** What was lost, for the head of a table. */
    static String of(SeasonFinding.Loss loss) {
        return loss == SeasonFinding.Loss.DAMPING_OFF ? SAY.dampingOff() : SAY.manySeedlings();
    }

    /** Where each kind of loss was noted more often than chance explains; a sentence that says so where it was not. */
    static List<String> ofLosses(List<SeasonFinding.Losses> losses) {
        List<String> words = new ArrayList<>();
        for (SeasonFinding.Loss loss : SeasonFinding.Loss.values()) {
            words.addAll(ofLoss(
                    loss,
                    losses.stream()
                            .filter(each -> each.loss() == loss)
                            .flatMap(each -> each.rates().stream())
                            .toList()));
        }
        if (losses.stream()
                .anyMatch(each ->
                        each.rates().stream().anyMatch(rate -> rate.more().isPresent()))) {
            words.add(SAY.lossesByChance());
        }
        return words;
    }

    private static List<String> ofLoss(SeasonFinding.Loss loss, List<LossRate> rates) {
        if (rates.stream().allMatch(rate -> rate.noted().came() == 0)) {
            return List.of(SAY.noLosses(of(loss)));
        }
        List<String> words = new ArrayList<>();
        rates.forEach(rate -> rate.more().ifPresent(more -> words.add(more(loss, rate, more))));
        return words.isEmpty() ? List.of(SAY.noLossesMore(of(loss))) : words;
    }

    /** What mats and lamps drew and cost at most; empty where they drew nothing. */
    static String ofEnergy(double kilowattHours, Optional<EnergyPrice> price) {
        if (kilowattHours == 0) {
            return "";
        }
        String drawn = String.format(Locale.ROOT, "%,d", Math.round(kilowattHours));
        return price.map(each -> SAY.energyCosts(drawn, each.of(kilowattHours))).orElseGet(() -> SAY.energy(drawn));
    }

    private static String more(SeasonFinding.Loss loss, LossRate rate, ConfidenceInterval more) {
        return SAY.lossesMore(
                of(loss), rate.of(), rate.noted().came(), rate.noted().of(), (int) Math.round(100 * more.low()), (int)
                        Math.round(100 * more.high()));
    }
}
