package warmshelf.reminder;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import warmshelf.reminder.push.PushAddress;
import warmshelf.reminder.push.PushAddressStore;
import warmshelf.reminder.push.PushKeys;
import warmshelf.reminder.push.PushWishStore;
import warmshelf.web.FormReader;
import warmshelf.web.Visitor;
import warmshelf.words.DayWords;

/** What the page of reminders shows, whichever of its forms was sent. */
final class ReminderView {
    private final CalendarLinkStore links;
    private final MailWishStore wishes;
    private final PushAddressStore devices;
    private final PushWishStore pushWishes;
    private final ReminderRoom.Means means;

    ReminderView(
            CalendarLinkStore links,
            MailWishStore wishes,
            PushAddressStore devices,
            PushWishStore pushWishes,
            ReminderRoom.Means means) {
        this.links = links;
        this.wishes = wishes;
        this.devices = devices;
        this.pushWishes = pushWishes;
        this.means = means;
    }

    boolean mail() {
        return means.mail() != null;
    }

    boolean push() {
        return means.push() != null;
    }

    /** A device with its days as sentences say them. */
    public record Device(PushAddress address, String added, String told, String ended) {
        static Device of(PushAddress address, ZoneId zone) {
            return new Device(
                    address,
                    day(address.addedAt(), zone),
                    day(address.lastToldAt(), zone),
                    day(address.endedAt(), zone));
        }

        private static String day(@Nullable OffsetDateTime moment, ZoneId zone) {
            return moment == null
                    ? ""
                    : DayWords.day(moment.atZoneSameInstant(zone).toLocalDate());
        }
    }

    /** With every form as it stands. */
    Map<String, @Nullable Object> model(Visitor visitor, @Nullable String calendar) {
        return model(visitor, mailForm(visitor), pushForm(visitor), calendar);
    }

    /** With a form for letters that came back. */
    Map<String, @Nullable Object> withMailForm(Visitor visitor, FormReader form) {
        return model(visitor, form, pushForm(visitor), null);
    }

    /** With a form for devices that came back. */
    Map<String, @Nullable Object> withPushForm(Visitor visitor, FormReader form) {
        return model(visitor, mailForm(visitor), form, null);
    }

    private FormReader mailForm(Visitor visitor) {
        return ReminderForm.filled(wishes.of(visitor.memberId()).orElse(MailWish.NONE));
    }

    private FormReader pushForm(Visitor visitor) {
        return PushForm.filled(pushWishes.of(visitor.memberId()));
    }

    private Map<String, @Nullable Object> model(
            Visitor visitor, FormReader mailForm, FormReader pushForm, @Nullable String calendar) {
        Map<String, @Nullable Object> model = new HashMap<>();
        model.put("form", mailForm);
        model.put("pushForm", pushForm);
        model.put("mail", mail());
        model.put("hasCalendar", links.has(visitor.memberId()));
        model.put("calendar", calendar);
        PushKeys keys = means.push();
        model.put("pushKey", keys == null ? "" : keys.publicKey());
        List<PushAddress> all = keys == null ? List.of() : devices.of(visitor.memberId(), visitor.csrfToken());
        model.put("devices", devices(all, visitor.zone(), true));
        model.put("endedDevices", devices(all, visitor.zone(), false));
        model.put("told", all.stream().anyMatch(device -> device.here() && device.endedAt() == null));
        model.put("mostDevices", PushAddressStore.MOST_DEVICES);
        return model;
    }

    private static List<Device> devices(List<PushAddress> all, ZoneId zone, boolean live) {
        return all.stream()
                .filter(device -> (device.endedAt() == null) == live)
                .map(device -> Device.of(device, zone))
                .toList();
    }
}
