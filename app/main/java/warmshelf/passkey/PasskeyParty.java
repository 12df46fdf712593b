package warmshelf.passkey;

import java.net.URI;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The address for which passkeys are made.
 *
 * @param id its name, such as 'seeds.example.org'
 * @param origin as browsers write it, such as 'https://seeds.example.org'
 */
public record PasskeyParty(String id, String origin) {
    private static final int HTTPS = 443;
    private static final int HTTP = 80;

    /** Empty where no passkey can be made: without an address, by plain http but on this machine, and by a number instead of a name. */
    public static Optional<PasskeyParty> at(@Nullable String baseUrl) {
        if (baseUrl == null) {
            return Optional.empty();
        }
        URI address = URI.create(baseUrl);
        @Nullable String host = address.getHost();
        if (host == null || host.startsWith("[") || host.matches("[0-9.]+")) {
            return Optional.empty();
        }
        String name = host.toLowerCase(Locale.ROOT);
        String scheme = address.getScheme().toLowerCase(Locale.ROOT);
        boolean safe = scheme.equals("https") || name.equals("localhost");
        int usual = scheme.equals("https") ? HTTPS : HTTP;
        String port = address.getPort() < 0 || address.getPort() == usual ? "" : ":" + address.getPort();
        return safe ? Optional.of(new PasskeyParty(name, scheme + "://" + name + port)) : Optional.empty();
    }
}
