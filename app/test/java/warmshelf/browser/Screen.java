package warmshelf.browser;

/** The screens that people use, in CSS pixels. */
enum Screen {
    PHONE(390, 844, true),
    /** The narrowest that WCAG 2.2, 1.4.10 asks for: 1280 px at 400 % zoom. */
    NARROW(320, 640, true),
    DESKTOP(1280, 800, false);

    private final int width;
    private final int height;
    private final boolean touch;

    Screen(int width, int height, boolean touch) {
        this.width = width;
        this.height = height;
        this.touch = touch;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    boolean touch() {
        return touch;
    }
}
