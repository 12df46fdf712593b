package warmshelf.photo;

import java.util.Optional;
import java.util.UUID;
import warmshelf.words.FormReader;

/** What comes with a picture in a form. */
final class SentFile {
    private SentFile() {}

    /** The id in a field; empty where there is none. */
    static Optional<UUID> id(FormReader form, String field) {
        return id(form.text(field));
    }

    /** The id that a text is; empty where it is none. */
    static Optional<UUID> id(String text) {
        try {
            return Optional.of(UUID.fromString(text));
        } catch (IllegalArgumentException noId) {
            return Optional.empty();
        }
    }
}
