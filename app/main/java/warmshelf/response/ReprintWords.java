package warmshelf.response;

import java.util.Comparator;
import java.util.stream.Collectors;
import warmshelf.crop.EmergenceDisagreement;
import warmshelf.web.Units;

/** Tells where reprints of the trials disagree, in the reader's units. */
final class ReprintWords {
    private static final String DAYS = " days";

    private ReprintWords() {}

    /** For example 'At 77 °F reprints of the trials give 5 or 8 days; we use 8.' */
    static String of(EmergenceDisagreement disagreement, Units units) {
        String at = units.temperature(disagreement.celsius());
        boolean allDays = disagreement.printed().stream().allMatch(printed -> printed.endsWith(DAYS));
        if (allDays) {
            String days = disagreement.printed().stream()
                    .map(printed -> printed.replace(DAYS, ""))
                    .sorted(Comparator.comparingInt(Integer::parseInt))
                    .collect(Collectors.joining(" or "));
            return "At %s reprints of the trials give %s days; we use %s."
                    .formatted(at, days, disagreement.used().replace(DAYS, ""));
        }
        String each = disagreement.printed().stream()
                .map(printed -> "“%s”".formatted(printed))
                .collect(Collectors.joining(", another "));
        return "At %s one print of the trials says %s; we use the first.".formatted(at, each);
    }
}
