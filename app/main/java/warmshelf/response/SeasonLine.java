package warmshelf.response;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.BoltingLimit;
import warmshelf.crop.ColdLimit;
import warmshelf.crop.Crop;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.crop.LifeCycle;
import warmshelf.crop.QuickKinds;
import warmshelf.crop.SeasonTable;
import warmshelf.crop.SecondCrop;
import warmshelf.guide.Source;
import warmshelf.timeline.SeasonFacts;
import warmshelf.words.Counted;
import warmshelf.words.Units;

/**
 * What is known of one end of a crop's season, as its page shows it.
 *
 * @param source who says so; null: what holds of its whole class
 */
public record SeasonLine(
        String label, String words, @Nullable Source source) {
    private static final ResponseSentences SAY = ResponseSentences.SAY;

    /** All that is known of a crop. */
    static List<SeasonLine> of(Crop crop, Units units) {
        return Stream.of(
                        Optional.of(line(SAY.bears(), bears(ColdLimit.of(crop), units), SeasonTable.COLD, crop)),
                        BoltingLimit.of(crop)
                                .map(limit -> line(SAY.bolts(), bolts(limit, units), SeasonTable.BOLTING, crop)),
                        QuickKinds.of(crop.id())
                                .map(DaysToMaturity::words)
                                .map(days -> line(SAY.quickestKinds(), days, SeasonTable.QUICK_KINDS, crop)),
                        SecondCrop.isForAutumn(crop)
                                ? Optional.of(line(SAY.autumn(), SAY.sownForAutumn(), SeasonTable.AUTUMN, crop))
                                : Optional.<SeasonLine>empty(),
                        SecondCrop.overWinter(crop)
                                .map(span -> Counted.weeks(span.least() / 7, span.most() / 7))
                                .map(weeks ->
                                        line(SAY.winter(), SAY.beforeFirstFrost(weeks), SeasonTable.OVER_WINTER, crop)),
                        SecondCrop.again(crop)
                                .map(span -> line(SAY.again(), SAY.every(days(span)), SeasonTable.AGAIN, crop)),
                        LifeCycle.of(crop)
                                .map(cycle -> line(SAY.years(), SeasonFacts.life(cycle), SeasonTable.LIFE, crop)))
                .flatMap(Optional::stream)
                .toList();
    }

    private static SeasonLine line(String label, String words, SeasonTable table, Crop crop) {
        return new SeasonLine(
                label,
                words,
                table.origin(crop)
                        .map(origin -> Source.of(origin.title(), origin.url(), origin.standing()))
                        .orElse(null));
    }

    private static String bears(ColdLimit limit, Units units) {
        if (limit.frostKills()) {
            return SAY.noFrost();
        }
        String coldest = units.temperature(limit.bearsC());
        Double other = limit.otherC();
        return other == null || other == limit.bearsC()
                ? SAY.bearsDownTo(coldest)
                : SAY.bearsDownToOr(coldest, units.temperature(other));
    }

    private static String bolts(BoltingLimit limit, Units units) {
        return SAY.boltsAfter(Counted.days(limit.days()), units.temperature(limit.belowC()));
    }

    private static String days(SecondCrop.Span span) {
        return span.least() == span.most()
                ? Counted.days(span.least())
                : SAY.daysFromTo(span.least(), Counted.days(span.most()));
    }
}
