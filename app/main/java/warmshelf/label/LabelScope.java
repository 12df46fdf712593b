package warmshelf.label;

import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Of what labels are wanted.
 *
 * @param id of the site or the sowing; null for the others
 */
record LabelScope(Kind kind, @Nullable UUID id) {
    static final LabelScope MINE = new LabelScope(Kind.MINE, null);

    enum Kind {
        /** The visitor's own sowings. */
        MINE("mine"),
        /** Everybody's sowings. */
        ALL("all"),
        /** What lies at a site. */
        SITE("site"),
        /** Racks, lit shelves and mats. */
        PLACES("places"),
        /** One sowing, labelled or not. */
        SOWING("sowing");

        private final String word;

        Kind(String word) {
            this.word = word;
        }
    }

    /** As an address says it: 'mine', 'all', 'places', or 'site-' or 'sowing-' with an id; one's own where it says nothing. */
    static Optional<LabelScope> of(@Nullable String text) {
        if (text == null || text.isEmpty()) {
            return Optional.of(MINE);
        }
        for (Kind kind : Kind.values()) {
            boolean takesId = kind == Kind.SITE || kind == Kind.SOWING;
            if (!takesId && text.equals(kind.word)) {
                return Optional.of(new LabelScope(kind, null));
            }
            if (takesId && text.startsWith(kind.word + "-")) {
                return id(text.substring(kind.word.length() + 1)).map(id -> new LabelScope(kind, id));
            }
        }
        return Optional.empty();
    }

    private static Optional<UUID> id(String text) {
        try {
            return Optional.of(UUID.fromString(text));
        } catch (IllegalArgumentException notAnId) {
            return Optional.empty();
        }
    }

    /** Whether only a coordinator labels so much at once. */
    boolean isForCoordinators() {
        return kind == Kind.ALL || kind == Kind.SITE;
    }

    public boolean isOfOneSowing() {
        return kind == Kind.SOWING;
    }

    /** As it stands in an address. */
    public String text() {
        return id == null ? kind.word : kind.word + "-" + id;
    }
}
