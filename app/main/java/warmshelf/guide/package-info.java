/**
 * How each step is done, in our own words, with what every source says of it, where they disagree, and what can hurt someone.
 *
 * <p>The words stand in {@code templates/guide/en}, for whoever knows the garden to correct: {@code articles} are the how-to pages,
 * {@code steps} what timeline and round say of a step, {@code cautions} and {@code problems} what can hurt someone or go wrong. A file
 * has sections, each below a mark such as <code>{# == how == #}</code>; a section may tell cases apart ('how in a bag', 'how in
 * cells'). What is said in several places stands in one section and is quoted: <code>{{ part.of("light", "height") }}</code>.
 *
 * <p>No text writes a figure. It names the row: <code>{{ figure.of("light", "lamp above the leaves") }}</code> is 10 cm for one reader
 * and 4 in for another. {@code practice.csv} holds what is published, {@code advice.csv} what texts quote besides: figures out of a
 * published row's words ({@code of_table}, {@code of_row}), and what the group itself does (neither). {@link PracticeDays} gives the
 * same rows to the timeline, so that dates follow what the texts say. Tests hold that every figure named is there, that none is
 * written out, that quoted ones stand in the rows they come from, and that no section is left over.
 */
package warmshelf.guide;
