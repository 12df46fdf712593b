/**
 * What people print besides labels: where everything to print is found, a season by member, hardening off, the poster. The round
 * of a week is printed and typed in by the room check, rack plans are drawn by the room shelf.
 */
package warmshelf.paper;
