package warmshelf.allocation;

import java.time.LocalDate;

/** The true reason why a request finds no space. */
public sealed interface NoSpace {
    /** No mat can hold a temperature that suits the crop. */
    record NoMatInBand(Band band) implements NoSpace {}

    /** Its seed comes up in light only, and every mat that can be warm enough lies in the dark. */
    record AllDark(Band band) implements NoSpace {}

    /** Every fitting mat is taken, out of service, or set to what does not suit, from the first to the last sensible start. */
    record Full(LocalDate first, LocalDate last) implements NoSpace {}

    /** The last sensible start has passed. */
    record TooLate(LocalDate latest) implements NoSpace {}
}
