package warmshelf.web;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Set;
import java.util.regex.Pattern;
import org.eclipse.jetty.util.InetAddressSet;

/** Reverse proxies whose word on the visitor's address is taken: addresses, and networks such as 10.0.0.0/8. */
public final class TrustedProxies {
    /** Digits, dots and colons only: any other name would be looked up in the network. */
    private static final Pattern WRITTEN = Pattern.compile("[0-9a-fA-F.:]+(/\\d{1,3})?");

    private final InetAddressSet networks = new InetAddressSet();

    /** @throws IllegalArgumentException when one of them is no {@linkplain #isNetwork network} */
    public TrustedProxies(Set<String> written) {
        networks.addAll(written);
    }

    /** Whether a text names an address or a network. */
    public static boolean isNetwork(String text) {
        boolean hasSeparator = text.contains(".") || text.contains(":");
        if (!WRITTEN.matcher(text).matches() || !hasSeparator) {
            return false;
        }
        try {
            return new InetAddressSet().add(text);
        } catch (IllegalArgumentException noNetwork) {
            return false;
        }
    }

    boolean holds(InetAddress address) {
        return networks.test(address);
    }

    /** @param address as the server wrote it down, in figures */
    boolean holds(String address) {
        try {
            return isNetwork(address) && holds(InetAddress.getByName(address));
        } catch (UnknownHostException notAnAddress) {
            return false;
        }
    }
}
