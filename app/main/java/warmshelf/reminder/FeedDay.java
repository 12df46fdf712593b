package warmshelf.reminder;

import static warmshelf.reminder.ReminderSentences.SAY;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.UUID;

/**
 * One event of a member's calendar, of a whole day.
 *
 * @param uid stays the same when its day, words or the installation's address change
 * @param path within this site, where more is told
 */
record FeedDay(String uid, Kind kind, LocalDate day, String summary, String description, String path) {
    private static final int LONGEST_SUMMARY = 300;

    /** What it is about. */
    enum Kind {
        STEP("step"),
        DUTY("duty");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    /** A step of a sowing on its ideal day. */
    static FeedDay of(StepAhead step) {
        String summary = "%s: %s".formatted(step.step().title(), step.title());
        return new FeedDay(
                "%s-%s".formatted(step.sowing(), step.step().word()),
                Kind.STEP,
                step.ideal(),
                summary.length() > LONGEST_SUMMARY ? summary.substring(0, LONGEST_SUMMARY) : summary,
                step.why(),
                "/sowings/" + step.sowing());
    }

    /** A day on which a member looks at a site. */
    static FeedDay duty(UUID site, String siteName, LocalDate day, UUID member) {
        return new FeedDay(
                "duty-%s-%s-%s".formatted(site, day, member),
                Kind.DUTY,
                day,
                SAY.youLookSummary(siteName),
                "",
                "/today?show=all");
    }

    /** Tells this from the same event with another day or other words. */
    String fingerprint() {
        String all = String.join("\n", day.toString(), summary, description);
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(all.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException neverHappens) {
            throw new IllegalStateException("every Java has SHA-256", neverHappens);
        }
    }
}
