/**
 * How the server runs, for whoever runs it: a page for coordinators, and the same as figures in the text format of Prometheus, which
 * scripts that watch read with a token. The figures are kept by that format's own library and tell nothing of the group.
 */
@NullMarked
package warmshelf.operation;

import org.jspecify.annotations.NullMarked;
