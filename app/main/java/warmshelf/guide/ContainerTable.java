package warmshelf.guide;

import static warmshelf.guide.GuideSentences.SAY;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;
import warmshelf.crop.Standing;
import warmshelf.words.Numbers;
import warmshelf.words.Units;

/** Trays, cells and mats: their measures in the reader's units. */
final class ContainerTable {

    private static final ContainerTable BUNDLED = new ContainerTable();

    private final List<CSVRecord> rows = ReferenceTable.rows("containers.csv");

    private ContainerTable() {}

    static ContainerTable bundled() {
        return BUNDLED;
    }

    /** The outside of a tray along one side. */
    Claim side(String side, String name, boolean inches) {
        CSVRecord row = row(name);
        double millimetres = Double.parseDouble(row.get(side + "_mm"));
        double printed = Double.parseDouble(row.get(side + "_in"));
        Amount amount =
                inches ? Amount.of(printed, printed, "in") : Amount.of(millimetres / 10, millimetres / 10, "cm");
        return new Claim("", amount.words(), amount, printed(row), source(row));
    }

    /** What one cell of a tray holds, and what compost the tray takes. */
    Claim cells(String name, boolean inches) {
        CSVRecord row = row(name);
        double cell = Double.parseDouble(row.get("cell_ml"));
        double tray = Double.parseDouble(row.get("tray_media_litres"));
        String says = inches
                ? SAY.holdsInOunces(
                        Numbers.oneDecimalAtMost(cell / Units.ML_PER_FLUID_OUNCE),
                        Numbers.oneDecimalAtMost(tray * 1000 / Units.ML_PER_QUART))
                : SAY.holdsInLitres(Numbers.oneDecimalAtMost(cell), Numbers.oneDecimalAtMost(tray));
        return new Claim(SAY.cells(row.get("cells")), says, null, printed(row), source(row));
    }

    /** A row that is told in our words. */
    Claim told(String name, String of, String says) {
        return new Claim(of, says, null, printed(row(name)), source(row(name)));
    }

    private static String printed(CSVRecord row) {
        return String.join(" ", row.toList());
    }

    private static Source source(CSVRecord row) {
        return Source.of(row.get("source_title"), row.get("source_url"), Standing.named(row.get("standing")));
    }

    private CSVRecord row(String name) {
        return rows.stream()
                .filter(row -> row.get("name").equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("containers.csv has no row '" + name + "'"));
    }
}
