package warmshelf.check;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.UUID;

/**
 * What the thermometer of a mat showed.
 *
 * @param id made by the phone, so that sending twice stores once
 * @param seenOn the day, in the group's time zone
 */
record Reading(UUID id, UUID mat, LocalDate seenOn, OffsetDateTime seenAt, double celsius, String note) {
    Reading(UUID id, UUID mat, LocalDate seenOn, OffsetDateTime seenAt, double celsius) {
        this(id, mat, seenOn, seenAt, celsius, "");
    }

    /** The bounds of what is believed, in °C; those in °F are the same temperatures. */
    static final int LOWEST_C = -10;

    static final int HIGHEST_C = 60;

    /** From what was typed, in the unit that the page showed. */
    static double celsius(double typed, boolean fahrenheit) {
        return fahrenheit ? (typed - 32) * 5 / 9 : typed;
    }

    static double typedBound(int celsius, boolean fahrenheit) {
        return fahrenheit ? celsius * 9.0 / 5 + 32 : celsius;
    }
}
