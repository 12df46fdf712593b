/**
 * What is new for each member since they last looked: written by the stores in whose transactions it happens
 * ({@code NewsBookStore}), read as one line a thing ({@code NewsLine}), gone once the page it leads to was opened on whatever
 * device. What is over by now (a request for seed that was answered, seedlings that are taken) is not told any more.
 */
@NullMarked
package warmshelf.news;

import org.jspecify.annotations.NullMarked;
