package warmshelf.check;

import java.util.regex.Pattern;

/** Where a tick leads back to: only to a view of the round. */
final class GoOn {
    private static final Pattern ROUND = Pattern.compile("/today(\\?show=(all|mine|one&at=\\d{1,5}))?");

    private GoOn() {}

    static String to(String asked, String otherwise) {
        return ROUND.matcher(asked).matches() ? asked : otherwise;
    }
}
