package warmshelf.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import warmshelf.crop.CelsiusRange;
import warmshelf.crop.Crop;
import warmshelf.crop.CropHazard;
import warmshelf.crop.Method;

/**
 * Gives the advice that belongs to each step of one sowing.
 *
 * @param comfortable the temperatures at which the crop comes up well
 * @param hazards those of the crop, with {@code TREATED} where this lot carries a pesticide
 */
public record Advisor(Crop crop, Method method, CelsiusRange comfortable, Set<CropHazard> hazards, Measures measures) {
    private static final String COMMON = "common practice";

    public StepAdvice on(Step step) {
        return switch (step) {
            case SOAK -> soak();
            case SOW -> method == Method.BAG ? sowInBag() : sowInCells();
            case FIRST_LOOK -> look();
            case MOVE_TO_CELLS -> moveToCells();
            case OFF_HEAT -> offHeat();
            case LIGHT -> light();
            case FIRST_FEED -> feed();
            case POT_ON -> potOn();
            case HARDEN_OFF -> hardenOff();
            case PLANT_OUT -> plantOut();
            case RIPE -> ripe();
        };
    }

    private StepAdvice soak() {
        if (hazards.contains(CropHazard.TREATED)) {
            return new StepAdvice(
                    Step.SOAK,
                    "Leave this step out: the seed is treated, and a soak would wash the pesticide onto your hands.",
                    cautions(Step.SOAK),
                    "National Pesticide Information Center: treated seed");
        }
        String how =
                "Cover the seed with lukewarm water in a small labelled cup in the evening, drain it in the morning and"
                        + " sow at once. Twelve hours do; no seed needs more than a day under water.";
        return new StepAdvice(Step.SOAK, how, cautions(Step.SOAK, Caution.PEROXIDE), COMMON);
    }

    private StepAdvice sowInBag() {
        String how =
                ("Lay the seeds apart on kitchen paper, wet it and let it drip until no water runs, fold it into a bag"
                                + " and leave the bag a little open. Label it in pencil: crop, variety, day, whose. Lay it flat on"
                                + " the mat at %s.")
                        .formatted(range());
        return new StepAdvice(Step.SOW, how, cautions(Step.SOW, Caution.ELECTRICITY), COMMON);
    }

    private StepAdvice sowInCells() {
        String how =
                "Fill the cells with damp seed compost and level it. %s Water from below, cover, and label in pencil: crop,"
                                .formatted(depth())
                        + " variety, day, whose. Stand the tray at %s.".formatted(range());
        return new StepAdvice(
                Step.SOW,
                how,
                cautions(Step.SOW, Caution.COMPOST_DUST, Caution.ELECTRICITY),
                crop.source() + "; labels and watering from below: " + COMMON);
    }

    private String depth() {
        Double depth = crop.depthMm();
        if (crop.light().equals("yes")) {
            return "Press the seed onto the surface: it needs light to come up, so cover it with no more than a"
                    + " dusting of vermiculite.";
        }
        if (depth == null) {
            return "Cover the seed with two to three times its own thickness.";
        }
        return "Sow %s deep; perlite or vermiculite on top stays lighter and drier than compost."
                .formatted(measures.length(depth));
    }

    private StepAdvice look() {
        String how = method == Method.BAG
                ? "Open the bag over a clean plate. Look for white root tips; count them. Keep the paper damp, not"
                        + " wet; take out mouldy seeds with tweezers and throw them away."
                : "Look for green loops or leaves; count them. The surface should be damp, not wet. Threads or a grey"
                        + " fur on the surface, or seedlings fallen over at the foot, are damping-off: air it, water"
                        + " less, note it.";
        return new StepAdvice(
                Step.FIRST_LOOK, how, cautions(Step.FIRST_LOOK, Caution.MOULD, Caution.ELECTRICITY), COMMON);
    }

