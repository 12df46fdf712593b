package warmshelf.reminder;

import warmshelf.check.MatAlarm;
import warmshelf.group.GroupProfile;
import warmshelf.words.DayWords;
import warmshelf.words.Units;

/** The letter that says that a mat is too hot or too cold. */
final class AlarmLetter {
    private AlarmLetter() {}

    static String words(MatAlarm alarm, String name, GroupProfile profile, String address) {
        Units units = profile.units();
        return """
                Hello %s,

                %s read mat %s (%s) at %s on %s; it is to stand at %s.

                %s Dry hands, and unplug it before you touch anything wet.

                %s/mats/%s

                %s
                To change when you are written to, or stop it: %s/reminders
                """.formatted(
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
                        profile.name(),
                        address);
    }
}
