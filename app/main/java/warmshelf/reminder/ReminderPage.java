package warmshelf.reminder;

import java.util.List;
import warmshelf.words.FormReader;

/**
 * How a member is reminded.
 *
 * @param form the form for letters
 * @param pushForm the form for devices
 * @param mail whether this installation sends letters
 * @param calendar of next steps and days on duty
 * @param dutyCalendar of days on duty alone
 * @param pushKey the public key that devices need; empty: this installation sends no notices
 * @param devices those that get notices
 * @param endedDevices those that no longer do
 * @param told whether the device at hand gets notices
 * @param mostDevices how many one member can have
 */
record ReminderPage(
        FormReader form,
        FormReader pushForm,
        boolean mail,
        ReminderView.Calendar calendar,
        ReminderView.Calendar dutyCalendar,
        String pushKey,
        List<ReminderView.Device> devices,
        List<ReminderView.Device> endedDevices,
        boolean told,
        int mostDevices) {}
