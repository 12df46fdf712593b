/**
 * Labels as they lie on paper, all in millimetres: which sticks, tags, rolls and sheets there are, what of a sowing stands on a
 * label of a size, and the PDF in which it leaves the program. Pure; knows nothing of sowings or of pages.
 */
package warmshelf.label.paper;
