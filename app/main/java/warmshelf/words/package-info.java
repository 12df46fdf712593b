/** How figures, days and places are written for people; knows nothing of the web. */
package warmshelf.words;
