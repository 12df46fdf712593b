package warmshelf.reminder.push;

import java.time.Duration;

/** How long what was told is kept. */
public final class MessageLife {
    /**
     * Letters and notices that were sent or given up stay so long, so that nobody is told one thing twice; nothing is told again so
     * much later.
     */
    public static final Duration KEPT = Duration.ofDays(90);

    private MessageLife() {}
}
