package warmshelf.browser;

import org.jspecify.annotations.Nullable;
import warmshelf.testing.Person;

/** A page by its name and address, and who looks at it; null: whoever is not signed in. */
record PageVisit(String name, String path, @Nullable Person visitor) {}
