package warmshelf.guide;

import java.util.List;
import java.util.Locale;

/** How far a source is to be trusted, as the reference tables mark it. */
public enum Standing {
    PUBLISHED(""),
    LOW_AUTHORITY("low authority"),
    COMMON_PRACTICE("common practice"),
    FROM_MEMORY("from memory");

    /** Kinds of pages that nobody answers for; the tables say the kind in the source's title. */
    private static final List<String> NOBODY_ANSWERS_FOR = List.of(
            "science explainer",
            "grower trial",
            "personal page",
            "gardening blog",
            "allotment blog",
            "answers page",
            "advice page",
            "how-to page",
            "forum",
            "study page",
            "newspaper garden column",
            "news column");

    private final String word;

    Standing(String word) {
        this.word = word;
    }

    /** As a page marks it; empty for a source that stands behind what it says. */
    public String word() {
        return word;
    }

    static Standing of(String title, String note) {
        String kind = title.toLowerCase(Locale.ROOT);
        if (kind.equals(COMMON_PRACTICE.word)) {
            return COMMON_PRACTICE;
        }
        if (kind.equals(FROM_MEMORY.word)) {
            return FROM_MEMORY;
        }
        boolean low =
                note.contains("low authority") || NOBODY_ANSWERS_FOR.stream().anyMatch(kind::contains);
        return low ? LOW_AUTHORITY : PUBLISHED;
    }
}
