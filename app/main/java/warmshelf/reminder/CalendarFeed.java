package warmshelf.reminder;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.StandardTime;
import biweekly.component.VEvent;
import biweekly.component.VTimezone;
import biweekly.io.text.ICalWriter;
import biweekly.property.DateEnd;
import biweekly.property.DateStart;
import biweekly.property.Status;
import biweekly.util.DateTimeComponents;
import biweekly.util.Duration;
import biweekly.util.ICalDate;
import biweekly.util.UtcOffset;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One person's days as an iCalendar object (RFC 5545), events of a whole day each, so that no time zone can shift them. It has
 * no METHOD, being looked up and not sent; DTSTAMP then says when an event was last changed (section 3.8.7.2).
 */
final class CalendarFeed {
    private static final String PRODUCT = "-//Warmshelf//Days//EN";
    private static final int REFRESH_HOURS = 12;
    private static final int LONGEST_LINE = 75;

    private final String address;

    /** @param address of the installation, which the events link to */
    CalendarFeed(String address) {
        this.address = address;
    }

    /**
     * The calendar's text.
     *
     * @param events what is ahead
     * @param told of each of them, and of what was called off, what calendars are told
     */
    String written(String name, List<FeedDay> events, List<ToldDay> told) {
        ICalendar calendar = new ICalendar();
        calendar.setProductId(PRODUCT);
        calendar.setName(name);
        calendar.addExperimentalProperty("X-WR-CALNAME", name);
        calendar.setRefreshInterval(Duration.builder().hours(REFRESH_HOURS).build());
        Map<String, FeedDay> ahead = events.stream().collect(Collectors.toMap(FeedDay::uid, Function.identity()));
        told.forEach(each -> calendar.addEvent(event(each, ahead.get(each.uid()))));
        if (told.isEmpty()) {
            calendar.addComponent(universalTime());
        }
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

    /** RFC 5545, section 3.6, wants one component at least; this one tells of nothing. */
    private static VTimezone universalTime() {
        StandardTime always = new StandardTime();
        always.setDateStart(new ICalDate(new DateTimeComponents(1970, 1, 1, 0, 0, 0, false), true));
        always.setTimezoneOffsetFrom(new UtcOffset(true, 0, 0));
        always.setTimezoneOffsetTo(new UtcOffset(true, 0, 0));
        VTimezone zone = new VTimezone("UTC");
        zone.addStandardTime(always);
        return zone;
    }

    private VEvent event(ToldDay told, @Nullable FeedDay ahead) {
        VEvent event = wholeDay(told);
        event.setUid(told.uid());
        event.setSequence(told.sequence());
        event.setSummary(told.summary());
        if (told.cancelled() || ahead == null) {
            event.setStatus(Status.cancelled());
            return event;
        }
        event.setStatus(Status.confirmed());
        if (!ahead.description().isEmpty()) {
            event.setDescription(ahead.description());
        }
        event.setUrl(address + ahead.path());
        return event;
    }

    private static VEvent wholeDay(ToldDay told) {
        VEvent event = new VEvent();
        event.setDateTimeStamp(Date.from(told.changedAt()));
        event.setLastModified(Date.from(told.changedAt()));
        event.setDateStart(new DateStart(date(told.day())));
        // RFC 5545, 3.6.1: the end is the first day that is not part of the event
        event.setDateEnd(new DateEnd(date(told.day().plusDays(1))));
        event.setTransparency(true);
        return event;
    }

    private static ICalDate date(LocalDate day) {
        return new ICalDate(new DateTimeComponents(day.getYear(), day.getMonthValue(), day.getDayOfMonth()), false);
    }
}
