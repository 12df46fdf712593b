package warmshelf.timeline;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import warmshelf.crop.CropHazard;
import warmshelf.guide.Advice;

/** The cautions that stand beside steps, from the texts of the guide; each says whom to believe before us. */
public enum Caution {
    TREATED_SEED("treated-seed", Stands.OPEN),
    BURNS("hot-pepper", Stands.OPEN),
    HOT_KINDS("hot-pepper", " of hot kinds", Stands.OPEN),
    POISONOUS("poisonous", " of one plant", Stands.OPEN),
    PARTS("poisonous-parts", Stands.OPEN),
    SUN("sun-and-sap", Stands.OPEN),
    IRRITATES("skin", " of one plant", Stands.OPEN),
    SENSITISES("daisy-family", Stands.OPEN),
    PETS("pets", Stands.OPEN),
    GRAZING("grazing", Stands.OPEN),
    BITTER("bitter-fruit", Stands.OPEN),
    ELECTRICITY("electricity", Stands.OPEN),
    PEROXIDE("peroxide", Stands.OPEN_IN_BRIEF),
    COMPOST_DUST("compost-dust", Stands.FOLDED),
    MOULD("mould", Stands.FOLDED),
    HIGH_SHELF("high-shelf", Stands.FOLDED),
    FEED("feed", Stands.FOLDED),
    LIFTING("lifting", Stands.FOLDED),
    LIFTING_BAGS("lifting", " of bags", Stands.FOLDED);

    private enum Stands {
        OPEN,
        /** Concerns only whoever chooses to: a line stands open, the whole with how to do it. */
        OPEN_IN_BRIEF,
        FOLDED
    }

    private final String file;
    private final String which;
    private final Stands stands;

    Caution(String name, Stands stands) {
        this(name, "", stands);
    }

    Caution(String name, String which, Stands stands) {
        this.file = "cautions/" + name;
        this.which = which;
        this.stands = stands;
    }

    /** Whether it concerns skin, eyes, poison or electricity, and so is never folded away. */
    public boolean standsOpen() {
        return stands != Stands.FOLDED;
    }

    /** Whether a line of it is enough at the step, because the whole concerns only whoever chooses to do it. */
    public boolean briefIsEnough() {
        return stands == Stands.OPEN_IN_BRIEF;
    }

    /** In one line, for a place where the whole of it stands nearby. Only those that stand open have one. */
    public String brief() {
        return Advice.fixed(file, "brief" + which);
    }

    /** The whole of it. */
    public String sentence() {
        return Advice.fixed(file, "whole" + which);
    }

    /** What the work at a step asks for, as its text names it. */
    public static List<Caution> ofTheWork(String file, String section) {
        return Advice.list(file, section).stream().map(Caution::named).toList();
    }

    private static Caution named(String name) {
        return Arrays.stream(values())
                .filter(caution -> caution.file.equals("cautions/" + name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no caution is called '" + name + "'"));
    }

    /** What a crop's hazards ask for at a step. */
    public static Set<Caution> of(Set<CropHazard> hazards, Step step) {
        Set<Caution> cautions = EnumSet.noneOf(Caution.class);
        for (CropHazard hazard : hazards) {
            if (hazard.isMetIn(step.handled())) {
                cautions.add(of(hazard));
            }
        }
        return cautions;
    }

    private static Caution of(CropHazard hazard) {
        return switch (hazard) {
            case BURNS -> BURNS;
            case HOT_KINDS -> HOT_KINDS;
            case POISONOUS -> POISONOUS;
            case PARTS -> PARTS;
            case SUN -> SUN;
            case SENSITISES -> SENSITISES;
            case IRRITATES -> IRRITATES;
            case PETS -> PETS;
            case GRAZING -> GRAZING;
            case BITTER -> BITTER;
            case TREATED -> TREATED_SEED;
        };
    }
}
