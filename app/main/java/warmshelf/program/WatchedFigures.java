package warmshelf.program;

import java.util.function.Supplier;

/**
 * WatchedFigures of the server itself, made when somebody asks.
 *
 * @param type what kind of text they are
 */
public record WatchedFigures(String type, Supplier<String> text) {}
