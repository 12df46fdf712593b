package warmshelf.duty;

import java.time.LocalDate;
import java.util.UUID;

/** One day on which somebody looks at one site. */
public record Turn(UUID site, LocalDate day) {
    /** As form fields and addresses write it, for example '1f0c…/2027-03-04'. */
    public String words() {
        return site + "/" + day;
    }

    /**
     * Reads what {@link #words} writes.
     *
     * @throws IllegalArgumentException when the text is nothing of the kind
     */
    public static Turn parse(String text) {
        String[] parts = text.split("/", -1);
        if (parts.length != 2) {
            throw new IllegalArgumentException("no site and day");
        }
        try {
            return new Turn(UUID.fromString(parts[0]), LocalDate.parse(parts[1]));
        } catch (java.time.format.DateTimeParseException notADay) {
            throw new IllegalArgumentException("no day", notADay);
        }
    }
}
