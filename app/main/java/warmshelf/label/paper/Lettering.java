package warmshelf.label.paper;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.AttributedString;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Letters of any script as outlines, shaped and in their order of reading by the JDK's {@link TextLayout}, from fonts that the
 * program brings along: what is drawn needs no font on the reader's machine nor in the PDF. Fonts are read when first needed.
 */
public final class Lettering {
    private static final Lettering BUNDLED = new Lettering();
    private static final String LATIN = "NotoSans-Regular";
    private static final String BOLD = "NotoSans-Bold";

    /** In this order; what the bold font lacks is drawn in the regular ones. */
    private static final String[] FONTS = {
        LATIN,
        "NotoSansHebrew-Regular",
        "NotoSansArabic-Regular",
        "NotoSansArmenian-Regular",
        "NotoSansGeorgian-Regular",
        "NotoSansThai-Regular",
        "NotoSansLao-Regular",
        "NotoSansDevanagari-Regular",
        "NotoSansBengali-Regular",
        "NotoSansGurmukhi-Regular",
        "NotoSansGujarati-Regular",
        "NotoSansTamil-Regular",
        "NotoSansTelugu-Regular",
        "NotoSansKannada-Regular",
        "NotoSansMalayalam-Regular",
        "NotoSansSinhala-Regular",
        "NotoSansKhmer-Regular",
        "NotoSansMyanmar-Regular",
        "NotoSansEthiopic-Regular",
        "DroidSansFallback"
    };

    /** Scripts whose letters keep their form and run from left to right; digits and points are of the common one. */
    private static final Set<Character.UnicodeScript> ALONE = EnumSet.of(
            Character.UnicodeScript.COMMON,
            Character.UnicodeScript.LATIN,
            Character.UnicodeScript.GREEK,
            Character.UnicodeScript.CYRILLIC,
            Character.UnicodeScript.ARMENIAN,
            Character.UnicodeScript.GEORGIAN,
            Character.UnicodeScript.HAN,
            Character.UnicodeScript.HIRAGANA,
            Character.UnicodeScript.KATAKANA);

    /** Outlines are made this large, so that nothing is rounded to a pixel, and scaled down. */
    private static final float EM = 1000;

    private static final FontRenderContext PLAIN = new FontRenderContext(null, true, true);
    private static final int KEPT = 4000;

    private final Map<String, Font> fonts = new ConcurrentHashMap<>();
    private final Map<String, Run> runs = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Run> eldest) {
            return size() > KEPT;
        }
    };

    private Lettering() {}

    /** The letters that the program brings along. */
    public static Lettering bundled() {
        return BUNDLED;
    }

    /**
     * A text as it is drawn.
     *
     * @param outline from the baseline's beginning, the em being 1, downwards positive
     * @param width of the text, the em being 1
     */
    record Run(Shape outline, double width) {}

    /** The width of a text in millimetres, in letters of one millimetre. */
    public double width(String text, boolean bold) {
        return pieces(text).stream()
                .mapToDouble(piece -> run(piece, bold).width())
                .sum();
    }

    /**
     * A text in pieces that are drawn side by side: sign by sign where each stands for itself, which makes many labels of few
     * outlines, and as a whole where signs change by their neighbours or run from right to left.
     */
    static List<String> pieces(String text) {
        return text.codePoints().allMatch(Lettering::standsAlone)
                ? text.codePoints().mapToObj(Character::toString).toList()
                : List.of(text);
    }

    private static boolean standsAlone(int sign) {
        return !isJoined(sign) && !isFormat(sign) && ALONE.contains(Character.UnicodeScript.of(sign));
    }

    /** Whether there is a letter for each sign of a text. */
    public boolean canWrite(String text) {
        return text.codePoints()
                .allMatch(sign -> isBare(sign) || fontOf(sign, false).isPresent());
    }

    Run run(String text, boolean bold) {
        String key = (bold ? "b" : "r") + text;
        synchronized (runs) {
            return runs.computeIfAbsent(key, none -> draw(text, bold));
        }
    }

    private Run draw(String text, boolean bold) {
        if (text.isEmpty()) {
            return new Run(new Path2D.Double(), 0);
        }
        TextLayout layout = new TextLayout(withFonts(text, bold).getIterator(), PLAIN);
        AffineTransform small = AffineTransform.getScaleInstance(1 / EM, 1 / EM);
        return new Run(layout.getOutline(small), layout.getAdvance() / EM);
    }

    /** The text with a font for each stretch; marks and spaces keep the font before them, so that they are shaped together. */
    private AttributedString withFonts(String text, boolean bold) {
        AttributedString fonts = new AttributedString(text);
        Font current = font(bold ? BOLD : LATIN);
        int at = 0;
        while (at < text.length()) {
            int sign = text.codePointAt(at);
            int next = at + Character.charCount(sign);
            if (!isBare(sign) && !(isJoined(sign) && current.canDisplay(sign))) {
                current = fontOf(sign, bold).orElse(current);
            }
            fonts.addAttribute(TextAttribute.FONT, current, at, next);
            at = next;
        }
        return fonts;
    }

    private Optional<Font> fontOf(int sign, boolean bold) {
        if (bold && font(BOLD).canDisplay(sign)) {
            return Optional.of(font(BOLD));
        }
        for (String name : FONTS) {
            Font font = font(name);
            if (font.canDisplay(sign)) {
                return Optional.of(font);
            }
        }
        return Optional.empty();
    }

    /** Draws nothing itself: spaces, joiners and marks of direction. */
    private static boolean isBare(int sign) {
        return Character.isWhitespace(sign) || Character.isSpaceChar(sign) || isFormat(sign);
    }

    private static boolean isFormat(int sign) {
        return Character.getType(sign) == Character.FORMAT;
    }

    private static boolean isJoined(int sign) {
        int type = Character.getType(sign);
        return type == Character.NON_SPACING_MARK
                || type == Character.COMBINING_SPACING_MARK
                || type == Character.ENCLOSING_MARK;
    }

    private Font font(String name) {
        return fonts.computeIfAbsent(name, Lettering::read);
    }

    private static Font read(String name) {
        try (InputStream file = Lettering.class.getResourceAsStream("/fonts/" + name + ".ttf")) {
            if (file == null) {
                throw new IllegalStateException("the font " + name + " is missing from the program");
            }
            return Font.createFont(Font.TRUETYPE_FONT, file).deriveFont(EM);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("the font " + name + " cannot be read", unreadable);
        } catch (FontFormatException broken) {
            throw new IllegalStateException("the font " + name + " is broken", broken);
        }
    }
}
