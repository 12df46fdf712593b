/**
 * Asking for space, and what happened to a sowing.
 *
 * <p><b>What moved the dates</b> is not kept but worked out: {@code Redating} takes the timeline after each entry,
 * holds it against the one before it, and names the steps that moved. So a correction also corrects what is told of
 * it.
 */
package warmshelf.sowing;
