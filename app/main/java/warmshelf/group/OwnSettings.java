package warmshelf.group;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What members may change about themselves.
 *
 * @param temperatureUnit 'C' or 'F'; null: as the group shows it
 * @param lengthUnit 'cm' or 'in'; null: as the group shows it
 */
public record OwnSettings(
        String name,
        String country,
        String postcode,
        @Nullable String temperatureUnit,
        @Nullable String lengthUnit) {

    private static final Pattern AUDITED = Pattern.compile("(.+), [A-Z]{2} [^,]*");

    String audited() {
        return "%s, %s %s".formatted(name, country, postcode);
    }

    /** The name in what was written of a change; empty where it was taken out since. */
    public static Optional<String> nameIn(String audited) {
        Matcher written = AUDITED.matcher(audited);
        return written.matches() ? Optional.of(written.group(1)) : Optional.empty();
    }
}
