package warmshelf.timeline;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.BoltingLimit;
import warmshelf.crop.Crop;
import warmshelf.crop.LifeCycle;
import warmshelf.crop.Method;
import warmshelf.words.Numbers;
import warmshelf.words.Units;

/** What {@code timeline} prints, as names and values. */
final class TimelineAnswer {
    private TimelineAnswer() {}

    /** @param all the timelines of every part of the year for which the crop can be sown */
    static Map<String, @Nullable Object> of(
            Crop crop, Method method, GivenFrost.Known frost, Timeline timeline, Map<SeasonPart, Timeline> all) {
        Map<String, @Nullable Object> answer = new LinkedHashMap<>();
        answer.put("crop", crop.id());
        answer.put("method", method.word());
        answer.put("part", timeline.season().part().word());
        answer.put("verdict", timeline.verdict().word());
        answer.put("frost", frost(frost));
        answer.put("harvest", timeline.harvest().map(TimelineAnswer::harvest).orElse(null));
        answer.put("quickest", timeline.quickest().map(TimelineAnswer::quickest).orElse(null));
        answer.put("steps", timeline.steps().stream().map(TimelineAnswer::step).toList());
        answer.put("sowOutside", timeline.outside().map(TimelineAnswer::outside).orElse(null));
        answer.put("warmDays", timeline.warmDays());
        answer.put("parts", all.values().stream().map(TimelineAnswer::part).toList());
        addSeason(answer, timeline.season());
        answer.put("notes", timeline.noteWords(Units.METRIC));
        return answer;
    }

    private static void addSeason(Map<String, @Nullable Object> answer, SeasonFacts season) {
        answer.put("again", season.again().map(TimelineAnswer::again).orElse(null));
        answer.put("standsUntil", season.standsUntil().orElse(null));
        answer.put("life", season.life().map(TimelineAnswer::life).orElse(null));
        answer.put("bolting", season.bolting().map(TimelineAnswer::bolting).orElse(null));
    }

    private static Map<String, @Nullable Object> frost(GivenFrost.Known frost) {
        Map<String, @Nullable Object> answer = new LinkedHashMap<>();
        answer.put("lastFrost", frost.lastFrost());
        answer.put("laterFrostChance", hundredths(frost.chance()));
        answer.put("words", frost.words());
        return answer;
    }

    private static Map<String, @Nullable Object> outside(SowingOutside outside) {
        Map<String, @Nullable Object> answer = new LinkedHashMap<>();
        OptionalDouble soil = outside.usual().soilC();
        answer.put("usually", outside.usual().place().word());
        answer.put("from", outside.from());
        answer.put("soilC", soil.isPresent() ? (Double) soil.getAsDouble() : null);
        answer.put("why", outside.why());
        answer.put("source", outside.usual().source());
        return answer;
    }

    private static Map<String, @Nullable Object> harvest(HarvestOutlook harvest) {
        Map<String, @Nullable Object> answer = new LinkedHashMap<>();
        answer.put("first", harvest.first());
        answer.put("half", harvest.half());
        answer.put("chanceFirst", hundredths(harvest.chanceFirst()));
        answer.put("chanceHalf", hundredths(harvest.chanceHalf()));
        return answer;
    }

    private static @Nullable Double hundredths(OptionalDouble chance) {
        return chance.isPresent() ? (Double) Numbers.hundredths(chance.getAsDouble()) : null;
    }

    private static Map<String, @Nullable Object> quickest(QuickestKinds quickest) {
        Map<String, @Nullable Object> answer = new LinkedHashMap<>();
        answer.put("daysMin", quickest.days().min());
        answer.put("daysMax", quickest.days().max());
        answer.put("from", quickest.days().basis().word());
        answer.put("harvest", harvest(quickest.harvest()));
        answer.put("alone", quickest.alone());
        return answer;
    }

    private static Map<String, @Nullable Object> part(Timeline timeline) {
        Map<String, @Nullable Object> answer = new LinkedHashMap<>();
        answer.put("part", timeline.season().part().word());
        answer.put("verdict", timeline.verdict().word());
        answer.put("sow", timeline.step(Step.SOW).map(TimelineAnswer::days).orElse(null));
        return answer;
    }

    private static Map<String, LocalDate> days(TimelineStep step) {
        Map<String, LocalDate> answer = new LinkedHashMap<>();
        answer.put("earliest", step.earliest());
        answer.put("ideal", step.ideal());
        answer.put("latest", step.latest());
        return answer;
    }

    private static Map<String, Object> step(TimelineStep step) {
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("step", step.step().word());
        answer.putAll(days(step));
        answer.put("why", step.why());
        return answer;
    }

    private static Map<String, Object> again(SowAgain again) {
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("everyDays", List.of(again.daysMin(), again.daysMax()));
        answer.put("until", again.until());
        return answer;
    }

    private static Map<String, @Nullable Object> life(LifeCycle life) {
        Map<String, @Nullable Object> answer = new LinkedHashMap<>();
        answer.put("life", life.life().word());
        answer.put("cropInYear", life.cropInYear());
        answer.put("flowersInYear", life.flowersInYear());
        return answer;
    }

    private static Map<String, Object> bolting(BoltingLimit limit) {
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("belowC", limit.belowC());
        answer.put("days", limit.days());
        return answer;
    }
}
