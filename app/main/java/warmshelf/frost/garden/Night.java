package warmshelf.frost.garden;

import java.time.LocalDate;

/**
 * The lowest temperature of one night.
 *
 * @param day the morning on which it was read
 * @param by the name of who noted it
 */
public record Night(LocalDate day, double celsius, String by) {}
