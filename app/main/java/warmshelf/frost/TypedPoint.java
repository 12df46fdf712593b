package warmshelf.frost;

import static warmshelf.frost.FrostSentences.SAY;

import java.util.Arrays;
import java.util.Locale;
import warmshelf.BadInput;
import warmshelf.Given;

/** A point typed in: degrees, south and west negative, and metres above the sea. */
record TypedPoint(double latitude, double longitude, double elevationM) {

    /** Reads {@code LAT,LON,ELEVATION_M}. */
    static TypedPoint of(String text) {
        String[] parts = text.split(",", -1);
        if (parts.length != 3 || Arrays.stream(parts).anyMatch(part -> !isNumber(part))) {
            throw new BadInput(SAY.notAPoint(Given.shown(text)));
        }
        return new TypedPoint(
                Given.decimal(SAY.latitudeOfAt(), parts[0], -90, 90),
                Given.decimal(SAY.longitudeOfAt(), parts[1], -180, 180),
                Given.decimal(SAY.elevationOfAt(), parts[2], -430, 6500));
    }

    private static boolean isNumber(String text) {
        return text.strip().matches("[+-]?\\d+(\\.\\d+)?");
    }

    String name() {
        return String.format(Locale.ROOT, "%.3f, %.3f", latitude, longitude);
    }

    PostcodePlace place() {
        return new PostcodePlace("", "", name(), "", latitude, longitude, elevationM);
    }
}
