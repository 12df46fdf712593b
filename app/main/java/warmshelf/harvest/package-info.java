/** What was harvested, asked once in autumn, and whether to grow it again; by variety over members and years. */
@NullMarked
package warmshelf.harvest;

import org.jspecify.annotations.NullMarked;
