package warmshelf.frost.files;

import java.nio.file.Path;

/**
 * A file as it was sent.
 *
 * @param path where it lies meanwhile
 * @param name what its owner calls it
 */
public record UploadedFile(Path path, String name) {}
