package warmshelf.handbook;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;

/**
 * How a requirement of the OWASP Application Security Verification Standard 5.0.0 (2025), levels 1 and 2, is met.
 *
 * @param item its number there, or that of a section that is met as a whole
 * @param how in a sentence
 * @param tests classes of tests that hold it; empty where there is nothing a test could hold
 */
public record SecurityItem(String item, Standing standing, String how, List<String> tests) {

    /** Whether a requirement is met. */
    public enum Standing {
        HELD("held"),
        /** Not wholly, as the sentence tells. */
        PART("part"),
        /** By whoever runs the server. */
        OPERATOR("operator"),
        NOT_HELD("not"),
        /** There is nothing here that it could be about. */
        NOTHING_HERE("none");

        private final String word;

        Standing(String word) {
            this.word = word;
        }

        /** As the table names it. */
        public String word() {
            return word;
        }

        private static Standing named(String word) {
            return Arrays.stream(values())
                    .filter(standing -> standing.word.equals(word))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("no standing is called '" + word + "'"));
        }
    }

    private static SecurityItem of(CSVRecord row) {
        String tests = row.get("tests");
        return new SecurityItem(
                row.get("item"),
                Standing.named(row.get("standing")),
                row.get("how"),
                tests.isEmpty() ? List.of() : List.of(tests.split(" ", 0)));
    }

    /** The chapter of the standard, as 'V1'. */
    public String chapter() {
        int point = item.indexOf('.');
        return point < 0 ? item : item.substring(0, point);
    }

    /** All of them, in the standard's order. */
    static List<SecurityItem> all() {
        return ReferenceTable.rows("web-security.csv").stream()
                .map(SecurityItem::of)
                .toList();
    }
}
