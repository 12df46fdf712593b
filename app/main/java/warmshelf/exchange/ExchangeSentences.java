package warmshelf.exchange;

import java.time.LocalDate;
import warmshelf.words.Sentences;

/** What is said of tables that are taken out or brought in; the words stand in the room's file. */
interface ExchangeSentences {
    ExchangeSentences SAY = Sentences.of(ExchangeSentences.class);

    String lot(String crop, String variety, String year, String seeds, int tests);

    String seeds(int count);

    String seedsNotCounted();

    String lotThere();

    String joinsAsMember(String name);

    String joinsAsCoordinator(String name);

    String memberThere();

    String memberLeft();

    String invitedAlready();

    String night(LocalDate day, String degrees);

    String nightInstead(LocalDate day, String degrees, String before);

    String nightThere();

    String dayTwiceAlike(LocalDate day);

    String otherThermometer(String name);

    String cropUnknown(String given);

    String treatedUnknown(String given);

    String ownerUnknown(String given);

    String testsUnreadable(String given);

    String idMalformed(String given);

    String idTwice(String given);

    String nameTwice(String name);

    String dayAmbiguous(String given);

    String dayTwice(LocalDate day);

    String tooManyCells(int cells, int columns);

    String readAs(String encoding, String separator);

    String readAsGuessed(String encoding, String separator);

    String commas();

    String semicolons();

    String tabs();

    String columnsNotRead(String columns);

    String sourceNotSaid();

    String ownerNotRead();

    String monthFirst(String example);

    String dayFirst(String example);

    String doubt(LocalDate day, String why);

    String moreDoubts();

    String noRows();

    String tooManyRows(int most);

    String fileMissing();

    String fileTooLarge(long given, int most);

    String kindUnknown();

    String whoseLabel();

    String ownerMine();

    String ownerGroup();

    String ownerColumn();

    String thermometerMissing();

    String coordinatorsInvite();

    String lotsOfMine();

    String lotsOfGroup();

    String lotsByColumn();

    String invitations();

    String nightsOf(String name);

    String arrived();

    String waits();

    String checking(int rows);

    String taking(int rows);

    String ready();

    String taken();

    String cancelled();

    String takingBegan();

    String givenUp();

    String changedMeanwhile();

    String notAllowedAnyMore();

    String notFit();

    String decidedBefore(String words);

    String sayThatYouAreSure();

    String takenAndForgotten(String file, int rows, LocalDate day);

    String notHereAnyMore();

    String fault(String reference);

    String sowingThere();

    String notCountedThen();

    String cameUpThen(int came, int seeds);

    String pastSowing(int season, String crop, String variety, String grower, LocalDate sown, String came);

    String countedOnMissing();

    String givenUpAndOut();

    String yesOrNo(String column, String given);

    String dateAmbiguous(String column, String given);

    String dateUnfit(String column, String given, String first, String last);

    String growerUnknown(String given);

    String warmNotSaid();

    String growerNotRead();

    String sowingsOfMine();

    String sowingsByColumn();
}
