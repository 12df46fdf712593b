package warmshelf.reminder;

import java.util.List;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import warmshelf.group.GroupProfile;

/** Letters by e-mail. */
final class MailChannel implements Channel {
    private static final Logger LOG = LoggerFactory.getLogger(MailChannel.class);

    private final MailWishStore wishes;
    private final LetterStore letters;
    private final Postman postman;

    MailChannel(MailWishStore wishes, LetterStore letters, Postman postman) {
        this.wishes = wishes;
        this.letters = letters;
        this.postman = postman;
    }

    @Override
    public List<Listener> listeners() {
        return wishes.readers().stream()
                .map(reader -> new Listener(
                        reader.id(),
                        reader.name(),
                        reader.coordinator(),
                        reader.wish().inTheMorning(),
                        reader.wish().inTheEvening(),
                        reader.wish().ofAlarms(),
                        reader.wish().ofStandIns()))
                .toList();
    }

    @Override
    public boolean knows(UUID member, String about) {
        return letters.knows(member, about);
    }

    @Override
    public void lay(Listener listener, Telling telling) {
        wishes.of(listener.id())
                .ifPresent(wish -> letters.write(
                        listener.id(), telling.about(), wish.address(), telling.subject(), telling.letter()));
    }

    @Override
    public void send(GroupProfile profile) {
        for (LetterStore.Letter letter : letters.take()) {
            try {
                postman.send(profile.name(), letter.address(), letter.subject(), letter.words());
                letters.sent(letter.id());
            } catch (Postman.NotTaken notTaken) {
                letters.failed(letter);
                LOG.warn(
                        "letter {} was not taken by the mail server (try {}): {}",
                        letter.id(),
                        letter.tries(),
                        notTaken.getMessage());
            }
        }
    }
}
