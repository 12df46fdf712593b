package warmshelf.web;

import java.time.ZoneId;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Where and how the pages are served.
 *
 * @param port 0 for any free one
 * @param baseUrl the address people type, without a slash at the end; null: whichever a browser used
 * @param trustedProxies addresses of reverse proxies whose word on the visitor's address is taken
 * @param zone counts the days until the group has named its own
 */
public record WebSettings(String host, int port, @Nullable String baseUrl, Set<String> trustedProxies, ZoneId zone) {
    public boolean https() {
        return baseUrl != null && baseUrl.startsWith("https://");
    }
}
