package warmshelf.label;

import java.net.URI;
import java.util.Locale;

/** The address in a QR code. */
final class CodeAddress {
    private CodeAddress() {}

    /**
     * Where the QR code of a short code leads. Scheme and host mean the same in capitals (RFC 3986, 6.2.2.1), and capitals take
     * less of a QR code than small letters (ISO/IEC 18004, alphanumeric mode), so that it fits on a plant stick. Where the group
     * lives below a path, that has to stay as it is.
     *
     * @param base for example 'https://seeds.example.org'
     */
    static String of(String base, ShortCode code) {
        String path = URI.create(base).getRawPath();
        boolean bare = path == null || path.isEmpty();
        return bare ? base.toUpperCase(Locale.ROOT) + "/C/" + code.text() : base + "/c/" + code.text();
    }
}
