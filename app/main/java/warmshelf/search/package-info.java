/**
 * One search over people, sowings, seed and places, from every page.
 *
 * <p>What is looked through is read in a few columns and compared here, not in SQL: so accents and capitals are left out of
 * account alike on both databases, and no sign typed means anything to them.
 */
package warmshelf.search;
