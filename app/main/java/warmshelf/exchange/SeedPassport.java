package warmshelf.exchange;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import warmshelf.seed.SeedSource;

/**
 * A lot by the FAO/Bioversity Multi-Crop Passport Descriptors, version 2.1 of December 2015 (Alercia, Diulgheroff and Mackay), as
 * far as they correspond: what a genebank's descriptor asks and a group's seed box does not know is left out. No value stands
 * in for one that is not known; where a field takes several values a semicolon parts them, so none stands within one.
 */
record SeedPassport(
        UUID lot, String species, String crop, String variety, LocalDate addedOn, SeedSource source, String note) {
    static final List<String> DESCRIPTORS = List.of(
            "ACCENUMB",
            "GENUS",
            "SPECIES",
            "SUBTAXA",
            "CROPNAME",
            "ACCENAME",
            "ACQDATE",
            "COLLSRC",
            "STORAGE",
            "REMARKS");

    /** A genus, an epithet (also of a hybrid, or none in particular), and a cultivar group in brackets. */
    private static final Pattern NAME =
            Pattern.compile("([A-Z][a-z-]+)(?: (x [a-z-]+|[a-z-]+|spp?\\.))?(?: \\(([A-Z][a-z]+)\\))?");

    /** Descriptor 21, "Farm or cultivated habitat": seed saved from the members' own plants. */
    private static final String CULTIVATED = "20";
    /** Descriptor 26, "Seed collection". */
    private static final String SEED_COLLECTION = "10";

    /** The values in the descriptors' order; null is not known. */
    @Nullable
    Object[] cells() {
        Matcher name = NAME.matcher(species);
        boolean known = name.matches();
        return new @Nullable Object[] {
            lot,
            known ? name.group(1) : null,
            known ? epithet(name.group(2)) : null,
            known && name.group(3) != null ? name.group(3) + " Group" : null,
            one(crop),
            one(variety),
            DateTimeFormatter.BASIC_ISO_DATE.format(addedOn),
            source == SeedSource.SAVED ? CULTIVATED : null,
            SEED_COLLECTION,
            note.isEmpty() ? null : one(note)
        };
    }

    /** The standard knows one abbreviation only. */
    private static @Nullable String epithet(@Nullable String epithet) {
        return "spp.".equals(epithet) ? "sp." : epithet;
    }

    private static String one(String text) {
        return text.replace(';', ',');
    }
}
