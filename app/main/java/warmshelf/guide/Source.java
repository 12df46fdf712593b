package warmshelf.guide;

import warmshelf.crop.Standing;

/**
 * Who says something.
 *
 * @param title as the reference table names it; 'common practice' and 'from memory' are titles too
 * @param url where to read it; empty where there is no page, or none that is sent encrypted
 */
public record Source(String title, String url, Standing standing) {
    /** The same, with the address only where it can be read over an encrypted line. */
    public static Source of(String title, String url, Standing standing) {
        return new Source(title, url.startsWith("https://") ? url : "", standing);
    }

    /** Whether nobody published it, so that the title itself is the mark. */
    public boolean isUnpublished() {
        return standing == Standing.COMMON_PRACTICE || standing == Standing.FROM_MEMORY;
    }
}
