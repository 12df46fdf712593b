package warmshelf.duty;

import java.time.LocalDate;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;
import warmshelf.words.Sentences;

/** What this room tells people, sentence by sentence; the words stand in the room's file. */
interface DutySentences {
    DutySentences SAY = Sentences.of(DutySentences.class);

    String nobodyLooks(String site, String days);

    String daysOfWeek(int days);

    String dayPast(String day);

    String notYourDay(String day);

    String askedAlready(String day);

    String askedOneself();

    String returnPast(String day);

    String returnOfNobodyElse(String day);

    String returnNotTheirs(String day);

    String ownDayPast();

    String noSuchDay();

    String takenBy(String taker, String what);

    String withdrawn(String asker, String what);

    String declinedAlready(String what);

    String rotaChanged(String what);

    String past(String what);

    String yourOwnDay(String what);

    String onlyOneAsked(String member, String what);

    String cannotBeSwapped(String what);

    String youLookElsewhere(String day);

    String askerLooksElsewhere(String asker, String day);

    String notAsked(String what);

    String notYours(String asker);

    String noSuchSwap();

    String asked();

    String taken(String what);

    String declined(String asker);

    String asksNoMore(String what);

    String noSuchTick();

    String noSuchFirstDay(String given, LocalDate today);

    String lineOvertaken(String day);

    String linePast(String day);

    String lineOutdated();

    String noSuchHour(String site, String given);

    String noSuchSite(String given);

    String firstWithinAYear(LocalDate given, LocalDate today);

    String firstWithinTwoYears(LocalDate given, LocalDate today);

    String lastBeforeFirst(LocalDate given, LocalDate first);

    String lastTooFar(LocalDate given, long days, int most);

    String noSuchPerson(String given);

    String noSuchReturn(String given);

    String onlyCoordinators();

    String noSuchMember();

    String daysNotKept();

    String notOnRota();

    String weekdaysKept();

    String awayOneDay(String day);

    String awayDays(String first, String last);

    String stillOnRota(long days);

    String openAgain();

    String nothingChanged();

    String rotaKept();

    String hoursKept();

    String daysKept(int days);

    String leftAsTheyAre(String days);

    String leftAsTheyAreAndMore(String days);

    String youStandIn(String site, String onDuty, @Nullable LocalTime hour);

    String youStandInForNobody(String site, @Nullable LocalTime hour);

    String roundLate(String site, @Nullable LocalTime hour, long open, String people);

    String nobodyDown();

    String nobodyDownStandsIn(String standIn);

    String nobodyStandsIn(String onDuty);

    String standsIn(String onDuty, String standIn);

    String waitsForAnswer();

    String nobodyTookIt();

    String rotaChangedMeanwhile();

    String nothingInReturn();

    String isTakenBy(String member);

    String isDeclined();

    String isWithdrawn();

    String somebody();

    String turnAt(String day, String site);

    String anyone();

    String firstDayField();

    String lastDayField();

    String howManyDaysField();

    String allSites();
}
