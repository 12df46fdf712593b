package warmshelf.seed;

import java.time.LocalDate;
import warmshelf.words.Sentences;

/** What is said when seed cannot be offered or taken; the words stand in the room's file. */
interface SeedSentences {
    SeedSentences SAY = Sentences.of(SeedSentences.class);

    String tooManyToOffer(int seeds, String most);

    String tooFewOffered(int seeds, int offered);

    String tooFewLeft(int left, int seeds);

    String notCountedSpokenFor(String are);

    String leftSpokenFor(String left, String are);

    String leftButSpokenFor(String left, String are);

    String nobodyCounted();

    String usedUp();

    String lotHas(String seeds);

    String noneFreeForYou(String seeds, String held);

    String freeForYou(String seeds, String held, String are);

    String ownersLotHas(String seeds);

    String soAtMost(String has, String most);

    String becauseSoAtMost(String has, String because, String most);

    String everybodyPlans();

    String othersTake();

    String othersAsk();

    String termsKeptBack(String terms, String are);

    String asTheCrop();

    String keptMeasured(String degrees, String moisture);

    String keptReckoned(String place, String degrees, String moisture);

    String nobodySaidHowKept();

    String ownAssumption(long percent);

    String seedLaw(int percent);

    String packetsDoBetter(String start, String ageing);

    String lessOfSaved(String start, String ageing);

    String cropsInGeneral();

    String cropOrRelatives(String sources);

    String ageingKept(String years, String rests, String kept);

    String ageingUnknown(String years, String rests);

    String onlyOwnerChanges();

    String lotChanged();

    String lotUpToDate(String lacking);

    String shortFor(String whom);

    String lotInBox(String maturity);

    String datesByPacket(String variety);

    String datesKnown(String variety);

    String termsKept();

    String onlyOwnerSets();

    String askMe();

    String takeWhatYouNeed();

    String nothingOffered();

    String areOffered(int seeds);

    String areYours(int seeds);

    String onlyOwnerOffers();

    String yoursAlready();

    String lastTaken();

    String testRecorded();

    String inTen(long tenths);

    String aboutInTen(long tenths, long low, long high);

    String testSays(int up, int tested, String between);

    String testNarrower(int seeds, String between);

    String anythingBetween(long low, long high);

    String worthNotCounted(String between);

    String worthSeeds(String between, int seeds);

    String worthAtWorst(String between, String plants, long fewest, long most);

    String worthMoreAtWorst(String between, String plants, long fewest, long asked);

    String dayToCome(LocalDate day, LocalDate today);

    String moreThanTested(int up, int tested, int most);

    String cropUnknown();

    String figuresOfOwn(String own);

    String bothFigures();

    String yours();

    String theGroups();

    String somebodys(String owner);

    String notCounted();

    String notCountedYet();

    String noneLeft();

    String nothingFree();

    String free(int seeds);

    String whoseAndFree(String whose, String seeds);

    String whoseAskFirst(String whose, String seeds);

    String boughtPacket();

    String savedHere();

    String swapOrGift();

    String inFridge();

    String inCupboard();

    String inShed();

    String storageNotKnown();

    String measured();

    String mine();

    String ofTheGroup();

    String notedBy(String source, String member);

    String age(int years);

    String partSpokenFor(String seeds);

    String partOffered(String seeds);

    String partKeptBack(String seeds);

    String sourceField();

    String storageField();

    String moistureField();

    String celsiusField();

    String fahrenheitField();

    String keptBackField();

    String termsField();

    String testDayField();

    String seedsTestedField();

    String cameUpField();

    String varietyField();

    String yearField();

    String seedsLeftField();

    String ownerField();

    String noteField();
}
