package warmshelf.timeline;

/** The cautions that stand beside steps, from the reference table of hazards; each says whom to believe before us. */
public final class Cautions {
    public static final String PEROXIDE =
            "Hydrogen peroxide is optional and the evidence for it is thin: many use half household 3 % solution, half water, for"
                    + " five minutes, then rinse (common practice). Stronger or longer soaks harm seed, and strong grades burn skin: never buy them. Gloves and eye protection;"
                    + " keep it in its own bottle, away from children and other cleaners; in the eyes, rinse for 15 minutes and"
                    + " call a poison centre.";

    public static final String TREATED_SEED =
            "Treated seed (often brightly dyed): never soak it or pre-sprout it with bare hands. Chemical-resistant gloves, wash"
                    + " afterwards, never for food or feed. The seed label and a pesticide information centre decide.";

    public static final String HOT_PEPPER =
            "Seed of very hot peppers burns: wear rubber gloves, do not touch your face or lenses, wash with soap and warm water."
                    + " If it hurts, ask a poison centre.";

    public static final String POISONOUS =
            "This plant is poisonous: gloves, a clear label, and a place apart from salad trays and children. If some is eaten, call"
                    + " a poison centre.";

    public static final String COMPOST_DUST =
            "Compost can carry Legionella and mould: open the bag away from your face, damp it before tipping, wear a mask and"
                    + " gloves, air the room, wash your hands. People over 50, smokers and the ill are most at risk; see a doctor"
                    + " about flu-like illness 2 to 10 days later.";

    public static final String MOULD =
            "With asthma or a mould allergy let someone else open bags and trays, or wear a mask; a doctor knows better than we.";

    public static final String ELECTRICITY =
            "Mats and lights near water: only on an outlet with a residual-current switch (GFCI or RCD), with a drip loop in the"
                    + " cord; unplug before watering. Local codes apply; wiring is for a licensed electrician.";

    public static final String HIGH_SHELF =
            "High shelves: a step stool, never a chair; heavy trays belong between knee and shoulder.";

    private Cautions() {}
}
