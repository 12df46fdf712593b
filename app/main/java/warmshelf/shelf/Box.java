package warmshelf.shelf;

/** A rectangle of a picture, in CSS pixels from its top left corner. */
public record Box(int x, int y, int width, int height) {

    /** The same rectangle, smaller by {@code margin} on each side. */
    Box inset(int margin) {
        return new Box(x + margin, y + margin, width - 2 * margin, height - 2 * margin);
    }
}
