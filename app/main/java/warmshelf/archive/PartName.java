package warmshelf.archive;

import java.util.UUID;
import java.util.regex.Pattern;

/** How the parts of a file are called. */
final class PartName {
    static final String MANIFEST = "manifest.json";
    static final String CHECKSUMS = "checksums.sha256";
    static final String README = "README.txt";
    static final String DICTIONARY_JSON = "dictionary.json";
    static final String DICTIONARY_CSV = "dictionary.csv";

    private static final Pattern KNOWN = Pattern.compile(
            "manifest\\.json|checksums\\.sha256|README\\.txt|dictionary\\.(json|csv)|data/[a-z][a-z0-9_]*\\.jsonl"
                    + "|tables/[a-z][a-z0-9_]*\\.csv|photos/[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}\\.jpg");
    private static final Pattern CLIMBING = Pattern.compile("(^|.*[/\\\\])\\.\\.([/\\\\].*|$)|^[/\\\\].*|^[A-Za-z]:.*");

    private PartName() {}

    static String data(String table) {
        return "data/" + table + ".jsonl";
    }

    static String table(String table) {
        return "tables/" + table + ".csv";
    }

    static String photo(UUID id) {
        return "photos/" + id + ".jpg";
    }

    static boolean isData(String name) {
        return name.startsWith("data/");
    }

    /** Whether it holds rows, for the program or for people. */
    static boolean isTable(String name) {
        return isData(name) || name.startsWith("tables/");
    }

    static boolean isPhoto(String name) {
        return name.startsWith("photos/");
    }

    /** The key of the row to which a picture belongs. */
    static UUID ofPhoto(String name) {
        return UUID.fromString(name.substring("photos/".length(), name.length() - ".jpg".length()));
    }

    static boolean isKnown(String name) {
        return KNOWN.matcher(name).matches();
    }

    /** Whether it would lead out of the folder into which somebody unpacks it. */
    static boolean climbs(String name) {
        return CLIMBING.matcher(name).matches();
    }
}
