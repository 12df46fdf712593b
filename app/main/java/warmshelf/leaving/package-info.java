/** Somebody leaves: what they leave, what becomes of each thing, taken back for a day. */
package warmshelf.leaving;
