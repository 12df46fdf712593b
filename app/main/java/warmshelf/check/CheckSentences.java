package warmshelf.check;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import warmshelf.words.Sentences;

/** What the round tells people, sentence by sentence; the words stand in the room's file. */
interface CheckSentences {
    CheckSentences SAY = Sentences.of(CheckSentences.class);

    String noSuchSowing();

    String sameLook();

    String keptBefore();

    String idOfAnotherSowing();

    String notOfThisSowing();

    String hasEnded(String sowing, String stage);

    String correctedAlready();

    String movedOn(String step);

    String notSownYet(String sowing);

    String cannotFollow(String sowing, String stage, String step);

    String fewerSprouted(int now, int before);

    String moreMovedThanSprouted(int moved, int sprouted);

    String fewerMoved(int now, int before);

    String placesStay();

    String wasToBeFreeTomorrow();

    String wasFreeSince(String day);

    String keepsItTo(String day);

    String promisedFromTomorrow(String why);

    String promisedFrom(String day, String why);

    String readingIdUsed();

    String rackIsHeld(String rack, String since);

    String rackTakesNothing(String rack, String since);

    String rackIsTold();

    String underTheLight();

    String onMat(String mat);

    String onRack(int shelf, String surface, int place);

    String stop(String rack, int shelf, String surface);

    String elsewhere();

    String readThermometer(String mat, String setPoint);

    String noDataThere(Path folder);

    String wasDueOn(String day);

    String notLookedSince(String day);

    String slower(int day);

    String slowerWithChance(int day, String chance);

    String moreMayCome(String chance);

    String noChance();

    String matTooHot(String mat, String read, String set);

    String matTooCold(String mat, String read, String set);

    String tooHot();

    String tooCold();

    String temperatureField(String unit);

    String answerField();

    String sproutedField();

    String movedField();

    String lostField();

    String giveAwayField();

    String noteField();

    String stepField();

    String dayField();

    String problemField();

    String idUnfit();

    String correctedUnfit();

    String dayToCome(LocalDate day, LocalDate today);

    String dayTooOld(LocalDate day, int days);

    String lightPlaceUnfit();

    String readingTooOld(LocalDate day, int days);

    String seenAtUnfit(String given);

    String tickedAhead(LocalDateTime moment);

    String textOrNumber();

    String trueOrFalse();

    String uuidOfPhone();

    String sentUnfit(String field, String given, String accepted);

    String notJson();

    String noEntries();

    String tooManyEntries(int entries, int most);

    String sentAtUnfit(String given);

    String noSuchMat();

    String beyondTablet();

    String noSuchLooker(String typed);

    String looks(String name);

    String clockSlow(String span);

    String clockFast(String span);

    String minutes(long minutes);

    String hours(long hours);

    String days(long days);

    String rackCleared();

    String rackNotHeld();

    String problemGone();

    String onlyGrowerAnswers(String grower);

    String answeredBefore();

    String answered(String sowing, String problem, String answer);

    String toldSo(String member);

    String putAway();

    String readingKept(String mat, String temperature);

    String kept(String sowing, String step);

    String toldOfIt(String member);

    String cellUnfit(String whose, String given);

    String noteWithoutDay(String sowing);

    String stepNeedsPlace(String whose, String step);

    String nothingToBeDone(String whose);

    String lookerUnfit(String day);

    String notOnSheet(String given);

    String sheetEmpty();

    String sheetKept(int kept, int before);

    String sheetKeptPartly(int kept, int refused);
}
