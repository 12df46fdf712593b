package warmshelf.check;

import java.time.LocalDate;
import java.util.UUID;

/** One thing that waited on a phone, read and checked. */
sealed interface Sent {
    /**
     * A tick at a sowing.
     *
     * @param lightUntil the day until which a place under the light is wanted, if one is
     */
    record AtSowing(UUID sowing, Tick tick, LocalDate lightUntil) implements Sent {}

    /** A thermometer. */
    record AtMat(Reading reading) implements Sent {}

    /** What cannot be taken as it is. */
    record Unfit(String sentence) implements Sent {}
}
