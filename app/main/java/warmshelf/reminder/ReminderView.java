package warmshelf.reminder;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import warmshelf.reminder.push.PushAddress;
import warmshelf.reminder.push.PushAddressStore;
import warmshelf.reminder.push.PushKeys;
import warmshelf.reminder.push.PushWishStore;
import warmshelf.web.Visitor;
import warmshelf.words.DayWords;
import warmshelf.words.FormReader;

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

    /**
     * A calendar of the member's.
     *
     * @param open whether it has an address
     * @param address just made; null: none was
     */
    public record Calendar(boolean open, @Nullable String address) {}

    /** With every form as it stands. */
    ReminderPage page(Visitor visitor) {
        return page(visitor, mailForm(visitor), pushForm(visitor), Map.of());
    }

    /** With the address of a calendar that was just made. */
    ReminderPage withAddress(Visitor visitor, CalendarPart part, String address) {
        return page(visitor, mailForm(visitor), pushForm(visitor), Map.of(part, address));
    }

    /** With a form for letters that came back. */
    ReminderPage withMailForm(Visitor visitor, FormReader form) {
        return page(visitor, form, pushForm(visitor), Map.of());
    }

    /** With a form for devices that came back. */
    ReminderPage withPushForm(Visitor visitor, FormReader form) {
        return page(visitor, mailForm(visitor), form, Map.of());
    }

    private FormReader mailForm(Visitor visitor) {
        return ReminderForm.filled(wishes.of(visitor.memberId()).orElse(MailWish.NONE));
    }

    private FormReader pushForm(Visitor visitor) {
        return PushForm.filled(pushWishes.of(visitor.memberId()));
    }

    private ReminderPage page(
            Visitor visitor, FormReader mailForm, FormReader pushForm, Map<CalendarPart, String> made) {
        PushKeys keys = means.push();
        List<PushAddress> all = keys == null ? List.of() : devices.of(visitor.memberId(), visitor.csrfToken());
        return new ReminderPage(
                mailForm,
                pushForm,
                mail(),
                calendar(visitor, CalendarPart.ALL, made),
                calendar(visitor, CalendarPart.DUTY, made),
                keys == null ? "" : keys.publicKey(),
                devices(all, visitor.zone(), true),
                devices(all, visitor.zone(), false),
                all.stream().anyMatch(device -> device.here() && device.endedAt() == null),
                PushAddressStore.MOST_DEVICES);
    }

    private Calendar calendar(Visitor visitor, CalendarPart part, Map<CalendarPart, String> made) {
        return new Calendar(links.has(visitor.memberId(), part), made.get(part));
    }

    private static List<Device> devices(List<PushAddress> all, ZoneId zone, boolean live) {
        return all.stream()
                .filter(device -> (device.endedAt() == null) == live)
                .map(device -> Device.of(device, zone))
                .toList();
    }
}
