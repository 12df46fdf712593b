package warmshelf.label.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import warmshelf.label.paper.LabelDrawing.Written;

/**
 * Sets words in a rectangle: the code first and largest, then each part after the other. A part begins on a line on which all of
 * it has room, and is broken between words only where it is longer than a line. Nothing is ever cut.
 */
final class LabelFlow {
    private static final double LINE = 1.25;
    private static final double BASELINE = 0.95;
    private static final double CODE_LARGER = 1.35;
    private static final String BETWEEN = " · ";

    private final double width;
    private final double height;
    private final double size;
    private final TextWidth letters;
    private final List<Written> written = new ArrayList<>();
    private double x;
    private double top;

    private LabelFlow(double width, double height, double size, TextWidth letters) {
        this.width = width;
        this.height = height;
        this.size = size;
        this.letters = letters;
    }

    /** One part in the form in which it is to be set. */
    record Chosen(LabelPart.Kind kind, String form) {
        boolean bold() {
            return kind == LabelPart.Kind.VARIETY || kind == LabelPart.Kind.TRIAL || kind == LabelPart.Kind.TREATED;
        }
    }

    /** The words in letters of a size; empty where they have no room. */
    static Optional<List<Written>> of(
            String code, List<Chosen> parts, double width, double height, double size, TextWidth letters) {
        LabelFlow flow = new LabelFlow(width, height, size, letters);
        boolean set = flow.code(code)
                && parts.stream()
                        .sorted(Comparator.comparingInt(part -> part.kind().shown()))
                        .allMatch(flow::part);
        return set ? Optional.of(flow.written) : Optional.empty();
    }

    /** On a line of its own, and larger, where two lines have room. */
    private boolean code(String code) {
        double larger = size * CODE_LARGER;
        boolean own = (larger + size) * LINE <= height && letters.of(code, true) * larger <= width;
        double em = own ? larger : size;
        double wide = letters.of(code, true) * em;
        if (wide > width || em * LINE > height) {
            return false;
        }
        written.add(new Written(code, true, 0, em * BASELINE, em));
        x = own ? width : wide;
        top = own ? (larger - size) * LINE : 0;
        return true;
    }

    private boolean part(Chosen part) {
        double gap = x == 0 ? 0 : letters.of(BETWEEN, false) * size;
        double whole = letters.of(part.form(), part.bold()) * size;
        if (x + gap + whole <= width) {
            if (gap > 0) {
                written.add(new Written(BETWEEN, false, x, baseline(), size));
            }
            put(part.form(), part.bold(), x + gap, whole);
            return true;
        }
        return whole <= width ? nextLine() && put(part.form(), part.bold(), 0, whole) : broken(part);
    }

    private boolean broken(Chosen part) {
        StringBuilder line = new StringBuilder();
        for (String word : part.form().split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (letters.of(longer, part.bold()) * size <= width) {
                line.setLength(0);
                line.append(longer);
            } else if (line.isEmpty() || !lineOf(line.toString(), part.bold())) {
                return false;
            } else {
                line.setLength(0);
                line.append(word);
            }
        }
        return lineOf(line.toString(), part.bold());
    }

    private boolean lineOf(String text, boolean bold) {
        double wide = letters.of(text, bold) * size;
        return wide <= width && nextLine() && put(text, bold, 0, wide);
    }

    private boolean put(String text, boolean bold, double at, double wide) {
        written.add(new Written(text, bold, at, baseline(), size));
        x = at + wide;
        return true;
    }

    private boolean nextLine() {
        top += size * LINE;
        x = 0;
        return top + size * LINE <= height;
    }

    private double baseline() {
        return top + size * BASELINE;
    }
}
