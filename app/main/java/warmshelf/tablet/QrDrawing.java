package warmshelf.tablet;

/**
 * A QR code as a page draws it.
 *
 * @param side in modules, without the light margin
 * @param margin on each side, in modules
 * @param path of the dark modules, whose unit is one module
 */
public record QrDrawing(int side, int margin, String path) {}
