package warmshelf.seed;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;
import warmshelf.crop.Crop;
import warmshelf.crop.Standing;

/**
 * How long half of a kind's seed lives in a room, and how far from that the kind may lie.
 *
 * <p>Everything that bears on the kind is averaged in logarithms, by inverse variance: what was found for crops in general, what
 * was found for the species or, where nothing was, for its relatives, which count less, and the packet life in gardeners' tables.
 * The rows are those of {@code db/reference/seed-half-life.csv}; how far each may be off stands in them and is our assumption.
 *
 * @param years until half is dead, at {@link StorageShift}'s room, of seed of which 95 % lived at the start
 * @param doubt one standard deviation of the logarithm of the kind's years
 * @param sources where the rows of the species, or of its relatives, are from; empty where there are none
 */
record HalfLife(double years, double doubt, String sources) {
    /** Another species of the same family may live so many times as long, or as short. Our assumption. */
    private static final double RELATIVES_DIFFER_BY = 2;
    // The geometric mean, over the kinds that have both, of the half-life in the table and the packet life in Knott's
    // Handbook; HalfLifeTest checks it.
    static final double PACKET_LIVES = 3.4;
    private static final double PACKET_LIFE_SPREAD = 2.1;

    private static final List<Row> ROWS =
            ReferenceTable.rows("seed-half-life.csv").stream().map(Row::of).toList();

    /**
     * One half-life that somebody found, or reckoned.
     *
     * @param species empty for crops in general
     * @param spread factor by which it may be off, as one standard deviation
     */
    record Row(
            String kind, String species, String family, double years, double spread, Standing standing, String source) {
        private static Row of(CSVRecord row) {
            return new Row(
                    row.get("kind"),
                    row.get("species"),
                    row.get("family"),
                    Double.parseDouble(row.get("years")),
                    Double.parseDouble(row.get("spread")),
                    Standing.named(row.get("standing")),
                    row.get("source_title"));
        }

        private String genus() {
            return species.split(" ", 2)[0];
        }

        private boolean isOf(String other) {
            return !species.isEmpty() && other.startsWith(species);
        }
    }

    static List<Row> rows() {
        return ROWS;
    }

    static HalfLife of(Crop crop) {
        return of(crop.species(), crop.seedLifeYears() == null ? 0 : crop.seedLifeYears(), ROWS);
    }

    /**
     * The same from other rows.
     *
     * @param packetLife years in good storage; 0 where no table gives them
     */
    static HalfLife of(String species, int packetLife, List<Row> rows) {
        boolean found = rows.stream().anyMatch(row -> row.isOf(species));
        Optional<String> family = found ? Optional.empty() : familyOf(species, rows);
        double weights = 0;
        double sum = 0;
        List<String> sources = new ArrayList<>();
        for (Row row : rows) {
            boolean own = row.isOf(species);
            boolean related = family.filter(row.family()::equals).isPresent();
            if (own || related || row.species().isEmpty()) {
                double weight = weight(own || row.species().isEmpty() ? 0 : RELATIVES_DIFFER_BY, row.spread());
                weights += weight;
                sum += weight * Math.log(row.years());
                if (own || related) {
                    sources.add("%s %s".formatted(row.kind().toLowerCase(Locale.ROOT), row.source()));
                }
            }
        }
        if (packetLife > 0) {
            double weight = weight(0, PACKET_LIFE_SPREAD);
            weights += weight;
            sum += weight * Math.log(PACKET_LIVES * packetLife);
        }
        return new HalfLife(
                Math.exp(sum / weights),
                Math.sqrt(1 / weights),
                sources.stream().distinct().collect(Collectors.joining("; ")));
    }

    /** The family is known of genera that stand in the table; of others nothing is guessed. */
    private static Optional<String> familyOf(String species, List<Row> rows) {
        return rows.stream()
                .filter(row -> !row.species().isEmpty() && species.startsWith(row.genus() + " "))
                .map(Row::family)
                .findFirst();
    }

    private static double weight(double differ, double spread) {
        double relative = differ == 0 ? 0 : Math.log(differ);
        double own = Math.log(spread);
        return 1 / (relative * relative + own * own);
    }
}
