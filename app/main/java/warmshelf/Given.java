package warmshelf;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import warmshelf.words.Numbers;

/** Reads the text given to a command's option, or refuses it with a sentence that says what is accepted. */
public final class Given {
    private static final int SHOWN = 40;

    private Given() {}

    /** A whole number within a range, both ends included. */
    public static int whole(String option, String text, int least, int most) {
        try {
            int number = Integer.parseInt(text.strip());
            if (number >= least && number <= most) {
                return number;
            }
        } catch (NumberFormatException notANumber) {
            // falls through to the sentence below, which covers both cases
        }
        throw new BadInput(
                "%s was '%s'; a whole number from %,d to %,d is accepted.".formatted(option, shown(text), least, most));
    }

    /** A number within a range, both ends included. */
    public static double decimal(String option, String text, double least, double most) {
        try {
            // not Double.parseDouble, which takes 'NaN' and '1d' for numbers
            double number = new BigDecimal(shown(text.strip())).doubleValue();
            if (number >= least && number <= most) {
                return number;
            }
        } catch (NumberFormatException notANumber) {
            // falls through to the sentence below, which covers both cases
        }
        throw new BadInput("%s was '%s'; a number from %s to %s is accepted."
                .formatted(option, shown(text), Numbers.plain(least), Numbers.plain(most)));
    }

    /** A date in ISO 8601. */
    public static LocalDate date(String option, String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException notADate) {
            throw new BadInput("%s was '%s'; a date such as 2027-03-01 is accepted.".formatted(option, shown(text)));
        }
    }

    /** The text as a sentence may repeat it. */
    public static String shown(String text) {
        return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
    }
}
