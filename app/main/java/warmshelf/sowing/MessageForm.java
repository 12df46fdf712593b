package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import warmshelf.words.FormReader;

/** Reads a message about a sowing, and to whom it goes. */
final class MessageForm {
    static final int LONGEST = 500;

    private MessageForm() {}

    record Written(UUID to, String words) {}

    /** Empty when the form cannot be used; it says why then. */
    static Optional<Written> read(FormReader form, List<MessageStore.Reader> readers) {
        String to = form.choice(
                "to",
                SAY.messageTo(),
                readers.stream().map(reader -> reader.id().toString()).toList());
        String words = form.requiredText("words", SAY.messageField(), LONGEST);
        return form.ok() ? Optional.of(new Written(UUID.fromString(to), words)) : Optional.empty();
    }
}
