package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.util.List;
import warmshelf.seed.KeepingForm;
import warmshelf.seed.SeedsToACell;
import warmshelf.timeline.SeasonPart;
import warmshelf.words.Choice;

/**
 * What can be chosen instead of what Ask takes for granted.
 *
 * @param advisedPerCell what a number of seeds to a cell left empty means
 * @param inches whether sides are typed in inches
 */
record AskChoices(
        List<Choice> methods,
        List<Choice> heats,
        List<Choice> afters,
        List<Choice> containers,
        List<Choice> cellCounts,
        String advisedPerCell,
        List<Choice> wheres,
        List<Choice> parts,
        List<Choice> risks,
        List<Choice> sources,
        List<Choice> storages,
        boolean inches) {
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

    static AskChoices all(boolean inches) {
        SeedsToACell advised = SeedsToACell.advised();
        return new AskChoices(
                METHODS,
                HEATS,
                AFTERS,
                CONTAINERS,
                AskForm.CELLS_IN_A_TRAY.stream()
                        .map(count -> new Choice(count, count))
                        .toList(),
                SAY.advisedPerCell(advised.seeds(), advised.why(), SeedsToACell.FEWEST),
                WHERES,
                PARTS,
                RISKS,
                KeepingForm.SOURCES,
                KeepingForm.IN_WORDS,
                inches);
    }
}
