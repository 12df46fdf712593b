package warmshelf.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.label.paper.Coin;

/**
 * A ruler and a coin drawn on a screen. Browsers reckon 96 pixels to an inch whatever the screen is, so that a millimetre of
 * theirs is seldom one: {@code factor} says how much larger it has to be drawn on this screen.
 *
 * @param factor 1 where the browser is right
 * @param coin of the group's country; null: none is known
 */
record ScreenRuler(double factor, boolean inches, @Nullable Coin coin) {
    private static final double LEAST = 0.4;
    private static final double MOST = 2.5;
    private static final double LENGTH = 76.2;
    private static final double AROUND = 2;
    private static final double HEIGHT = 12;
    private static final double INCH = 25.4;
    private static final int EIGHTHS = 8;

    /** A line of the ruler, in millimetres, and what stands beside it. */
    record Tick(String x, String length, String words) {}

    /** As a browser keeps it; 1 where it keeps nothing that can be. */
    static ScreenRuler of(@Nullable String kept, boolean inches, String country) {
        Optional<Double> factor = kept == null ? Optional.empty() : number(kept);
        return new ScreenRuler(
                factor.filter(ScreenRuler::canBe).orElse(1.0),
                inches,
                Coin.of(country).orElse(null));
    }

    private static Optional<Double> number(String text) {
        try {
            return Optional.of(Double.parseDouble(text));
        } catch (NumberFormatException notANumber) {
            return Optional.empty();
        }
    }

    private static boolean canBe(double factor) {
        return factor >= LEAST && factor <= MOST;
    }

    /** The same drawn larger by so many per cent, as far as that can be. */
    ScreenRuler larger(double percent) {
        double next = Math.min(MOST, Math.max(LEAST, factor * (1 + percent / 100)));
        return new ScreenRuler(Math.round(next * 10000) / 10000.0, inches, coin);
    }

    /** What the browser keeps. */
    String kept() {
        return String.valueOf(factor);
    }

    /** A measure as it has to be drawn here, in what the browser takes for millimetres. */
    public String drawn(double millimetres) {
        return plain(millimetres * factor);
    }

    /** How long the ruler is, in millimetres. */
    public double length() {
        return LENGTH;
    }

    /** The width of its drawing, with room for the figures at its ends. */
    public String width() {
        return drawn(LENGTH + 2 * AROUND);
    }

    public String height() {
        return drawn(HEIGHT);
    }

    /** What of the ruler's own millimetres the drawing shows. */
    public String viewBox() {
        return "%s 0 %s %s".formatted(plain(-AROUND), plain(LENGTH + 2 * AROUND), plain(HEIGHT));
    }

    /** The coin's radius in millimetres; 0 where there is none. */
    public String radius() {
        return plain(coin == null ? 0 : coin.diameter() / 2);
    }

    /** The side of the coin's drawing. */
    public String coinSide() {
        return drawn(coin == null ? 0 : coin.diameter() + AROUND);
    }

    /** The coin's middle is the drawing's origin. */
    public String coinBox() {
        double side = coin == null ? 0 : coin.diameter() + AROUND;
        return "%s %s %s %s".formatted(plain(-side / 2), plain(-side / 2), plain(side), plain(side));
    }

    /** The ruler's lines: inches in eighths, or millimetres. */
    public List<Tick> ticks() {
        List<Tick> ticks = new ArrayList<>();
        double step = inches ? INCH / EIGHTHS : 1;
        int whole = inches ? EIGHTHS : 10;
        for (int i = 0; i * step <= LENGTH + 0.01; i++) {
            boolean full = i % whole == 0;
            double length = full ? 6 : i % (whole / 2) == 0 ? 4.5 : 3;
            ticks.add(new Tick(plain(i * step), plain(length), full ? String.valueOf(i / whole) : ""));
        }
        return ticks;
    }

    private static String plain(double number) {
        return String.format(Locale.ROOT, "%.2f", number);
    }
}
