/** How figures, days and places are written for people, and read from what they type; knows nothing of the web. */
package warmshelf.words;
