package warmshelf.reminder;

import java.time.LocalTime;
import org.jspecify.annotations.Nullable;
import warmshelf.words.Sentences;

/** What this room tells people, sentence by sentence; the words stand in the room's file. */
interface ReminderSentences {
    ReminderSentences SAY = Sentences.of(ReminderSentences.class);

    String addressEmpty();

    String addressUnfit(String given);

    String keyUnfit();

    String secretUnfit();

    String devicesEnough(int devices);

    String noMailServer();

    String noPushKeys();

    String calendarEnded();

    String dutyCalendar(String group);

    String noLetters();

    String lettersGo(String address);

    String deviceAdded(String device);

    String keptForDevices();

    String deviceStopped();

    String noticesWork();

    String testNotice();

    String testOnItsWay();

    String rackHeld(String rack);

    String youLookAt(String sites);

    String tomorrowSubject(String parts);

    String todaySubject(String parts);

    String matTooHot(String mat);

    String matTooCold(String mat);

    String youStandIn(String site);

    String roundNotDone(@Nullable LocalTime hour);

    String helloTomorrow(String name, String day);

    String helloToday(String name, String day);

    String lookAtSite(String site, String address);

    String letterEnd(String group, String address);

    String rackIsHeld(String rack, String problem, String sowing, String by, String day, String address);

    String standInLetter(String name, String words, String address, String group);

    String problemsNoted(int problems);

    String thingsToDo(int things);

    String newThings(int things);

    String newLine(String words, String address, String path);

    String sowingsToLookAt(int sowings);

    String yourSowingsWantALook(int sowings, String address);

    String andMore(int things);

    String alarmLetter(
            String name,
            String by,
            String mat,
            String where,
            String read,
            String day,
            String setPoint,
            String advice,
            String address,
            Object matId,
            String group);

    String problemNoted(
            String sowing,
            String problem,
            String by,
            String day,
            String note,
            String whatToDo,
            String address,
            Object id);

    String stepToDo(String sowing, String step, String late, String why, String address, Object id);

    String lateSince(String day);

    String deviceField();

    String deviceOf(String day);

    String youLookSummary(String site);

    String rackLine(String rack, String problem);
}