    private StepAdvice moveToCells() {
        String how =
                ("Move each seed when its root is %s to %s long: a dip in damp compost, root down, held by the seed"
                                + " coat or with tweezers, never by the root. Cover lightly and water with lukewarm water.")
                        .formatted(measures.length(3), measures.length(6));
        return new StepAdvice(Step.MOVE_TO_CELLS, how, cautions(Step.MOVE_TO_CELLS, Caution.COMPOST_DUST), COMMON);
    }

    private StepAdvice offHeat() {
        String how =
                "Take it off the mat the day most of it is up, and take off the cover. It grows on sturdier at %s by day."
                        .formatted(measures.temperatureRange(18, 24));
        return new StepAdvice(
                Step.OFF_HEAT,
                how,
                cautions(Step.OFF_HEAT, Caution.ELECTRICITY),
                "Univ. of Delaware Extension: times and temperatures for vegetable transplant production");
    }

    private StepAdvice light() {
        String how = ("Set it under the light with the lamp about %s above the leaves, 14 to 16 hours a day on a"
                        + " timer, dark at night. Raise the lamp as they grow; where your hand at leaf height feels warm, it is"
                        + " too near. Sources give from %s for tubes to %s for LED lamps.")
                .formatted(measures.length(100), measures.length(50), measures.length(300));
        return new StepAdvice(
                Step.LIGHT,
                how,
                cautions(Step.LIGHT, Caution.ELECTRICITY, Caution.HIGH_SHELF),
                "Iowa State Univ. Extension FAQ: setting up supplemental lights for seedlings; other extension pages"
                        + " differ");
    }

    private StepAdvice feed() {
        return new StepAdvice(
                Step.FIRST_FEED,
                "When the first true leaves are open, water once a week from below with liquid feed at half the"
                        + " strength on its label; one extension column gives a quarter. Before true leaves seedlings need"
                        + " none.",
                cautions(Step.FIRST_FEED, Caution.FEED),
                "half strength: common practice; a quarter: Univ. of Minnesota Extension educator column");
    }

    private StepAdvice potOn() {
        return new StepAdvice(
                Step.POT_ON,
                "When roots hold the plug together, set it into a pot about twice as wide, in damp compost. Lift by"
                        + " the rootball or by a leaf, never by the stem.",
                cautions(Step.POT_ON, Caution.COMPOST_DUST),
                "Univ. of Minnesota Extension educator column: more tips on seedlings; timing: common practice");
    }

    private StepAdvice hardenOff() {
        return new StepAdvice(
                Step.HARDEN_OFF,
                "Stand the plants outside in shade and out of the wind, an hour or two the first day and longer each"
                        + " day; bring them in for cold nights. Water less often, but deeply.",
                cautions(Step.HARDEN_OFF, Caution.LIFTING),
                "Univ. of California manual, Unit 1.3: hardening off (3 days to 2 weeks); column of Master Gardeners:"
                        + " 7 to 10 days");
    }

    private StepAdvice plantOut() {
        Double nights = crop.nightMinimumC();
        String cold = nights == null
                ? ""
                : " Wait while nights under %s are forecast.".formatted(measures.temperature(nights));
        return new StepAdvice(
                Step.PLANT_OUT,
                "Plant in the evening or under cloud, water well, and keep a cover at hand for a late frost." + cold,
                cautions(Step.PLANT_OUT),
                crop.source());
    }

    private StepAdvice ripe() {
        return new StepAdvice(
                Step.RIPE,
                "Note the first harvest: it tells the group which lots and dates worked.",
                cautions(Step.RIPE),
                crop.source());
    }

    private String range() {
        return measures.temperatureRange(comfortable.low(), comfortable.high());
    }

    /** What the crop and its seed ask for first, then what the work itself does. */
    private List<Caution> cautions(Step step, Caution... ofTheWork) {
        List<Caution> cautions = new ArrayList<>(Caution.of(hazards, step));
        cautions.addAll(List.of(ofTheWork));
        return cautions;
    }
}
