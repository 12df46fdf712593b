package warmshelf.timeline;

import java.util.EnumSet;
import java.util.Set;
import warmshelf.crop.CropHazard;

/** The cautions that stand beside steps, from the reference table of hazards; each says whom to believe before us. */
public enum Caution {
    TREATED_SEED(
            Stands.OPEN,
            "Treated seed: chemical-resistant gloves, never soak it, wash afterwards.",
            "Treated seed (often brightly dyed): never soak it or pre-sprout it with bare hands. Chemical-resistant"
                    + " gloves, wash afterwards, never for food or feed. The seed label and a pesticide information centre"
                    + " decide."),
    BURNS(
            Stands.OPEN,
            "Burns skin and eyes: rubber gloves, hands off your face.",
            "Seed and fruit of hot kinds burn skin and eyes: wear rubber gloves, do not touch your face or lenses,"
                    + " wash with soap and warm water. If it hurts, ask a poison centre."),
    POISONOUS(
            Stands.OPEN,
            "Poisonous plant: gloves, a clear label, away from salad trays and children.",
            "This plant is poisonous: gloves, a clear label, and a place apart from salad trays and children. If some"
                    + " is eaten, call a poison centre."),
    IRRITATES(
            Stands.OPEN,
            "Irritates the skin: gloves and long sleeves.",
            "This plant irritates the skin: gloves and long sleeves, and wash afterwards. A doctor knows better than"
                    + " we."),
    ELECTRICITY(
            Stands.OPEN,
            "Electricity near water: dry hands; unplug before watering.",
            "Mats and lights near water: only on an outlet with a residual-current switch (GFCI or RCD), with a drip"
                    + " loop in the cord; unplug before watering. Local codes apply; wiring is for a licensed"
                    + " electrician."),
    PEROXIDE(
            Stands.OPEN_IN_BRIEF,
            "Hydrogen peroxide harms eyes and skin: the 3 % kind only, gloves and eye protection.",
            "Hydrogen peroxide is optional and the evidence for it is thin: many use half household 3 % solution, half"
                    + " water, for five minutes, then rinse (common practice). Stronger or longer soaks harm seed, and"
                    + " strong grades burn skin: never buy them. Gloves and eye protection; keep it in its own bottle,"
                    + " away from children and other cleaners; in the eyes, rinse for 15 minutes and call a poison"
                    + " centre."),
    COMPOST_DUST(
            Stands.FOLDED,
            "Compost dust: damp it first, mask and gloves.",
            "Compost can carry Legionella and mould: open the bag away from your face, damp it before tipping, wear a"
                    + " mask and gloves, air the room, wash your hands. People over 50, smokers and the ill are most at"
                    + " risk; see a doctor about flu-like illness 2 to 10 days later."),
    MOULD(
            Stands.FOLDED,
            "Mould: keep your face away from it.",
            "With asthma or a mould allergy let someone else open bags and trays, or wear a mask; a doctor knows"
                    + " better than we."),
    HIGH_SHELF(
            Stands.FOLDED,
            "High shelves: a step stool, never a chair.",
            "High shelves: a step stool, never a chair; heavy trays belong between knee and shoulder."),
    FEED(
            Stands.FOLDED,
            "Feed: wash your hands.",
            "Wash your hands after handling feed, and keep it away from children."),
    LIFTING(Stands.FOLDED, "Heavy trays: split them.", "Split heavy trays and carry them close to the body.");

    private enum Stands {
        OPEN,
        /** Concerns only whoever chooses to: a line stands open, the whole with how to do it. */
        OPEN_IN_BRIEF,
        FOLDED
    }

    /** The steps at which somebody handles seed. */
    private static final Set<Step> SEED = EnumSet.of(Step.SOAK, Step.SOW, Step.FIRST_LOOK, Step.MOVE_TO_CELLS);
    /** The steps at which somebody handles the plant, or what it is grown from. */
    private static final Set<Step> PLANT = EnumSet.complementOf(EnumSet.of(Step.OFF_HEAT, Step.LIGHT, Step.FIRST_FEED));

    private final Stands stands;
    private final String brief;
    private final String sentence;

    Caution(Stands stands, String brief, String sentence) {
        this.stands = stands;
        this.brief = brief;
        this.sentence = sentence;
    }

    /** Whether it concerns skin, eyes, poison or electricity, and so is never folded away. */
    public boolean standsOpen() {
        return stands != Stands.FOLDED;
    }

    /** Whether a line of it is enough at the step, because the whole concerns only whoever chooses to do it. */
    public boolean briefIsEnough() {
        return stands == Stands.OPEN_IN_BRIEF;
    }

    /** In one line, for a place where the whole of it stands nearby. */
    public String brief() {
        return brief;
    }

    /** The whole of it. */
    public String sentence() {
        return sentence;
    }

    /** What a crop's hazards ask for at a step. */
    public static Set<Caution> of(Set<CropHazard> hazards, Step step) {
        Set<Caution> cautions = EnumSet.noneOf(Caution.class);
        for (CropHazard hazard : hazards) {
            if (steps(hazard).contains(step)) {
                cautions.add(of(hazard));
            }
        }
        return cautions;
    }

    private static Caution of(CropHazard hazard) {
        return switch (hazard) {
            case BURNS -> BURNS;
            case POISONOUS -> POISONOUS;
            case IRRITATES -> IRRITATES;
            case TREATED -> TREATED_SEED;
        };
    }

    private static Set<Step> steps(CropHazard hazard) {
        return switch (hazard) {
            case TREATED -> SEED;
            case BURNS -> EnumSet.of(Step.SOAK, Step.SOW, Step.FIRST_LOOK, Step.MOVE_TO_CELLS, Step.RIPE);
            case POISONOUS -> PLANT;
            case IRRITATES -> EnumSet.of(Step.POT_ON, Step.HARDEN_OFF, Step.PLANT_OUT, Step.RIPE);
        };
    }
}
