package warmshelf.program;

/** A line to paste into a terminal that tries a token out. */
final class CurlLine {
    private CurlLine() {}

    /** Asks what the token is and may do, which every token answers. */
    static String asking(String address, String token) {
        return "curl -H 'Authorization: Bearer %s' %s%s/token".formatted(token, address, ProgramReadPages.PREFIX);
    }
}
