package warmshelf.reminder.push;

import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** The rule for real push services: https at the usual port, at a name in the public network. */
public final class PublicEndpoints implements EndpointRule {
    static final int LONGEST = 1000;
    private static final int HTTPS_PORT = 443;
    private static final String ACCEPTED = "an https address at a public name, as browsers give it, is accepted";

    /** A name with a dot whose last part is no number: no spelling of a bare network address passes. */
    private static final Pattern NAME = Pattern.compile(
            "(?=.{4,253}$)([A-Za-z0-9]([A-Za-z0-9-]{0,61}[A-Za-z0-9])?\\.)+[A-Za-z]([A-Za-z0-9-]{0,61}[A-Za-z0-9])");

    private final Lookup lookup;

    public PublicEndpoints() {
        this(name -> List.of(InetAddress.getAllByName(name)));
    }

    PublicEndpoints(Lookup lookup) {
        this.lookup = lookup;
    }

    /** Where a name leads. */
    interface Lookup {
        List<InetAddress> of(String name) throws IOException;
    }

    @Override
    public Optional<String> refusal(String endpoint) {
        if (endpoint.isEmpty()) {
            return sentence("is empty");
        }
        if (endpoint.length() > LONGEST) {
            return sentence("has %,d characters, and at most %,d fit".formatted(endpoint.length(), LONGEST));
        }
        try {
            return refusal(new URI(endpoint));
        } catch (URISyntaxException notAnAddress) {
            return sentence("is no address");
        }
    }

    private static Optional<String> refusal(URI address) {
        if (!"https".equals(address.getScheme())) {
            return sentence("does not begin with https://");
        }
        if (address.getRawAuthority() == null || address.getRawAuthority().contains("@")) {
            return sentence("names a user or no server");
        }
        if (address.getHost() == null || !NAME.matcher(address.getHost()).matches()) {
            return sentence("does not name its server by a public name");
        }
        if (address.getPort() != -1 && address.getPort() != HTTPS_PORT) {
            return sentence("asks for port %d, and only 443 is used".formatted(address.getPort()));
        }
        return address.getRawFragment() == null ? Optional.empty() : sentence("has a part after '#'");
    }

    private static Optional<String> sentence(String trouble) {
        return Optional.of("The device’s push address %s; %s.".formatted(trouble, ACCEPTED));
    }

    @Override
    public boolean mayConnect(URI endpoint) throws IOException {
        List<InetAddress> found = lookup.of(endpoint.getHost());
        return !found.isEmpty() && found.stream().allMatch(PublicNetwork::holds);
    }
}
