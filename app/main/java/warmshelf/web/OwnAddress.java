package warmshelf.web;

import java.net.URI;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** An address of this installation, such as 'https://seeds.example.org', as it is given to others. */
final class OwnAddress {
    private OwnAddress() {}

    /**
     * Whether no other device can open it: it names whichever machine it is typed on. RFC 6761 keeps 'localhost' and the names
     * under it for that, RFC 1122 127.0.0.0/8, RFC 4291 ::1; 0.0.0.0 and :: name no machine at all.
     */
    static boolean isOfThisMachineOnly(String address) {
        @Nullable String host = URI.create(address).getHost();
        if (host == null) {
            return false;
        }
        String name = host.toLowerCase(Locale.ROOT);
        return name.equals("localhost")
                || name.endsWith(".localhost")
                || name.matches("127(\\.\\d{1,3}){3}|0\\.0\\.0\\.0|\\[(0*:)*:?0*1?]");
    }
}
