package warmshelf.frost;

import java.util.Comparator;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What someone may have meant who typed a postcode that does not exist: the usual slips, the likeliest first. */
final class PostcodeSuggestions {
    private static final int DIGITS = 5;
    private static final int LONGEST = 40;

    private PostcodeSuggestions() {}

    /** The five digits of a code given with its extension ('55802-1234' or '558021234'), else the code itself. */
    static String withoutExtension(String code) {
        String plain = code.strip();
        return plain.matches("\\d{5}[- ]?\\d{4}") ? plain.substring(0, DIGITS) : plain;
    }

    /** Five-digit readings of what was typed; whether such codes exist is not asked here. */
    static Stream<String> readings(String typed) {
        String digits = digits(typed);
        Stream<String> sameLength = Stream.concat(transposed(digits), oneWrong(digits));
        return Stream.of(Stream.of(digits), leadingZero(digits), sameLength, oneTooMany(digits), oneMissing(digits))
                .flatMap(stream -> stream)
                .filter(code -> code.length() == DIGITS && !code.equals(typed));
    }

    /** Letters that look like digits are read as these; anything else is left out. */
    private static String digits(String typed) {
        String head = typed.length() > LONGEST ? typed.substring(0, LONGEST) : typed;
        String plain = withoutExtension(head);
        return plain.replaceAll("[oO]", "0").replaceAll("[lI]", "1").replaceAll("\\D", "");
    }

    /** Spreadsheets drop the zero that New England's codes begin with. */
    private static Stream<String> leadingZero(String digits) {
        return digits.length() == 4 || digits.length() == 3
                ? Stream.of("0".repeat(DIGITS - digits.length()) + digits)
                : Stream.empty();
    }

    private static Stream<String> transposed(String digits) {
        return edits(
                digits.length() - 1,
                i -> digits.substring(0, i) + digits.charAt(i + 1) + digits.charAt(i) + digits.substring(i + 2));
    }

    /** One digit wrong; a slip near the end first, since it leads to a place nearby, and the nearest digit first. */
    private static Stream<String> oneWrong(String digits) {
        return IntStream.range(0, digits.length())
                .mapToObj(fromEnd -> digits.length() - 1 - fromEnd)
                .flatMap(i -> otherDigits(digits.charAt(i))
                        .map(digit -> digits.substring(0, i) + digit + digits.substring(i + 1)));
    }

    private static Stream<Character> otherDigits(char digit) {
        return IntStream.rangeClosed('0', '9')
                .mapToObj(other -> (char) other)
                .filter(other -> other != digit)
                .sorted(Comparator.comparingInt(other -> Math.abs(other - digit)));
    }

    private static Stream<String> oneTooMany(String digits) {
        return edits(digits.length(), i -> digits.substring(0, i) + digits.substring(i + 1));
    }

    private static Stream<String> oneMissing(String digits) {
        return IntStream.rangeClosed(0, digits.length())
                .map(fromEnd -> digits.length() - fromEnd)
                .boxed()
                .flatMap(i -> IntStream.rangeClosed(0, 9)
                        .mapToObj(digit -> digits.substring(0, i) + digit + digits.substring(i)));
    }

    private static Stream<String> edits(int count, IntFunction<String> edit) {
        return IntStream.range(0, Math.max(0, count)).mapToObj(edit);
    }
}
