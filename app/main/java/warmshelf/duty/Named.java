package warmshelf.duty;

import java.util.UUID;

/** A site or a person by name, to choose or show. */
public record Named(UUID id, String name) {}
