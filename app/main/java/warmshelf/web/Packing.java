package warmshelf.web;

import io.javalin.compression.Brotli;
import io.javalin.compression.CompressionStrategy;
import io.javalin.compression.CompressionType;
import io.javalin.compression.Gzip;
import java.util.List;

/**
 * How answers are packed: with Brotli for whoever takes it, which browsers do over https and from their own machine, else with
 * gzip.
 */
public final class Packing {
    // From this level on Brotli finds what repeats through a whole page, such as the round of a large group.
    private static final int BROTLI_LEVEL = 5;
    private static final int GZIP_LEVEL = 6;

    private Packing() {}

    /** Gzip alone on a machine for which there is no Brotli. */
    public static CompressionStrategy strategy() {
        CompressionStrategy strategy = new CompressionStrategy(new Brotli(BROTLI_LEVEL), new Gzip(GZIP_LEVEL));
        strategy.setPreferredCompressors(List.of(CompressionType.BR, CompressionType.GZIP));
        return strategy;
    }
}
