package warmshelf.frost.garden;

import java.time.MonthDay;
import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.garden.FrostCorrection.Change;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** The fields that say what a correction does: days later or earlier, or the dates themselves. */
final class ChangeFields {
    static final List<Choice> HOWS =
            List.of(new Choice("shift", "So many days later or earlier"), new Choice("dates", "The dates themselves"));
    static final List<Choice> WAYS = List.of(new Choice("later", "later"), new Choice("earlier", "earlier"));
    private static final int MOST_DAYS = 40;
    private static final List<String> SHIFT = List.of("springDays", "autumnDays");
    private static final List<String> DATES =
            List.of("springAverage", "springOneInTen", "autumnAverage", "autumnOneInTen");

    private ChangeFields() {}

    /** After a problem the change is only a stand-in. */
    static Change read(FormReader reader) {
        switch (reader.text("how")) {
            case "shift" -> {
                refuseOthers(
                        reader, DATES, "You chose days, yet a date is filled in too; empty it, or choose the dates.");
                return shift(reader);
            }
            case "dates" -> {
                refuseOthers(
                        reader, SHIFT, "You chose dates, yet days are filled in too; empty them, or choose the days.");
                return dates(reader);
            }
            default -> {
                reader.refuse(
                        "how", "How you tell it was not chosen; days later or earlier, or the dates, are accepted.");
                return new Change.Shift(0, 0);
            }
        }
    }

    private static void refuseOthers(FormReader reader, List<String> fields, String sentence) {
        if (fields.stream().anyMatch(field -> !reader.text(field).isEmpty())) {
            reader.refuse("how", sentence);
        }
    }

    private static Change shift(FormReader reader) {
        int spring = days(reader, "springDays", "Days in spring", "springWay");
        int autumn = days(reader, "autumnDays", "Days in autumn", "autumnWay");
        if (reader.ok() && spring == 0 && autumn == 0) {
            reader.refuse(
                    "how",
                    "Days in spring and in autumn were both 0, which changes nothing; a whole number from 1 to %d is accepted in one of them at least."
                            .formatted(MOST_DAYS));
        }
        return new Change.Shift(spring, autumn);
    }

    private static int days(FormReader reader, String field, String label, String wayField) {
        int days = reader.optionalWholeNumber(field, label, 0, MOST_DAYS).orElse(0);
        String way = reader.text(wayField).isEmpty() ? "later" : reader.text(wayField);
        if (!way.equals("later") && !way.equals("earlier")) {
            reader.refuse(wayField, "%s were neither later nor earlier; one of both is accepted.".formatted(label));
        }
        return way.equals("earlier") ? -days : days;
    }

    private static Change dates(FormReader reader) {
        Change.Dates dates = new Change.Dates(
                day(reader, "springAverage", "Last spring frost on average"),
                day(reader, "springOneInTen", "Last spring frost, one spring in ten"),
                day(reader, "autumnAverage", "First autumn frost on average"),
                day(reader, "autumnOneInTen", "First autumn frost, one autumn in ten"));
        if (reader.ok() && DATES.stream().allMatch(field -> reader.text(field).isEmpty())) {
            reader.refuse("springAverage", "No date is filled in; at least one, such as 24 May, is needed.");
        }
        if (comesFirst(dates.springOneInTen(), dates.springAverage())) {
            reader.refuse(
                    "springOneInTen",
                    "One spring in ten has a frost after '%s', yet half of them after '%s'; the one-in-ten day cannot come before the average."
                            .formatted(reader.text("springOneInTen"), reader.text("springAverage")));
        }
        if (comesFirst(dates.autumnAverage(), dates.autumnOneInTen())) {
            reader.refuse(
                    "autumnOneInTen",
                    "One autumn in ten had a frost before '%s', yet half of them before '%s'; the one-in-ten day cannot come after the average."
                            .formatted(reader.text("autumnOneInTen"), reader.text("autumnAverage")));
        }
        return dates;
    }

    private static boolean comesFirst(@Nullable MonthDay one, @Nullable MonthDay other) {
        return one != null && other != null && Corrections.daysBetween(one, other) > 0;
    }

    private static @Nullable MonthDay day(FormReader reader, String field, String label) {
        String text = reader.optionalText(field, label, 20);
        if (text.isEmpty()) {
            return null;
        }
        MonthDay day = DayOfYear.read(text).orElse(null);
        if (day == null) {
            reader.refuse(
                    field,
                    "%s was '%s'; a day and month such as 24 May is accepted."
                            .formatted(label, text.length() > 20 ? text.substring(0, 20) + "…" : text));
        }
        return day;
    }
}
