package warmshelf.finding.statistics;

import java.util.ArrayList;
import java.util.List;

/**
 * The interval-censored months of 94 patients that statisticians compare their programs by: Finkelstein and Wolfe 1985, Biometrics 41,
 * 933-945; copied from the first example of a statistics package's manual,
 * https://support.sas.com/documentation/cdl/en/statug/68162/HTML/default/statug_iclifetest_gettingstarted.htm . Not seed, but the same
 * mathematics. A first number without a second: not by then.
 */
final class CosmesisData {
    static final Arm RADIATION = arm(
            "radiation",
            "45 . 25 37 37 . 6 10 46 . 0 5 0 7 26 40 18 . 46 . 46 . 24 . 46 . 27 34 36 . 7 16 36 44 5 11 17 . 46 ."
                    + " 19 35 7 14 36 48 17 25 37 44 37 . 24 . 0 8 40 . 32 . 4 11 17 25 33 . 15 . 46 . 19 26 11 15 11 18"
                    + " 37 . 22 . 38 . 34 . 46 . 5 12 36 . 46 .");
    static final Arm WITH_CHEMOTHERAPY = arm(
            "with chemotherapy",
            "8 12 0 5 30 34 0 22 5 8 13 . 24 31 12 20 10 17 17 27 11 . 8 21 17 23 33 40 4 9 24 30 31 . 11 . 16 24"
                    + " 13 39 14 19 13 . 19 32 4 8 11 13 34 . 34 . 16 20 13 . 30 36 18 25 16 24 18 24 17 26 35 . 16 60"
                    + " 32 . 15 22 35 39 23 . 11 17 21 . 44 48 22 32 11 20 14 17 10 35 48 .");

    private CosmesisData() {}

    private static Arm arm(String name, String numbers) {
        String[] words = numbers.split(" ", -1);
        List<SproutingTime> times = new ArrayList<>();
        for (int i = 0; i < words.length; i += 2) {
            double after = Double.parseDouble(words[i]);
            times.add(
                    words[i + 1].equals(".")
                            ? SproutingTime.notBy(after)
                            : SproutingTime.between(after, Double.parseDouble(words[i + 1])));
        }
        return new Arm(name, times);
    }
}
