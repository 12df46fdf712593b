package warmshelf.finding.statistics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Whether chances that were told came true as often as they said.
 *
 * @param bins by the chance told, lowest first; each holds at least one
 * @param brier the mean of the squared differences between the chance and what came, 0 to 1; smaller is better (Brier 1950, Mon.
 *     Weather Rev. 78, 1-3)
 */
public record Calibration(List<Bin> bins, double brier) {
    /** What was told, 0 to 1, and whether it came true. */
    public record Told(double chance, boolean came) {}

    /** Those told about the same chance: its mean, and how many came true. */
    public record Bin(double chance, ObservedShare came) {}

    public Calibration {
        bins = List.copyOf(bins);
    }

    /** In so many bins of as many forecasts each as far as they divide; at least one forecast is needed. */
    public static Calibration of(List<Told> told, int bins) {
        if (told.isEmpty()) {
            throw new IllegalArgumentException("nothing was told");
        }
        List<Told> sorted =
                told.stream().sorted(Comparator.comparingDouble(Told::chance)).toList();
        List<Bin> made = new ArrayList<>();
        int number = Math.min(bins, sorted.size());
        for (int bin = 0; bin < number; bin++) {
            made.add(bin(sorted.subList(bin * sorted.size() / number, (bin + 1) * sorted.size() / number)));
        }
        double squares = told.stream()
                .mapToDouble(each -> Math.pow(each.chance() - (each.came() ? 1 : 0), 2))
                .sum();
        return new Calibration(made, squares / told.size());
    }

    private static Bin bin(List<Told> told) {
        double mean = told.stream().mapToDouble(Told::chance).average().orElseThrow();
        int came = (int) told.stream().filter(Told::came).count();
        return new Bin(mean, new ObservedShare(came, told.size()));
    }
}
