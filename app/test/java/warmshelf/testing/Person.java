package warmshelf.testing;

import java.util.UUID;

/** One of the cast: a member with the passphrase to sign in with. */
public record Person(UUID id, String name, String passphrase, String postcode) {}
