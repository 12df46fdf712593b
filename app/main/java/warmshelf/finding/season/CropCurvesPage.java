package warmshelf.finding.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.finding.CurveChart;
import warmshelf.finding.ShareWords;
import warmshelf.finding.statistics.GerminationCurve;
import warmshelf.finding.statistics.GerminationSpeed;
import warmshelf.words.Numbers;

/**
 * One crop's curves of a season.
 *
 * @param by the word of what sowings are put together by
 * @param chart null where nothing was counted
 * @param notDrawn how many groups stand in the table alone, because so many lines could not be told apart
 */
record CropCurvesPage(
        int year,
        String cropId,
        String crop,
        String by,
        @Nullable CurveChart chart,
        int notDrawn,
        List<Line> lines,
        List<CropCurves.Pair> oneName,
        List<TroubleLine> troubles) {

    record Line(
            String letter,
            String name,
            int sowings,
            int seeds,
            int came,
            String share,
            String wilson,
            String exact,
            String median,
            String half,
            String meanTime,
            String spread) {}

    record TroubleLine(String id, String title, String grower, String words) {}

    static CropCurvesPage of(int year, Crop crop, CropCurves.By by, CropCurves curves) {
        List<CropCurves.Group> groups = curves.groups().stream()
                .sorted(Comparator.comparingInt(
                        (CropCurves.Group group) -> -group.seeds().times().size()))
                .toList();
        List<GerminationCurve> drawn =
                groups.stream().map(group -> group.seeds().curve()).toList();
        List<Line> lines = new ArrayList<>();
        List<CurveChart.Named> named = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            lines.add(line(i, groups.get(i), drawn.get(i)));
            named.add(CurveChart.Named.numbered(i, groups.get(i).name(), drawn.get(i)));
        }
        return new CropCurvesPage(
                year,
                crop.id(),
                crop.name(),
                by.word(),
                groups.isEmpty() ? null : CurveChart.of(named),
                Math.max(0, groups.size() - CurveChart.MOST),
                lines,
                curves.oneName(),
                curves.troubled().stream().map(CropCurvesPage::line).toList());
    }

    private static Line line(int number, CropCurves.Group group, GerminationCurve curve) {
        var share = group.seeds().sprouted();
        GerminationSpeed speed = GerminationSpeed.of(group.seeds().times());
        return new Line(
                number < CurveChart.MOST ? String.valueOf((char) ('A' + number)) : "",
                group.name(),
                group.sowings(),
                share.of(),
                share.came(),
                Math.round(100 * share.value()) + " %",
                ShareWords.range(share.wilson()),
                ShareWords.range(share.exact()),
                days(curve.median()),
                days(curve.halfOfThoseThatCame()),
                days(speed.meanTime()),
                days(speed.spread()));
    }

    private static String days(OptionalDouble days) {
        return days.isPresent() ? Numbers.oneDecimal(days.getAsDouble()) : "–";
    }

    private static TroubleLine line(CropCurves.Troubled troubled) {
        return new TroubleLine(
                troubled.sowing().sowing().id().toString(),
                troubled.sowing().sowing().title(),
                troubled.sowing().sowing().grower().name(),
                troubled.troubles().stream().sorted().map(SeasonWords::of).collect(Collectors.joining("; ")));
    }
}
