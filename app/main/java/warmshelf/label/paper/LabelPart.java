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
        VARIETY("the variety", 0),
        TRIAL("the way of its trial", 2),
        TREATED("that its seed is treated", 3),
        GROWER("whose it is", 4),
        DATE("the date", 5),
        CROP("the crop", 1),
        LOT("the lot", 6);

        private final String words;
        private final int shown;

        Kind(String words, int shown) {
            this.words = words;
            this.shown = shown;
        }

        public String words() {
            return words;
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
