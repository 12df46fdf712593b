/**
 * What people may ask of what is known of them: to see it and take it along, to be erased, and to be told how long it is kept. Where
 * the database names people stands in {@link warmshelf.db.PersonalTraces}, whose texts and photos go with whom follows from it.
 */
@NullMarked
package warmshelf.privacy;

import org.jspecify.annotations.NullMarked;
