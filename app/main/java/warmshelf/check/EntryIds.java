package warmshelf.check;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.UUID;
import java.util.function.BiPredicate;
import warmshelf.words.FormReader;

/**
 * The ids of entries that came from a form which does not bring one.
 *
 * <p>The round has hundreds of forms, so they share one random number a page instead of carrying an id each; with the day and
 * what the form is about it makes an id that is the same each time this form is sent that day, so that pressing twice keeps one
 * entry. A page left open overnight tells of another day.
 *
 * @param now when the form came in
 * @param zone the group's
 * @param keptSince whether an entry of that id was kept at that moment or later
 */
record EntryIds(Instant now, ZoneId zone, BiPredicate<UUID, Instant> keptSince) {
    /** A form that comes again so soon was pressed twice or sent again over a poor line, also across midnight. */
    private static final Duration MOMENTS = Duration.ofMinutes(2);

    /**
     * The id of the entry that a form makes.
     *
     * @param subject the sowing or mat it is about
     * @param day the day that it tells of
     */
    UUID of(FormReader form, UUID subject, LocalDate day) {
        String page = form.text("page");
        if (page.isEmpty()) {
            return UUID.randomUUID();
        }
        String about = page + "/" + subject + "/" + form.text("step") + "/";
        Instant momentsAgo = now.minus(MOMENTS);
        LocalDate dayBefore = LocalDate.ofInstant(momentsAgo, zone);
        UUID before = id(about, dayBefore);
        return dayBefore.isBefore(day) && keptSince.test(before, momentsAgo) ? before : id(about, day);
    }

    private static UUID id(String about, LocalDate day) {
        return UUID.nameUUIDFromBytes((about + day).getBytes(StandardCharsets.UTF_8));
    }
}
