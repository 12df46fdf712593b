package warmshelf.frost.garden;

import static warmshelf.frost.garden.GardenSentences.SAY;

import java.time.MonthDay;
import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.garden.FrostCorrection.Change;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** The fields that say what a correction does: days later or earlier, or the dates themselves. */
final class ChangeFields {
    static final List<Choice> HOWS = List.of(new Choice("shift", SAY.howShift()), new Choice("dates", SAY.howDates()));
    static final List<Choice> WAYS = List.of(new Choice("later", SAY.later()), new Choice("earlier", SAY.earlier()));
    private static final int MOST_DAYS = 40;
    private static final List<String> SHIFT = List.of("springDays", "autumnDays");
    private static final List<String> DATES =
            List.of("springAverage", "springOneInTen", "autumnAverage", "autumnOneInTen");

    private ChangeFields() {}

    /** After a problem the change is only a stand-in. */
    static Change read(FormReader reader) {
        switch (reader.text("how")) {
            case "shift" -> {
                refuseOthers(reader, DATES, SAY.daysAndDates());
                return shift(reader);
            }
            case "dates" -> {
                refuseOthers(reader, SHIFT, SAY.datesAndDays());
                return dates(reader);
            }
            default -> {
                reader.refuse("how", SAY.howNotChosen());
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
        int spring = days(reader, "springDays", SAY.daysInSpring(), "springWay");
        int autumn = days(reader, "autumnDays", SAY.daysInAutumn(), "autumnWay");
        if (reader.ok() && spring == 0 && autumn == 0) {
            reader.refuse("how", SAY.bothNought(MOST_DAYS));
        }
        return new Change.Shift(spring, autumn);
    }

    private static int days(FormReader reader, String field, String label, String wayField) {
        int days = reader.optionalWholeNumber(field, label, 0, MOST_DAYS).orElse(0);
        String way = reader.text(wayField).isEmpty() ? "later" : reader.text(wayField);
        if (!way.equals("later") && !way.equals("earlier")) {
            reader.refuse(wayField, SAY.neitherWay(label));
        }
        return way.equals("earlier") ? -days : days;
    }

    private static Change dates(FormReader reader) {
        Change.Dates dates = new Change.Dates(
                day(reader, "springAverage", SAY.springAverage()),
                day(reader, "springOneInTen", SAY.springOneInTen()),
                day(reader, "autumnAverage", SAY.autumnAverage()),
                day(reader, "autumnOneInTen", SAY.autumnOneInTen()));
        if (reader.ok() && DATES.stream().allMatch(field -> reader.text(field).isEmpty())) {
            reader.refuse("springAverage", SAY.noDate());
        }
        if (comesFirst(dates.springOneInTen(), dates.springAverage())) {
            reader.refuse(
                    "springOneInTen", SAY.springWrongWay(reader.text("springOneInTen"), reader.text("springAverage")));
        }
        if (comesFirst(dates.autumnAverage(), dates.autumnOneInTen())) {
            reader.refuse(
                    "autumnOneInTen", SAY.autumnWrongWay(reader.text("autumnOneInTen"), reader.text("autumnAverage")));
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
            reader.refuse(field, SAY.noDay(label, text.length() > 20 ? text.substring(0, 20) + "…" : text));
        }
        return day;
    }
}
