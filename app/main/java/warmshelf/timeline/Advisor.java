package warmshelf.timeline;

import static warmshelf.timeline.TimelineSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import warmshelf.crop.BagFit;
import warmshelf.crop.CelsiusRange;
import warmshelf.crop.Crop;
import warmshelf.crop.CropHazard;
import warmshelf.crop.HeatNeed;
import warmshelf.crop.Method;
import warmshelf.crop.UsualSowing;
import warmshelf.guide.Advice;
import warmshelf.words.Units;

/**
 * Gives the advice that belongs to each step of one sowing.
 *
 * @param comfortable the temperatures at which the crop comes up well
 * @param hazards those of the crop, with {@code TREATED} where this lot carries a pesticide
 * @param units those of the reader
 */
public record Advisor(Crop crop, Method method, CelsiusRange comfortable, Set<CropHazard> hazards, Units units) {

    public StepAdvice on(Step step) {
        return new StepAdvice(step, text(step, "how"), cautions(step), text(step, "source"));
    }

    private String text(Step step, String section) {
        return Advice.in(units).say(step.file(), section(step, section), values());
    }

    /** Treated seed is not soaked; all else depends on where the seed lies. */
    private String section(Step step, String section) {
        boolean treated = step == Step.SOAK && hazards.contains(CropHazard.TREATED);
        return Advice.section(step.file(), section, treated ? "with treated seed" : method.where());
    }

    private Map<String, Object> values() {
        Double depth = crop.depthMm();
        Double nights = crop.nightMinimumC();
        return Map.of(
                "dust",
                BagFit.of(crop) == BagFit.TOO_FINE,
                "ownPot",
                UsualSowing.of(crop).isPresent(),
                "warmth",
                HeatNeed.isKeptOffMats(crop)
                        ? SAY.roomTemperature(units.temperature(HeatNeed.ROOM_C))
                        : units.temperatureRange(comfortable.low(), comfortable.high()),
                "onSurface",
                crop.light().isNeeded(),
                "depth",
                depth == null ? "" : units.length(depth),
                "nights",
                nights == null ? "" : units.temperature(nights),
                "crop",
                crop.source());
    }

    /** What the crop and its seed ask for first, then what the work itself does. */
    private List<Caution> cautions(Step step) {
        List<Caution> cautions = new ArrayList<>(Caution.of(hazards, step));
        cautions.addAll(Caution.ofTheWork(step.file(), section(step, "cautions")));
        return cautions;
    }
}
