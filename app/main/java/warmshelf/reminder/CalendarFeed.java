package warmshelf.reminder;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.property.DateEnd;
import biweekly.property.DateStart;
import biweekly.util.DateTimeComponents;
import biweekly.util.Duration;
import biweekly.util.ICalDate;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Date;
import java.util.List;

/**
 * One person's days as an iCalendar object (RFC 5545): each step on its ideal day and each duty, as events of a whole day, so
 * that no time zone can shift them.
 */
final class CalendarFeed {
    private static final String PRODUCT = "-//Warmshelf//Days//EN";
    private static final int REFRESH_HOURS = 12;
    private static final int LONGEST_LINE = 75;

    private final String address;
    private final Instant now;

    /**
     * A feed.
     *
     * @param address of the installation, which the events link to and are named after
     * @param now stamped on the events
     */
    CalendarFeed(String address, Instant now) {
        this.address = address;
        this.now = now;
    }

    /** A day on which the person looks at a site. */
    record Duty(String siteId, String site, LocalDate day) {}

    String written(String groupName, List<StepAhead> steps, List<Duty> duties) {
        ICalendar calendar = new ICalendar();
        calendar.setProductId(PRODUCT);
        calendar.setName(groupName);
        calendar.addExperimentalProperty("X-WR-CALNAME", groupName);
        calendar.setRefreshInterval(Duration.builder().hours(REFRESH_HOURS).build());
        steps.forEach(step -> calendar.addEvent(event(step)));
        duties.forEach(duty -> calendar.addEvent(event(duty)));
        return folded(unfolded(calendar));
    }

    /** The library folds by letters; RFC 5545, section 3.1, counts octets, so it is told not to fold. */
    private static String unfolded(ICalendar calendar) {
        StringWriter text = new StringWriter();
        try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
            writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
            writer.write(calendar);
        } catch (IOException impossible) {
            throw new UncheckedIOException("a text in memory could not be written", impossible);
        }
        return text.toString();
    }

    private static String folded(String text) {
        StringBuilder folded = new StringBuilder();
        int octets = 0;
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            String letter = Character.toString(text.codePointAt(at));
            int length = letter.getBytes(StandardCharsets.UTF_8).length;
            boolean breaks = letter.equals("\r") || letter.equals("\n");
            if (!breaks && octets + length > LONGEST_LINE) {
                folded.append("\r\n ");
                octets = 1;
            }
            folded.append(letter);
            octets = breaks ? 0 : octets + length;
        }
        return folded.toString();
    }

    private VEvent event(StepAhead step) {
        VEvent event = wholeDay(step.ideal());
        event.setUid("%s-%s@%s".formatted(step.sowing(), step.step().word(), host()));
        event.setSummary("%s: %s".formatted(step.step().title(), step.title()));
        event.setDescription(step.why());
        event.setUrl("%s/sowings/%s".formatted(address, step.sowing()));
        return event;
    }

    private VEvent event(Duty duty) {
        VEvent event = wholeDay(duty.day());
        event.setUid("duty-%s-%s@%s".formatted(duty.siteId(), duty.day(), host()));
        event.setSummary("You look: " + duty.site());
        event.setUrl(address + "/today?show=all");
        return event;
    }

    private VEvent wholeDay(LocalDate day) {
        VEvent event = new VEvent();
        event.setDateTimeStamp(Date.from(now));
        event.setDateStart(new DateStart(date(day)));
        // RFC 5545, 3.6.1: the end is the first day that is not part of the event
        event.setDateEnd(new DateEnd(date(day.plusDays(1))));
        event.setTransparency(true);
        return event;
    }

    private static ICalDate date(LocalDate day) {
        return new ICalDate(new DateTimeComponents(day.getYear(), day.getMonthValue(), day.getDayOfMonth()), false);
    }

    private String host() {
        return java.net.URI.create(address).getHost();
    }
}
