package warmshelf.reminder;

import static warmshelf.reminder.ReminderSentences.SAY;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import warmshelf.reminder.push.CurvePoint;
import warmshelf.reminder.push.EndpointRule;
import warmshelf.reminder.push.PushTarget;
import warmshelf.reminder.push.PushWish;
import warmshelf.words.DayWords;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** Reads what a browser gives to be told by, and what somebody wants to be told. */
final class PushForm {
    private static final int LONGEST_NAME = 60;
    private static final int LONGEST_KEY = 100;
    private static final int AUTH_BYTES = 16;

    private final FormReader reader;

    PushForm(Map<String, List<String>> typed) {
        reader = new FormReader(typed);
    }

    FormReader reader() {
        return reader;
    }

    /** The form as it stands. */
    static FormReader filled(PushWish wish) {
        return new FormReader(Map.of(
                "device", List.of(""),
                "pushMorning", List.of(wish.inTheMorning() ? "yes" : ""),
                "pushEvening", List.of(wish.inTheEvening() ? "yes" : ""),
                "pushAlarms", List.of(wish.ofAlarms() ? "yes" : ""),
                "pushStandIns", List.of(wish.ofStandIns() ? "yes" : "")));
    }

    PushWish wish() {
        return new PushWish(
                reader.ticked("pushMorning"),
                reader.ticked("pushEvening"),
                reader.ticked("pushAlarms"),
                reader.ticked("pushStandIns"));
    }

    /** The device's name as typed, or a plain one. */
    String name(LocalDate today) {
        String name = reader.optionalText("device", SAY.deviceField(), LONGEST_NAME);
        return name.isEmpty() ? SAY.deviceOf(DayWords.date(today)) : name;
    }

    /** Where the device takes notices; empty when something given cannot be used. */
    Optional<PushTarget> target(EndpointRule rule) {
        String endpoint = reader.text("endpoint");
        rule.refusal(endpoint).ifPresent(no -> reader.refuse("device", no.words(Units.METRIC)));
        String key = reader.text("p256dh");
        if (key.length() > LONGEST_KEY || !CurvePoint.isPublicKey(key)) {
            reader.refuse("device", SAY.keyUnfit());
        }
        String auth = reader.text("auth");
        if (auth.length() > 2 * AUTH_BYTES || CurvePoint.bytes(auth).length != AUTH_BYTES) {
            reader.refuse("device", SAY.secretUnfit());
        }
        return reader.ok() ? Optional.of(new PushTarget(endpoint, key, auth)) : Optional.empty();
    }
}
