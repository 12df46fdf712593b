package warmshelf.reminder;

import java.util.UUID;

/**
 * Somebody who wants to be told of some things, by one channel.
 *
 * @param ofAlarms when a mat with something of theirs on it, for coordinators any mat, is too hot or too cold
 * @param ofStandIns when they are to look because the person on duty has not
 */
record Listener(
        UUID id,
        String name,
        boolean coordinator,
        boolean inTheMorning,
        boolean inTheEvening,
        boolean ofAlarms,
        boolean ofStandIns) {}
