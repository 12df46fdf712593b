package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.util.List;
import warmshelf.crop.Crop;
import warmshelf.crop.UsualSowing;
import warmshelf.seed.KeepingForm;
import warmshelf.seed.SeedsToACell;
import warmshelf.timeline.SeasonPart;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/**
 * The form that asks for space.
 *
 * @param frostKnown whether the member's frost dates are known
 * @param fromSlips crops that are not grown from seed
 * @param inches whether sides are typed in inches
 */
record AskFormPage(
        FormReader form,
        boolean frostKnown,
        List<Choice> lots,
        List<Choice> crops,
        String advisedPerCell,
        List<Crop> fromSlips,
        List<Choice> sources,
        List<Choice> storages,
        List<Choice> methods,
        List<Choice> heats,
        List<Choice> afters,
        List<Choice> containers,
        List<Choice> wheres,
        List<Choice> parts,
        List<Choice> risks,
        List<Choice> cellCounts,
        boolean inches) {
    static final String TEMPLATE = "sowing/ask.peb";

    private static final List<Choice> METHODS =
            List.of(new Choice("cells", SAY.inCells()), new Choice("bag", SAY.inABag()));
    private static final List<Choice> HEATS =
            List.of(new Choice("warm", SAY.onAMat()), new Choice("room", SAY.atRoomTemperature()));
    private static final List<Choice> AFTERS =
            List.of(new Choice("light", SAY.underTheLights()), new Choice("home", SAY.homeWithMe()));
    private static final List<Choice> CONTAINERS = List.of(
            new Choice("half-tray", SAY.halfATray()),
            new Choice("tray", SAY.wholeTray()),
            new Choice("own", SAY.trayOfMyOwn()));
    private static final List<Choice> WHERES =
            List.of(new Choice("outdoors", SAY.outdoorsAfterFrost()), new Choice("cover", SAY.underCoverOn()));
    private static final List<Choice> PARTS = List.of(
            new Choice("", SAY.whicheverInTime()),
            new Choice(SeasonPart.SPRING.word(), SAY.partSpring()),
            new Choice(SeasonPart.AUTUMN.word(), SAY.partAutumn()),
            new Choice(SeasonPart.WINTER.word(), SAY.partWinter()));
    private static final List<Choice> RISKS = List.of(
            new Choice("", SAY.riskAsSet()),
            new Choice("0.1", SAY.oneYearInTen()),
            new Choice("0.3", SAY.threeYearsInTen()),
            new Choice("0.5", SAY.everyOtherYear()));

    AskFormPage(
            FormReader form,
            boolean frostKnown,
            List<Choice> lots,
            List<Choice> crops,
            List<Crop> fromSlips,
            boolean inches) {
        this(
                form,
                frostKnown,
                lots,
                crops,
                advisedPerCell(SeedsToACell.advised()),
                fromSlips,
                KeepingForm.SOURCES,
                KeepingForm.IN_WORDS,
                METHODS,
                HEATS,
                AFTERS,
                CONTAINERS,
                WHERES,
                PARTS,
                RISKS,
                AskForm.CELLS_IN_A_TRAY.stream()
                        .map(count -> new Choice(count, count))
                        .toList(),
                inches);
    }

    /** What a list of crops says beside those that are better not sown in a tray; empty for the rest. */
    static String sownElsewhere(Crop crop) {
        return UsualSowing.of(crop)
                .map(usual -> switch (usual.place()) {
                    case WHERE_IT_GROWS -> SAY.usuallyWhereItGrows();
                    case POT_THAT_ROTS -> SAY.inPotsThatRot();
                })
                .orElse("");
    }

    private static String advisedPerCell(SeedsToACell advised) {
        return SAY.advisedPerCell(advised.seeds(), advised.why(), SeedsToACell.FEWEST);
    }
}
