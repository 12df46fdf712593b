package warmshelf.reminder.push;

import java.time.Instant;

/**
 * What a device shows. It stands on a lock screen, so it says no more than crop and place.
 *
 * @param about the key by which nobody is told it twice
 * @param path of the page behind it, one of ours
 * @param urgent whether a sleeping device is woken for it
 * @param topic what it is about in general: a later notice of the same topic takes its place while the device is off
 * @param until after that it is of no use
 */
public record PushMessage(
        String about, String title, String body, String path, boolean urgent, String topic, Instant until) {
    static final int LONGEST_TITLE = 120;
    static final int LONGEST_BODY = 200;

    public PushMessage {
        title = shortened(title, LONGEST_TITLE);
        body = shortened(body, LONGEST_BODY);
    }

    private static String shortened(String text, int longest) {
        return text.length() <= longest ? text : text.substring(0, longest - 1) + "…";
    }
}
