package warmshelf.reminder;

import static warmshelf.reminder.ReminderSentences.SAY;

import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import warmshelf.words.FormReader;

/** Reads where and when somebody wants to be written to. */
final class ReminderForm {
    private static final int LONGEST_ADDRESS = 254;

    private final FormReader reader;

    ReminderForm(Map<String, List<String>> typed) {
        reader = new FormReader(typed);
    }

    FormReader reader() {
        return reader;
    }

    /** The form as it stands. */
    static FormReader filled(MailWish wish) {
        return new FormReader(Map.of(
                "address",
                List.of(wish.address()),
                "morning",
                List.of(wish.inTheMorning() ? "yes" : ""),
                "evening",
                List.of(wish.inTheEvening() ? "yes" : ""),
                "alarms",
                List.of(wish.ofAlarms() ? "yes" : ""),
                "standIns",
                List.of(wish.ofStandIns() ? "yes" : "")));
    }

    /** The wish; empty when something typed cannot be taken. Nothing ticked means no letters, whatever the address. */
    Optional<MailWish> wish() {
        MailWish wish = new MailWish(
                reader.text("address"),
                reader.ticked("morning"),
                reader.ticked("evening"),
                reader.ticked("alarms"),
                reader.ticked("standIns"));
        if (!wish.inTheMorning() && !wish.inTheEvening() && !wish.ofAlarms() && !wish.ofStandIns()) {
            return Optional.of(MailWish.NONE);
        }
        checkAddress(wish.address());
        return reader.ok() ? Optional.of(wish) : Optional.empty();
    }

    private void checkAddress(String address) {
        if (address.isEmpty()) {
            reader.refuse("address", SAY.addressEmpty());
            return;
        }
        boolean plain = address.length() <= LONGEST_ADDRESS && address.indexOf('@') > 0 && !address.contains(",");
        try {
            if (plain && new InternetAddress(address, true).getAddress().equals(address)) {
                return;
            }
        } catch (AddressException notAnAddress) {
            // the sentence below says what would be one
        }
        String shown = address.length() > 60 ? address.substring(0, 60) + "…" : address;
        reader.refuse("address", SAY.addressUnfit(shown));
    }
}
