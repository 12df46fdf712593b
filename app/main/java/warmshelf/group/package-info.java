/** The group itself: opening it, and what is set for everyone. */
package warmshelf.group;
