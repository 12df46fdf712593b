/**
 * How each step is done, in our own words, with what every source says of it, where they disagree, and what can hurt someone.
 *
 * <p>The words are texts in {@code templates/guide/en}; its README says how they are written. {@link Advice} reads them for one reader,
 * {@link Figures} gives them the figures of the reference tables by name, and {@link PracticeDays} gives the same rows to the timeline.
 */
package warmshelf.guide;
