package warmshelf;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import warmshelf.reminder.push.CurvePoint;
import warmshelf.reminder.push.PushKeys;

/** The settings for notices on phones. */
final class PushOptions {
    private static final String PUBLIC = "--push-public-key";
    private static final String PRIVATE = "--push-private-key";
    private static final String CONTACT = "--push-contact";

    @Option(
            names = PUBLIC,
            paramLabel = "KEY",
            description = "Public key for notices on phones, as 'push-keys' prints it"
                    + " (WARMSHELF_PUSH_PUBLIC_KEY, default none: no notices).")
    private @Nullable String publicKey;

    @Option(
            names = PRIVATE,
            paramLabel = "KEY",
            description = "The private key to it; prefer the environment (WARMSHELF_PUSH_PRIVATE_KEY, default none).")
    private @Nullable String privateKey;

    @Option(
            names = CONTACT,
            paramLabel = "ADDRESS",
            description = "Whom push services can write to about the notices, such as mailto:seeds@example.org"
                    + " (WARMSHELF_PUSH_CONTACT, default none).")
    private @Nullable String contact;

    /** The keys; null when none of the three is given. */
    @Nullable
    PushKeys read(Map<String, String> environment) {
        @Nullable String open = given(PUBLIC, publicKey, environment).orNothing(PushOptions::publicKey);
        @Nullable String secret = given(PRIVATE, privateKey, environment).orNothing(PushOptions::privateKey);
        @Nullable String writeTo = given(CONTACT, contact, environment).orNothing(PushOptions::contact);
        if (open == null && secret == null && writeTo == null) {
            return null;
        }
        if (open == null || secret == null || writeTo == null) {
            throw new BadInput("%s is missing; notices on phones need %s, %s and %s together."
                    .formatted(open == null ? PUBLIC : secret == null ? PRIVATE : CONTACT, PUBLIC, PRIVATE, CONTACT));
        }
        return PushKeys.of(open, secret, writeTo)
                .orElseThrow(() -> new BadInput("%s and %s do not belong together; take both from one run of push-keys."
                        .formatted(PUBLIC, PRIVATE)));
    }

    private static SettingsOptions.Given given(String option, @Nullable String typed, Map<String, String> environment) {
        return SettingsOptions.given(option, typed, environment);
    }

    private static String publicKey(SettingsOptions.Given given) {
        if (!CurvePoint.isPublicKey(given.text())) {
            throw given.refused("a public key as push-keys prints it, 87 characters, is accepted");
        }
        return given.text();
    }

    /** The sentence does not repeat what was given: it may be most of a secret. */
    private static String privateKey(SettingsOptions.Given given) {
        if (!CurvePoint.isPrivateKey(given.text())) {
            throw new BadInput(
                    "%s had %d characters and is no private key; one as push-keys prints it, 43 characters, is accepted."
                            .formatted(given.by(), given.text().length()));
        }
        return given.text();
    }

    private static String contact(SettingsOptions.Given given) {
        if (!given.text().matches("mailto:[^@\\s]+@[^@\\s]+|https://[^\\s]+")) {
            throw given.refused("an address such as mailto:seeds@example.org is accepted");
        }
        return given.text();
    }
}
