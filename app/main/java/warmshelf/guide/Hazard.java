package warmshelf.guide;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import warmshelf.crop.CropHazard;
import warmshelf.timeline.Caution;

/** What can hurt someone at a step: the usual caution, and the rows of the table of hazards that it rests on. */
public enum Hazard {
    TREATED_SEED(
            "treated seed",
            Caution.TREATED_SEED.sentence(),
            "the seed label, a pesticide information centre, state seed law",
            "Pesticide-treated seed",
            "Treated seed protective wear",
            "Treated seed labelling"),
    PEROXIDE(
            "hydrogen peroxide",
            Caution.PEROXIDE.sentence(),
            "a poison centre",
            "Hydrogen peroxide, household 3-9%",
            "Hydrogen peroxide, eye contact"),
    HOT_PEPPER(
            "seed of very hot peppers",
            Caution.BURNS.sentence(),
            "a poison centre (US 1-800-222-1222)",
            "Capsaicin when handling hot fruit or extracting seed"),
    COMPOST(
            "compost dust",
            Caution.COMPOST_DUST.sentence(),
            "your state health department, a doctor",
            "Legionella longbeachae in compost and potting mix",
            "Legionella: first steps",
            "Legionella: work area",
            "Legionella risk factors",
            "Mould and compost dust (other)"),
    MOULD(
            "mould",
            Caution.MOULD.sentence(),
            "a doctor, the occupational health authority",
            "Mould and compost dust (other)"),
    ELECTRICITY(
            "electricity near water",
            Caution.ELECTRICITY.sentence(),
            "the electrical code authority, a licensed electrician",
            "Electric heat mats and lights near water",
            "RCD outside the US",
            "Water, drip loops and cord height"),
    MATS(
            "mats and cords",
            "Only mats made for plants: an ordinary heating pad is not safe under damp soil. A mat goes straight into"
                    + " a wall outlet, never into a power strip, and no strip or cord into another. Extension cords are"
                    + " for a while, not for good. Load a circuit to at most 80 % of its rating: the page of each site"
                    + " reckons it.",
            "the maker’s instructions, the local inspector, the fire marshal",
            "Home heating pads under trays",
            "Power strips with heating loads",
            "Daisy-chained power strips",
            "Extension cord as permanent wiring",
            "Temporary wiring limit",
            "Continuous load",
            "One plug-in appliance on a branch circuit"),
    HIGH_SHELF(
            "high shelves",
            Caution.HIGH_SHELF.sentence(),
            "the workplace safety authority",
            "Ladders and high shelves"),
    LIFTING(
            "lifting",
            "Split heavy bags and trays, carry them close to the body on a level floor, or take a trolley.",
            "the local workplace safety body",
            "Lifting bags of compost and trays"),
    BLEACH(
            "bleach",
            "Bleach: gloves and fresh air, and never together with acids, ammonia or other cleaners. The label on the"
                    + " bottle decides.",
            "the product label, a poison centre",
            "Bleach for cleaning trays"),
    POISONOUS(
            "poisonous plants",
            "Some ornamentals are poisonous, and so are tomato leaves: label them, keep them apart from salad trays"
                    + " and children, wear gloves, and nobody puts any part of a plant into the mouth. Datura, castor bean"
                    + " and poison hemlock have no place in a shared room. If some is eaten, call a poison centre.",
            "a poison centre, a hospital",
            "Foxglove",
            "Castor bean",
            "Monkshood, delphinium, angel trumpets, flowering tobacco, four o'clock, tomato foliage",
            "Monkshood",
            "Datura, tree tobacco, oleander, poison hemlock"),
    SKIN(
            "leaves that irritate",
            "Some leaves and saps irritate the skin: gloves and long sleeves; a doctor knows better than we.",
            "a doctor, a poison centre",
            "Skin reactions from plants");

    /** Those of single crops: where a crop is named that has them not, they are left out. */
    private static final Set<Hazard> OF_SOME_CROPS = EnumSet.of(HOT_PEPPER, SKIN);

    private final String title;
    private final String caution;
    private final String deferTo;
    // A list made by List.of, which nobody can change.
    @SuppressWarnings("ImmutableEnumChecker")
    private final List<String> hazards;

    Hazard(String title, String caution, String deferTo, String... hazards) {
        this.title = title;
        this.caution = caution;
        this.deferTo = deferTo;
        this.hazards = List.of(hazards);
    }

    /** What is dangerous, in a word or a few. */
    public String title() {
        return title;
    }

    /** Where its caution stands on a page. */
    public String word() {
        return title.replace(' ', '-');
    }

    public String caution() {
        return caution;
    }

    /**
     * In one line, for before the steps, where it concerns skin, eyes, poison or electricity; empty for the rest, whose name is
     * enough there.
     */
    public String brief() {
        return switch (this) {
            case TREATED_SEED -> Caution.TREATED_SEED.brief();
            case PEROXIDE -> Caution.PEROXIDE.brief();
            case HOT_PEPPER -> Caution.BURNS.brief();
            case ELECTRICITY -> Caution.ELECTRICITY.brief();
            case MATS -> "Only mats made for plants, straight into a wall outlet.";
            case BLEACH -> "Bleach: gloves, fresh air, never with other cleaners.";
            case POISONOUS -> "Poisonous plants: gloves, a clear label, away from salad trays and children.";
            case SKIN -> "Leaves and sap that irritate: gloves and long sleeves.";
            case COMPOST, MOULD, HIGH_SHELF, LIFTING -> "";
        };
    }

    boolean isOfSomeCrops() {
        return OF_SOME_CROPS.contains(this);
    }

    /** The same for a hazard of a crop. */
    static Hazard of(CropHazard hazard) {
        return switch (hazard) {
            case BURNS -> HOT_PEPPER;
            case POISONOUS -> POISONOUS;
            case IRRITATES -> SKIN;
            case TREATED -> TREATED_SEED;
        };
    }

    /** What it rests on. */
    List<SafetyRow> rows() {
        return hazards.stream().map(SafetyTable.bundled()::row).toList();
    }

    /** Whom to believe before us, of those the table names. */
    public String deferTo() {
        return deferTo;
    }

    /** Where it stands, each page once. */
    public List<Source> sources() {
        return rows().stream().map(SafetyRow::source).distinct().toList();
    }
}
