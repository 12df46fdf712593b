package warmshelf.label.paper;

import java.util.List;

/**
 * One thing that stands on a label.
 *
 * @param forms the same in words, from the longest to the shortest that still tells it; at least one
 */
public record LabelPart(Kind kind, List<String> forms) {

    /** What it is, in the order in which it is kept where room is short: first what tells one tray from another. */
    public enum Kind {
        VARIETY(0),
        TRIAL(2),
        TREATED(3),
        GROWER(4),
        DATE(5),
        CROP(1),
        LOT(6);

        private final int shown;

        Kind(int shown) {
            this.shown = shown;
        }

        /** Its place in the order in which a label is read. */
        int shown() {
            return shown;
        }
    }

    public LabelPart {
        if (forms.isEmpty()) {
            throw new IllegalArgumentException("a part of a label has no words: " + kind);
        }
    }

    String longest() {
        return forms.get(0);
    }

    String shortest() {
        return forms.get(forms.size() - 1);
    }
}
