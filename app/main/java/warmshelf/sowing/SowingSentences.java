package warmshelf.sowing;

import java.nio.file.Path;
import java.time.LocalDate;
import warmshelf.words.Sentences;

/** What is said when something asked for, or an answer to a wish for seed, cannot be taken so; the words stand in the room's file. */
interface SowingSentences {
    SowingSentences SAY = Sentences.of(SowingSentences.class);

    String messageTo();

    String messageField();

    String messageWritten(String name);

    String asGrower(String name);

    String asCoordinator(String name);

    String nobodyToWriteTo();

    String notGrownSo(String crop, String so);

    String tooFineForABag(String crop);

    String rootsBearNoBag(String crop);

    String sleepsOnAMat(String crop, String room, String above);

    String fewerOnAMat(String crop, String room, String above);

    String needsNoAnswer();

    String tooManyToGive(int seeds, String most);

    String stillWithoutSeed();

    String seedGone();

    String tooFewSeeds(String free, int wanted);

    String sownAlready();

    String somebodyWasQuicker(String why);

    String noLotChosen();

    String ownerIsAsked(String owner);

    String ownerIsAskedToo(String owner);

    String seedFromThisLot();

    String onlyGrowerChooses(String grower);

    String keepYourSeed(String grower);

    String onlyOwnerAnswers(String owner);

    String tooLateToSow();

    String gathered(String title);

    String tooManyGathered(int most);

    String notGatheredAnyMore();

    String gatheredBefore(int before, int wanted, int free);

    String nothingGatheredLeft();

    String allSent(int requests);

    String someSent(int requests, int left);

    String takenOut();

    String takenBackIn();

    String keptWithoutMat();

    String sent();

    String notToWithdraw(String sowing, String stage);

    String noWithdrawal(String sowing);

    String onlyGrowerWithdraws(String grower);

    String withdrawnWithoutPlace();

    String withdrawn(String places);

    String waitsForAnother();

    String standsAsItDid();

    String notWithdrawn();

    String hasItsPlace(String places);

    String hasItsPlaceNotLight(String places);

    String nextToNothingComesUp();

    String lotUsedUp();

    String lotHas(int seeds);

    String noneLeft(String has);

    String testTenFirst(String has, int plants, long expected);

    String tooFewForPlants(String has, int needed, int plants, long expected);

    String tooFewLittleKnown(String has, int needed, int plants, long expected);

    String tooFewCells(int cells, int capacity);

    String tooFewCellsLittleKnown(int cells, int capacity);

    String tooFewPots(int pots, int capacity);

    String tooFewPotsLittleKnown(int pots, int capacity);

    String noFrostDates(String postcode, String country);

    String bagTooSmall(int seeds, int holds);

    String ownPacketOf(String crop);

    String comesUp(long tenths);

    String assumedCells(String tray, int perCell);

    String assumedCellsOf(String tray, int cells, int perCell);

    String assumedBag();

    String aTrayOfMyOwn();

    String assumedWarmLight();

    String assumedWarmHome();

    String assumedRoom();

    String assumedOutdoors(String part, long percent);

    String assumedOutdoorsAsSet(String part);

    String assumedOutdoorsAt(String part, int percent);

    String assumedCover();

    String assumedCoverOn(String day);

    String noNote();

    String withNote();

    String inCells();

    String inABag();

    String onAMat();

    String atRoomTemperature();

    String underTheLights();

    String homeWithMe();

    String halfATray();

    String wholeTray();

    String trayOfMyOwn();

    String outdoorsAfterFrost();

    String underCoverOn();

    String riskAsSet();

    String oneYearInTen();

    String threeYearsInTen();

    String everyOtherYear();

    String usuallyWhereItGrows();

    String inPotsThatRot();

    String advisedPerCell(int advised, String why, int fewest);

    String lotGone();

    String otherCrop(String chosen, String lot, String crop);

    String cropEmpty();

    String cropUnknown(String given);

    String testNeedsBoth();

    String moreSprouted(int sprouted, int tested);

    String trayTooLarge(String longSide, String shortSide, String placeLong, String placeShort);

    String coverDayUnfit(LocalDate day, LocalDate first, LocalDate last);

    String lostByPractice();

    String lostInOne();

    String lostInMany(int sowings);

    String lostLater(long lost, String from);

    String toACell(int seeds, int pot, String why);

    String toACellSavesSeed(int seeds, int pot, int advised, String why);

    String toACellAdvised(int seeds, int pot, int advised, String why);

    String aWholeTray();

    String aHalfTray();

    String aPaperBag();

    String looked();

    String putIntoCold();

    String putToSoak();

    String wasSown();

    String movedToCells();

    String offTheHeat();

    String putUnderLight();

    String takenHome();

    String pottedOn();

    String trimmed();

    String putOutToHarden();

    String plantedOut();

    String givenUp();

    String seasonClosed(int season);

    String nothingToAskAgain();

    String gatheredAgain(int things);

    String gatheredSomeAgain(int things, int left, int most);

    String seasonTurned(int planned, int now);

    String notRecorded();

    String entryTakenBack();

    String thermometerRead();

    String problemSeen();

    String problemDealtWith();

    String seedAskedFor(String who, int seeds, String variety);

    String trialWay(String number, String way);

    String stepMoved(String step, String day, String moved);

    String nothingMore(String day);

    String firstSprouts();

    String seenOn(String what, String day);

    String thanExpected(String seen, String moved);

    String later();

    String sooner();

    String plantsField();

    String noteField();

    String heatField();

    String germinatedField();

    String testedField();

    String varietyField();

    String packetSeedsField();

    String seedYearField();

    String methodField();

    String afterField();

    String containerField();

    String cellsInATrayField();

    String seedsPerCellField();

    String partField();

    String riskField();

    String whereField();

    String coverDayField();

    String longerSideField(String unit);

    String shorterSideField(String unit);

    String answerField();

    String seedsGivenField();

    String reasonField();

    String seedsAreTheirs(int seeds, String grower);

    String aCoordinator();

    String whicheverInTime();

    String partSpring();

    String partAutumn();

    String partWinter();

    String noDataThere(Path folder);

    String pageOfFinishedField();
}
