package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import java.util.List;
import java.util.Map;
import warmshelf.words.FormReader;

/** What a person fills in on joining. */
public record PersonForm(FormReader reader, String name, String country, String postcode, String passphrase) {
    static final int LONGEST_NAME = 60;

    /** Reads name, country, postcode and passphrase. */
    public static PersonForm from(Map<String, List<String>> typed) {
        return from(new FormReader(typed), "country");
    }

    /** Reads them as part of a larger form, which may ask for the country under another name. */
    public static PersonForm from(FormReader form, String countryField) {
        String name = readName(form);
        String country = PostcodeRule.readCountry(form, countryField);
        String postcode = PostcodeRule.readPostcode(form, "postcode", SAY.ownPostcodeField(), country);
        String passphrase = PassphraseRule.read(form, "passphrase", SAY.passphraseField(), name);
        return new PersonForm(form, name, country, postcode, passphrase);
    }

    static String readName(FormReader form) {
        return form.requiredText("name", SAY.ownNameField(), LONGEST_NAME).replaceAll("\\s+", " ");
    }

    public boolean ok() {
        return reader.ok();
    }

    /** The person as stored, with the passphrase hashed. */
    public NewMember person(Passphrases passphrases) {
        return new NewMember(name, country, postcode, passphrases.hash(passphrase));
    }
}
