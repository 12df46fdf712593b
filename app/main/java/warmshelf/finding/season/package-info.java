/** The group's season looked back on: what came of what was sown, space and heat by week, looks, losses; for pages, print and CSV. */
@NullMarked
package warmshelf.finding.season;

import org.jspecify.annotations.NullMarked;
