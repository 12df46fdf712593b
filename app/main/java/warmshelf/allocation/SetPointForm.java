package warmshelf.allocation;

import warmshelf.web.FormReader;
import warmshelf.web.Units;

/** Reads a set-point as typed in the reader's own unit. */
public final class SetPointForm {
    private SetPointForm() {}

    /** The field 'celsius', in whole degrees Celsius. */
    public static int celsius(FormReader form, Units units) {
        if (units.temperature().equals("F")) {
            return (int) Math.round((form.wholeNumber("celsius", "The set-point in °F", 50, 104) - 32) * 5 / 9.0);
        }
        return form.wholeNumber("celsius", "The set-point in °C", 10, 40);
    }
}
