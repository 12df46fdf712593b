package warmshelf.crop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;

/** Where the reprints of the trials print different figures, by vegetable of the table, coldest first. */
final class EmergenceDisagreements {
    private final Map<String, List<EmergenceDisagreement>> byVegetable = new LinkedHashMap<>();

    static EmergenceDisagreements bundled() {
        EmergenceDisagreements found = new EmergenceDisagreements();
        Map<String, TreeMap<Double, EmergenceDisagreement>> cells = new LinkedHashMap<>();
        for (CSVRecord row : ReferenceTable.rows("emergence-disagreements.csv")) {
            double celsius = (Double.parseDouble(row.get("temp_f")) - 32) * 5 / 9;
            String first = words(row.get("first_page_value"));
            String other = words(row.get("other_page_value"));
            cells.computeIfAbsent(row.get("crop"), name -> new TreeMap<>())
                    .merge(
                            celsius,
                            new EmergenceDisagreement(celsius, List.of(first, other), first),
                            EmergenceDisagreements::joined);
        }
        cells.forEach((vegetable, each) -> found.byVegetable.put(vegetable, List.copyOf(each.values())));
        return found;
    }

    /** Two rows of one cell: each print once. */
    private static EmergenceDisagreement joined(EmergenceDisagreement one, EmergenceDisagreement other) {
        List<String> printed = new ArrayList<>(Stream.concat(one.printed().stream(), other.printed().stream())
                .distinct()
                .toList());
        return new EmergenceDisagreement(one.celsius(), printed, one.used());
    }

    private static String words(String printed) {
        if (printed.equals("NG")) {
            return "nothing came up";
        }
        if (printed.equals("not tested")) {
            return "not tested";
        }
        if (printed.endsWith("normal, no days")) {
            return printed.replaceAll("% normal, no days", " % came up, in days not given");
        }
        return printed.replace(" days", "") + " days";
    }

    /** None for a vegetable whose reprints agree. */
    List<EmergenceDisagreement> of(String vegetable) {
        return byVegetable.getOrDefault(vegetable, List.of());
    }
}
