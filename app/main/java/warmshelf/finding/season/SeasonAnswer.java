package warmshelf.finding.season;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;
import warmshelf.Settings;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.finding.statistics.ObservedShare;
import warmshelf.frost.evidence.EvidenceStore;
import warmshelf.sowing.SowingStores;

/** A season as the command line prints it. */
public final class SeasonAnswer {
    private SeasonAnswer() {}

    /**
     * Reads a season from a data folder.
     *
     * @throws BadInput where the folder holds no group's data
     */
    public static Map<String, Object> of(Path folder, int season, Clock clock) {
        if (!Files.exists(folder.resolve("warmshelf.mv.db"))) {
            throw new BadInput(
                    "The data folder '%s' holds no group's data (no file warmshelf.mv.db).".formatted(folder));
        }
        try (Database database = Settings.onFreePort(folder).openDatabase()) {
            Audit audit = new Audit(clock);
            SowingStores stores = SowingStores.over(database, audit, EvidenceStore.over(database, audit));
            return of(new SeasonStore(database.sql(), stores.sowings(), stores.entries()).find(season));
        }
    }

    private static Map<String, Object> of(SeasonFinding finding) {
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("season", finding.year());
        answer.put("totals", totals(finding.totals()));
        answer.put("crops", finding.crops().stream().map(SeasonAnswer::crop).toList());
        answer.put("weeks", finding.weeks().stream().map(SeasonAnswer::week).toList());
        answer.put("kilowattHoursAtMost", finding.kilowattHours());
        answer.put("looks", finding.looks());
        answer.put(
                "losses",
                finding.losses().stream()
                        .flatMap(losses -> losses.rates().stream().map(rate -> loss(losses, rate)))
                        .toList());
        answer.put("words", String.join(" ", SeasonWords.of(finding.totals())));
        return answer;
    }

    private static Map<String, Object> totals(SeasonTotals totals) {
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("asked", totals.asked());
        answer.put("members", totals.members());
        answer.put("sown", totals.sown());
        answer.put("withdrawn", totals.withdrawn());
        answer.put("underWay", totals.underWay());
        answer.put("seeds", totals.seeds());
        answer.put("counted", totals.counted());
        answer.put("came", totals.came());
        answer.put("plantedOut", totals.plantedOut());
        answer.put("given", totals.given());
        answer.put("lost", totals.lost());
        answer.put("givenUp", totals.givenUp());
        Map<String, Integer> reasons = new LinkedHashMap<>();
        totals.reasons().forEach((problem, sowings) -> reasons.put(problem.word(), sowings));
        answer.put("reasons", reasons);
        return answer;
    }

    private static Map<String, @Nullable Object> crop(CropFinding found) {
        Map<String, @Nullable Object> answer = new LinkedHashMap<>();
        answer.put("crop", found.crop().id());
        answer.put("method", found.method().word());
        answer.put("sowings", found.sowings());
        answer.put("waiting", found.waiting());
        answer.put("withheld", found.withheld());
        answer.put("seeds", found.seeds());
        answer.put("share", found.came().map(SeasonAnswer::share).orElse(null));
        answer.put("halfDays", found.half().isPresent() ? (Double) found.half().getAsDouble() : null);
        answer.put("plantedOut", found.plantedOut());
        answer.put("lost", found.lost());
        return answer;
    }

    private static Map<String, Object> share(ObservedShare share) {
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("came", share.came());
        answer.put("of", share.of());
        answer.put("value", share.value());
        answer.put("wilsonLow", share.wilson().low());
        answer.put("wilsonHigh", share.wilson().high());
        return answer;
    }

    private static Map<String, Object> week(SpaceWeek week) {
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("monday", week.monday());
        answer.put("mats", week.matShare());
        answer.put("underLight", week.lightShare());
        answer.put("kilowattHoursAtMost", week.wattHours() / 1000.0);
        return answer;
    }

    private static Map<String, Object> loss(SeasonFinding.Losses losses, LossRate rate) {
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("loss", losses.loss().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        answer.put("by", losses.by().name().toLowerCase(Locale.ROOT));
        answer.put("of", rate.of());
        answer.put("noted", rate.noted().came());
        answer.put("sowings", rate.noted().of());
        answer.put("moreThanChance", rate.more().isPresent());
        return answer;
    }
}
