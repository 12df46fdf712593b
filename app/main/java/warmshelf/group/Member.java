package warmshelf.group;

import java.text.Normalizer;
import java.time.OffsetDateTime;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.words.SeenName;

/**
 * A person of the group.
 *
 * @param called what other members see in the place of the name
 * @param temperatureUnit 'C' or 'F'; null: as the group shows it
 * @param lengthUnit 'cm' or 'in'; null: as the group shows it
 * @param leftAt null while the person belongs to the group
 * @param erased whether all that was known of the person is gone; the name is then a word for anybody
 * @param version counts changes, so that two people do not overwrite each other's
 */
public record Member(
        UUID id,
        String name,
        String called,
        boolean coordinator,
        String country,
        String postcode,
        @Nullable String temperatureUnit,
        @Nullable String lengthUnit,
        OffsetDateTime joinedAt,
        @Nullable OffsetDateTime leftAt,
        boolean erased,
        int version) {

    public boolean present() {
        return leftAt == null;
    }

    /** The name that a reader sees of this person. */
    public String nameFor(UUID reader, boolean coordinator) {
        return SeenName.of(name, called, coordinator || id.equals(reader));
    }

    /** The name as it is compared: 'ADA  Moss' and 'Ada Moss' are one person. */
    public static String key(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFKC).strip();
        return plain.replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }
}
