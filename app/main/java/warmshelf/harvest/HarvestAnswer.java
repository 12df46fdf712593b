package warmshelf.harvest;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import warmshelf.words.Choice;

/** An answer that is chosen from a few, kept by its word. */
interface HarvestAnswer {
    /** The constant's name. */
    String name();

    /** As forms send it and the table keeps it, for example 'very-good'. */
    default String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** As its button says it. */
    String title();

    /** Whether somebody would grow it again. */
    enum Again implements HarvestAnswer {
        AGAIN("Again"),
        OTHER_VARIETY("Another variety"),
        NOT_AGAIN("Not again");

        private final String title;

        Again(String title) {
            this.title = title;
        }

        @Override
        public String title() {
            return title;
        }
    }

    /** Roughly how much it gave. */
    enum Amount implements HarvestAnswer {
        NONE("Nothing"),
        LITTLE("A little"),
        ENOUGH("Enough"),
        PLENTY("Plenty");

        private final String title;

        Amount(String title) {
            this.title = title;
        }

        @Override
        public String title() {
            return title;
        }
    }

    /** How it tasted. */
    enum Taste implements HarvestAnswer {
        POOR("Poor"),
        GOOD("Good"),
        VERY_GOOD("Very good");

        private final String title;

        Taste(String title) {
            this.title = title;
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
