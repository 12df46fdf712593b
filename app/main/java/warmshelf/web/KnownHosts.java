package warmshelf.web;

import java.net.URI;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The names by which this installation may be called. With an address of its own, that one; besides, whatever can only mean a
 * machine nearby: figures, a name without dots, and the endings kept for home networks and for multicast names (RFC 6761, 6762,
 * 8375). Any other name was pointed here by somebody else, who could so have links made that lead to them.
 */
final class KnownHosts {
    private static final Pattern PORT = Pattern.compile(":\\d{1,5}$");
    private static final Pattern FIGURES = Pattern.compile("\\d{1,3}(\\.\\d{1,3}){3}|\\[[0-9a-f:.]+]");
    private static final Pattern ONE_WORD = Pattern.compile("[a-z0-9_-]+");
    private static final Set<String> NEARBY =
            Set.of("localhost", "local", "lan", "home", "internal", "intranet", "arpa", "test");

    private final @Nullable String own;

    /** @param baseUrl the address people type; null: not known */
    KnownHosts(@Nullable String baseUrl) {
        this.own = baseUrl == null ? null : URI.create(baseUrl).getHost();
    }

    /** @param header what a browser sent as the host, with its port or without */
    boolean know(String header) {
        String host = PORT.matcher(header.strip().toLowerCase(Locale.ROOT)).replaceFirst("");
        if (host.endsWith(".")) {
            host = host.substring(0, host.length() - 1);
        }
        return host.equalsIgnoreCase(own)
                || FIGURES.matcher(host).matches()
                || ONE_WORD.matcher(host).matches()
                || NEARBY.contains(host.substring(host.lastIndexOf('.') + 1));
    }
}
