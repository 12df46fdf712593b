package warmshelf.guide;

import org.jspecify.annotations.Nullable;

/**
 * What one source says of a measure.
 *
 * @param of what it speaks of, such as a kind of lamp; empty where it says no more than the measure's own title
 * @param says in our words and the reader's units
 * @param amount the same as a figure; null where it is none
 * @param printed the row of the reference table that it is told from, in the table's own words
 */
public record Claim(String of, String says, @Nullable Amount amount, String printed, Source source) {}
