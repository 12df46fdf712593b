/** How each step is done, in our own words, with what every source says of it, where they disagree, and what can hurt someone. */
package warmshelf.guide;
