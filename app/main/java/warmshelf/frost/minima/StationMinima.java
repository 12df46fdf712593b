package warmshelf.frost.minima;

import org.jspecify.annotations.Nullable;

/**
 * A station's daily minima as a file gave them.
 *
 * @param station its code, or the file's name where the file tells none
 * @param point null where the file does not tell the place
 * @param doubted number of minima left out because the service marks them as doubtful
 */
public record StationMinima(String station, @Nullable StationPoint point, DailyMinima minima, int doubted) {}
