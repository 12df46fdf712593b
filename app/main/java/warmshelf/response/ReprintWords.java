package warmshelf.response;

import static warmshelf.response.ResponseSentences.SAY;

import java.util.stream.Collectors;
import warmshelf.crop.EmergenceDisagreement;
import warmshelf.crop.EmergenceDisagreement.Print;
import warmshelf.words.Units;

/** Tells where reprints of the trials disagree, in the reader's units. */
final class ReprintWords {
    private ReprintWords() {}

    /** For example 'At 77 °F reprints of the trials give 5 or 8 days; we use 8.' */
    static String of(EmergenceDisagreement disagreement, Units units) {
        String at = units.temperature(disagreement.celsius());
        if (disagreement.allDays()) {
            String days = disagreement.printed().stream()
                    .map(Print::number)
                    .sorted()
                    .map(String::valueOf)
                    .collect(Collectors.joining(" " + SAY.or() + " "));
            return SAY.reprintsGiveDays(at, days, disagreement.used().number());
        }
        String each = disagreement.printed().stream()
                .map(print -> "“%s”".formatted(words(print)))
                .collect(Collectors.joining(", " + SAY.another() + " "));
        return SAY.onePrintSays(at, each, words(disagreement.used()));
    }

    private static String words(Print print) {
        return switch (print.outcome()) {
            case DAYS -> SAY.printedDays(print.number());
            case NONE -> SAY.nothingCameUp();
            case UNTESTED -> SAY.notTested();
            case SHARE -> SAY.cameUpWithoutDays(print.number());
        };
    }
}
