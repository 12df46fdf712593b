package warmshelf.harvest;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import warmshelf.words.Choice;

/** An answer that is chosen from a few, kept by its word. */
interface HarvestAnswer {
    String word();

    /** As its button says it. */
    String title();

    /** Whether somebody would grow it again. */
    enum Again implements HarvestAnswer {
        AGAIN("again", "Again"),
        OTHER_VARIETY("other-variety", "Another variety"),
        NOT_AGAIN("not-again", "Not again");

        private final String word;
        private final String title;

        Again(String word, String title) {
            this.word = word;
            this.title = title;
        }

        @Override
        public String word() {
            return word;
        }

        @Override
        public String title() {
            return title;
        }
    }

    /** Roughly how much it gave. */
    enum Amount implements HarvestAnswer {
        NONE("none", "Nothing"),
        LITTLE("little", "A little"),
        ENOUGH("enough", "Enough"),
        PLENTY("plenty", "Plenty");

        private final String word;
        private final String title;

        Amount(String word, String title) {
            this.word = word;
            this.title = title;
        }

        @Override
        public String word() {
            return word;
        }

        @Override
        public String title() {
            return title;
        }
    }

    /** How it tasted. */
    enum Taste implements HarvestAnswer {
        POOR("poor", "Poor"),
        GOOD("good", "Good"),
        VERY_GOOD("very-good", "Very good");

        private final String word;
        private final String title;

        Taste(String word, String title) {
            this.word = word;
            this.title = title;
        }

        @Override
        public String word() {
            return word;
        }

        @Override
        public String title() {
            return title;
        }
    }

    /** The answer of that word; empty for any other. */
    static <T extends HarvestAnswer> Optional<T> named(T[] answers, String word) {
        return Arrays.stream(answers)
                .filter(answer -> answer.word().equals(word))
                .findFirst();
    }

    /** As options of a form. */
    static List<Choice> choices(HarvestAnswer... answers) {
        return Arrays.stream(answers)
                .map(answer -> new Choice(answer.word(), answer.title()))
                .toList();
    }
}
