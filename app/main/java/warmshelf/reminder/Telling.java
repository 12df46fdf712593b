package warmshelf.reminder;

import java.time.Instant;

/**
 * One thing one person is told.
 *
 * @param about the key by which they are told it once
 * @param subject one line
 * @param letter the whole of it, in plain text
 * @param brief what may stand on a lock screen: crop and place, nobody's name
 * @param path of the page behind it
 * @param urgent whether a sleeping phone is woken for it
 * @param topic what it is about in general; a later one of the same topic makes it needless
 * @param until after that it is of no use
 */
record Telling(
        String about,
        String subject,
        String letter,
        String brief,
        String path,
        boolean urgent,
        String topic,
        Instant until) {}
