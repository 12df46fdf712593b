package warmshelf.group;

/** What a person tells when joining. The passphrase is hashed already. */
public record NewMember(String name, String country, String postcode, String passphraseHash) {}
