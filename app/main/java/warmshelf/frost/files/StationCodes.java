package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import java.util.HashSet;
import java.util.Set;
import warmshelf.BadInput;

/** Sees to it that one import holds each station once, and no more stations than a group can have use for. */
final class StationCodes {
    static final int MOST = 50_000;

    private final Set<String> seen = new HashSet<>();

    /**
     * Takes note of a station.
     *
     * @throws BadInput when it was there already
     */
    void see(String code, String name, double latitude, double longitude) {
        String key = code.isEmpty() ? name + "|" + latitude + "|" + longitude : code;
        if (!seen.add(key)) {
            throw new BadInput(SAY.stationTwice(code.isEmpty() ? name : code));
        }
        if (seen.size() > MOST) {
            throw new FileRefused(SAY.tooManyStations(MOST));
        }
    }

    static String shortened(String text, int longest) {
        return text.length() <= longest ? text : text.substring(0, longest);
    }
}
