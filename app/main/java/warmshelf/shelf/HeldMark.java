package warmshelf.shelf;

import java.time.LocalDate;
import java.util.UUID;

/**
 * A rack that is held because something was found there that spreads, as the racks show it.
 *
 * @param since the day of the first note that holds it
 * @param found what was found, for example 'insects or mites on it'
 * @param sowing on which it was found
 * @param by who found it
 */
public record HeldMark(UUID rackId, LocalDate since, String found, UUID sowing, String title, String by) {}
