package warmshelf.reminder.push;

import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import warmshelf.reminder.push.EndpointRefusal.Fault;

/** The rule for real push services: https at the usual port, at a name in the public network. */
public final class PublicEndpoints implements EndpointRule {
    static final int LONGEST = 1000;
    private static final int HTTPS_PORT = 443;

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
    public Optional<EndpointRefusal> refusal(String endpoint) {
        if (endpoint.isEmpty()) {
            return Optional.of(Fault.EMPTY);
        }
        if (endpoint.length() > LONGEST) {
            return Optional.of(new EndpointRefusal.TooLong(endpoint.length(), LONGEST));
        }
        try {
            return refusal(new URI(endpoint));
        } catch (URISyntaxException notAnAddress) {
            return Optional.of(Fault.NO_ADDRESS);
        }
    }

    private static Optional<EndpointRefusal> refusal(URI address) {
        if (!"https".equals(address.getScheme())) {
            return Optional.of(Fault.NOT_HTTPS);
        }
        if (address.getRawAuthority() == null || address.getRawAuthority().contains("@")) {
            return Optional.of(Fault.NO_SERVER);
        }
        if (address.getHost() == null || !NAME.matcher(address.getHost()).matches()) {
            return Optional.of(Fault.NOT_PUBLIC);
        }
        if (address.getPort() != -1 && address.getPort() != HTTPS_PORT) {
            return Optional.of(new EndpointRefusal.OtherPort(address.getPort(), HTTPS_PORT));
        }
        return address.getRawFragment() == null ? Optional.empty() : Optional.of(Fault.HAS_FRAGMENT);
    }

    @Override
    public boolean mayConnect(URI endpoint) throws IOException {
        List<InetAddress> found = lookup.of(endpoint.getHost());
        return !found.isEmpty() && found.stream().allMatch(PublicNetwork::holds);
    }
}
