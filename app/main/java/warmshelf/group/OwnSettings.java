package warmshelf.group;

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

    String audited() {
        return "%s, %s %s".formatted(name, country, postcode);
    }
}
