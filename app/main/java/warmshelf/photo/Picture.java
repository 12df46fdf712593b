package warmshelf.photo;

/**
 * A picture as it is kept.
 *
 * @param jpeg a JPEG file without anything beside the picture
 * @param width in pixels
 * @param height in pixels
 */
// The bytes of a file, which nobody compares.
@SuppressWarnings("ArrayRecordComponent")
record Picture(byte[] jpeg, int width, int height) {}
