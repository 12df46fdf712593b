package warmshelf.reminder;

import static warmshelf.reminder.ReminderSentences.SAY;

import warmshelf.check.MatAlarm;
import warmshelf.group.GroupProfile;
import warmshelf.words.DayWords;
import warmshelf.words.Units;

/** The letter that says that a mat is too hot or too cold. */
final class AlarmLetter {
    private AlarmLetter() {}

    static String words(MatAlarm alarm, String name, GroupProfile profile, String address) {
        Units units = profile.units();
        return SAY.alarmLetter(
                name,
                alarm.by(),
                alarm.name(),
                alarm.where(),
                units.temperature(alarm.readC()),
                DayWords.day(alarm.readOn()),
                units.temperature(alarm.setPointC()),
                alarm.advice(),
                address,
                alarm.mat(),
                profile.name());
    }
}
