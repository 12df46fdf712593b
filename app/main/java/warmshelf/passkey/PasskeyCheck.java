package warmshelf.passkey;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.webauthn4j.WebAuthnManager;
import com.webauthn4j.converter.AttestedCredentialDataConverter;
import com.webauthn4j.converter.util.ObjectConverter;
import com.webauthn4j.credential.CredentialRecordImpl;
import com.webauthn4j.data.AuthenticationData;
import com.webauthn4j.data.AuthenticationParameters;
import com.webauthn4j.data.PublicKeyCredentialParameters;
import com.webauthn4j.data.PublicKeyCredentialType;
import com.webauthn4j.data.RegistrationData;
import com.webauthn4j.data.RegistrationParameters;
import com.webauthn4j.data.attestation.authenticator.AttestedCredentialData;
import com.webauthn4j.data.attestation.authenticator.AuthenticatorData;
import com.webauthn4j.data.attestation.statement.COSEAlgorithmIdentifier;
import com.webauthn4j.data.attestation.statement.NoneAttestationStatement;
import com.webauthn4j.data.client.Origin;
import com.webauthn4j.data.client.challenge.DefaultChallenge;
import com.webauthn4j.server.ServerProperty;
import java.io.IOException;
import java.util.Base64;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Judges what a device has signed, by a library: the one place that knows it. What a stranger sends can be so wrong that the library
 * stumbles over it, besides saying no; either is a no.
 */
final class PasskeyCheck {
    private static final Logger LOG = LoggerFactory.getLogger(PasskeyCheck.class);
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Base64.Encoder TEXT = Base64.getUrlEncoder().withoutPadding();
    private static final Base64.Decoder BYTES = Base64.getUrlDecoder();

    /** ES256, EdDSA and RS256: what phones and computers make. */
    private static final List<PublicKeyCredentialParameters> KINDS = List.of(
            kind(COSEAlgorithmIdentifier.ES256),
            kind(COSEAlgorithmIdentifier.EdDSA),
            kind(COSEAlgorithmIdentifier.RS256));

    private final PasskeyParty party;
    private final WebAuthnManager library;
    private final AttestedCredentialDataConverter keys;

    PasskeyCheck(PasskeyParty party) {
        ObjectConverter converter = new ObjectConverter();
        this.party = party;
        // Which maker's device it is does not matter here, so that nothing is asked that would tell it.
        this.library = WebAuthnManager.createNonStrictWebAuthnManager(converter);
        this.keys = new AttestedCredentialDataConverter(converter);
    }

    private static PublicKeyCredentialParameters kind(COSEAlgorithmIdentifier algorithm) {
        return new PublicKeyCredentialParameters(PublicKeyCredentialType.PUBLIC_KEY, algorithm);
    }

    /** The numbers of the kinds of keys that are taken, the one liked best first. */
    static List<Long> kinds() {
        return KINDS.stream().map(each -> each.getAlg().getValue()).toList();
    }

    /**
     * A key as it is kept.
     *
     * @param credential by which the device names it, in base64url
     * @param data the public key, as the device sent it, in base64url
     */
    record Key(String credential, String data, long signCount) {}

    /**
     * What a device says that it was asked to sign.
     *
     * @param credential by which it names its key, in base64url
     * @param challenge in base64url
     */
    record Claim(String credential, String challenge) {}

    /** What an answer says of itself, which nothing has proved yet; empty where it cannot be read. */
    static Optional<Claim> claim(String answer) {
        try {
            JsonNode read = JSON.readTree(answer);
            byte[] client =
                    BYTES.decode(read.path("response").path("clientDataJSON").asText(""));
            String challenge = JSON.readTree(client).path("challenge").asText("");
            String credential = read.path("id").asText("");
            return challenge.isEmpty() || credential.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Claim(credential, challenge));
        } catch (IllegalArgumentException | IOException unreadable) {
            return Optional.empty();
        }
    }

    /** The new key; empty where the answer does not prove that a device of here made it now, with its holder at hand. */
    Optional<Key> made(String answer, String challenge) {
        try {
            RegistrationData made = library.verifyRegistrationResponseJSON(
                    answer, new RegistrationParameters(asked(challenge), KINDS, true, true));
            AuthenticatorData<?> device =
                    Objects.requireNonNull(made.getAttestationObject()).getAuthenticatorData();
            AttestedCredentialData key = Objects.requireNonNull(device.getAttestedCredentialData());
            return Optional.of(new Key(
                    TEXT.encodeToString(key.getCredentialId()),
                    TEXT.encodeToString(keys.convert(key)),
                    device.getSignCount()));
        } catch (RuntimeException no) {
            LOG.info("a passkey was not added: {}", no.getClass().getSimpleName());
            return Optional.empty();
        }
    }

    /** The count that the device now says; empty where the answer does not prove that it holds the key. */
    Optional<Long> signed(String answer, String challenge, Key key) {
        try {
            CredentialRecordImpl kept = new CredentialRecordImpl(
                    new NoneAttestationStatement(),
                    true,
                    null,
                    null,
                    key.signCount(),
                    keys.convert(BYTES.decode(key.data())),
                    null,
                    null,
                    null,
                    Set.of());
            AuthenticationData signed = library.verifyAuthenticationResponseJSON(
                    answer, new AuthenticationParameters(asked(challenge), kept, null, true, true));
            return Optional.of(
                    Objects.requireNonNull(signed.getAuthenticatorData()).getSignCount());
        } catch (RuntimeException no) {
            LOG.info("a passkey signed nobody in: {}", no.getClass().getSimpleName());
            return Optional.empty();
        }
    }

    private ServerProperty asked(String challenge) {
        return ServerProperty.builder()
                .origin(Origin.create(party.origin()))
                .rpId(party.id())
                .challenge(new DefaultChallenge(challenge))
                .build();
    }
}
