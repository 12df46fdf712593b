package warmshelf.finding.season;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.finding.ShareWords;
import warmshelf.finding.WaysWords;
import warmshelf.words.DayWords;
import warmshelf.words.Numbers;

/**
 * A season's findings as one page.
 *
 * @param otherSeasons by which page they are found
 * @param words what it came to
 * @param crops of which some seed is waited for no longer and was counted
 * @param unsettled those still coming, or not counted
 * @param mats the picture of the weeks on mats; null where nothing lay anywhere
 * @param light the same under light
 * @param energy what mats and lamps drew and cost at most, in words; empty where they drew nothing
 * @param grown what growers said in autumn, by variety
 */
record SeasonFindingPage(
        int year,
        List<Integer> otherSeasons,
        List<String> words,
        List<CropLine> crops,
        List<CropLine> unsettled,
        List<HintLine> hints,
        @Nullable WeekChart mats,
        @Nullable WeekChart light,
        List<WeekLine> weeks,
        String energy,
        List<LooksOf> looks,
        List<String> losses,
        List<LossTable> lossTables,
        List<GrownLine> grown) {

    record CropLine(
            String id,
            String name,
            String method,
            int sowings,
            int seeds,
            String came,
            String half,
            int plantedOut,
            int lost) {}

    /** What growers said of a variety. */
    record GrownLine(String crop, String variety, int growers, String words) {}

    record HintLine(String crop, String cropId, List<String> words, String adjusted) {}

    record WeekLine(String monday, String mats, String light, String kilowattHours) {}

    /** Where and when one kind of loss was noted. */
    record LossTable(String of, List<LossLine> lines) {}

    record LossLine(String of, int noted, int sowings, String range) {}

    static SeasonFindingPage of(
            SeasonFinding finding, List<Integer> seasons, List<GrownLine> grown, Optional<EnergyPrice> price) {
        List<SpaceWeek> weeks = finding.weeks();
        return new SeasonFindingPage(
                finding.year(),
                seasons.stream().filter(year -> year != finding.year()).toList(),
                SeasonWords.of(finding.totals()),
                lines(finding.crops(), true),
                lines(finding.crops(), false),
                finding.hints().stream().map(SeasonFindingPage::line).toList(),
                weeks.isEmpty() ? null : WeekChart.of(weeks, true),
                weeks.stream().allMatch(week -> week.underLight() == 0) ? null : WeekChart.of(weeks, false),
                weeks.stream().map(SeasonFindingPage::line).toList(),
                SeasonWords.ofEnergy(finding.kilowattHours(), price),
                finding.looks(),
                SeasonWords.ofLosses(finding.losses()),
                Arrays.stream(SeasonFinding.Loss.values())
                        .map(loss -> new LossTable(SeasonWords.of(loss), lines(finding, loss)))
                        .filter(table -> !table.lines().isEmpty())
                        .toList(),
                grown);
    }

    private static List<LossLine> lines(SeasonFinding finding, SeasonFinding.Loss loss) {
        return finding.losses().stream()
                .filter(losses -> losses.loss() == loss)
                .flatMap(losses -> losses.rates().stream()
                        .filter(rate -> rate.noted().came() > 0)
                        .map(rate -> line(losses.by(), rate)))
                .toList();
    }

    private static List<CropLine> lines(List<CropFinding> crops, boolean settled) {
        return crops.stream()
                .filter(found -> found.came().isPresent() == settled)
                .map(SeasonFindingPage::line)
                .toList();
    }

    private static CropLine line(CropFinding found) {
        return new CropLine(
                found.crop().id(),
                found.crop().name(),
                found.method().word(),
                found.sowings(),
                found.seeds(),
                found.came()
                        .map(share -> "%d %% (%s)"
                                .formatted(Math.round(100 * share.value()), ShareWords.range(share.wilson())))
                        .orElse(found.waiting() == found.sowings() ? "still coming" : "not counted"),
                found.half().isPresent() ? Numbers.oneDecimalAtMost(found.half().getAsDouble()) : "",
                found.plantedOut(),
                found.lost());
    }

    private static HintLine line(MethodHint hint) {
        return new HintLine(
                hint.crop().name(),
                hint.crop().id(),
                WaysWords.of(hint.compared()),
                hint.adjusted().isPresent() ? WaysWords.chance(hint.adjusted().getAsDouble()) : "");
    }

    private static WeekLine line(SpaceWeek week) {
        return new WeekLine(
                DayWords.date(week.monday()),
                percent(week.matShare()),
                percent(week.lightShare()),
                Numbers.oneDecimal(week.wattHours() / 1000.0));
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    private static LossLine line(SeasonFinding.By by, LossRate rate) {
        String name = by == SeasonFinding.By.WEEK
                ? "sown in the week of " + DayWords.date(LocalDate.parse(rate.of()))
                : rate.of();
        return new LossLine(
                name,
                rate.noted().came(),
                rate.noted().of(),
                ShareWords.range(rate.noted().wilson()));
    }
}
