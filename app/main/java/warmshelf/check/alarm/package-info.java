/** Mats that were read too hot or too cold, and whom that concerns. */
package warmshelf.check.alarm;
