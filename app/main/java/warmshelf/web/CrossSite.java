package warmshelf.web;

import org.jspecify.annotations.Nullable;

/**
 * Tells whether a change was asked for from another site's page. Browsers say so themselves in Sec-Fetch-Site; where they do
 * not (older ones, and any on a plain-http address) the Origin tells.
 */
final class CrossSite {
    private final @Nullable String baseUrl;

    CrossSite(@Nullable String baseUrl) {
        this.baseUrl = baseUrl;
    }

    boolean asks(@Nullable String secFetchSite, @Nullable String origin, @Nullable String host) {
        if (secFetchSite != null) {
            return !secFetchSite.equals("same-origin") && !secFetchSite.equals("none");
        }
        if (origin == null) {
            // No browser sends a form without either header; scripts outside browsers carry no one else's cookies.
            return false;
        }
        return !isOurs(origin) && !isAt(origin, host);
    }

    private static boolean isAt(String origin, @Nullable String host) {
        return host != null && (origin.equals("http://" + host) || origin.equals("https://" + host));
    }

    private boolean isOurs(String origin) {
        return origin.equals(baseUrl);
    }
}
