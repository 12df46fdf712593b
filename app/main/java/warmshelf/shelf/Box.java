package warmshelf.shelf;

/** A rectangle of a picture, in CSS pixels from its top left corner. */
public record Box(int x, int y, int width, int height) {
    private static final int ROUND = 8;

    /** As the outline of a drawn shape; one text, because a large board draws thousands of them. */
    public String outline() {
        return "M" + x + " " + y + "h" + width + "v" + height + "h-" + width + "z";
    }

    /** The same with round corners, where there is room for them. */
    public String roundOutline() {
        if (width < 2 * ROUND || height < 2 * ROUND) {
            return outline();
        }
        int across = width - 2 * ROUND;
        int down = height - 2 * ROUND;
        String corner = "a" + ROUND + " " + ROUND + " 0 0 1 ";
        return "M" + (x + ROUND) + " " + y + "h" + across + corner + ROUND + " " + ROUND + "v" + down + corner + "-"
                + ROUND + " " + ROUND + "h-" + across + corner + "-" + ROUND + " -" + ROUND + "v-" + down + corner
                + ROUND + " -" + ROUND + "z";
    }

    /** As four numbers for a script. */
    public String numbers() {
        return x + " " + y + " " + width + " " + height;
    }

    /** The same rectangle, smaller by {@code margin} on each side. */
    Box inset(int margin) {
        return new Box(x + margin, y + margin, width - 2 * margin, height - 2 * margin);
    }
}
