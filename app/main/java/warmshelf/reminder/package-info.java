/**
 * What is to be done and who looks, told where people see it: a calendar feed, and letters by e-mail in the morning
 * or evening.
 *
 * <p><b>Letters</b> are laid ready in the table {@code letter} under a key of person and subject, so that two nodes
 * or a restart tell nobody one thing twice; a node takes a letter for ten minutes before it sends it, so one whose
 * node died is sent by another, at worst twice.
 */
package warmshelf.reminder;
