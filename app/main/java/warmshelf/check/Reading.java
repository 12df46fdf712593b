package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.words.FormReader;
import warmshelf.words.TemperatureUnit;

/**
 * What the thermometer of a mat showed.
 *
 * @param id made by the phone, so that sending twice stores once
 * @param seenOn the day, in the group's time zone
 * @param seenBy who read it, where somebody else types it in from paper, or a tablet keeps it for them; null: who enters it
 */
record Reading(
        UUID id,
        UUID mat,
        LocalDate seenOn,
        OffsetDateTime seenAt,
        double celsius,
        String note,
        @Nullable UUID seenBy) {
    Reading(UUID id, UUID mat, LocalDate seenOn, OffsetDateTime seenAt, double celsius) {
        this(id, mat, seenOn, seenAt, celsius, "", null);
    }

    /** The same as somebody else read it. */
    Reading seenBy(UUID reader) {
        return new Reading(id, mat, seenOn, seenAt, celsius, note, reader);
    }

    /** The bounds of what is believed, in °C; those in °F are the same temperatures. */
    static final int LOWEST_C = -10;

    static final int HIGHEST_C = 60;

    /** The temperature in °C that was typed in the field 'celsius', in the unit that the page showed. */
    static double celsius(FormReader form, TemperatureUnit unit) {
        return unit.toCelsius(form.decimal(
                "celsius", SAY.temperatureField(unit.sign()), unit.fromCelsius(LOWEST_C), unit.fromCelsius(HIGHEST_C)));
    }
}
