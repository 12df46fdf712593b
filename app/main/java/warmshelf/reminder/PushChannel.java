package warmshelf.reminder;

import java.util.List;
import java.util.UUID;
import warmshelf.group.GroupProfile;
import warmshelf.reminder.push.PushAddressStore;
import warmshelf.reminder.push.PushMessage;
import warmshelf.reminder.push.PushNoticeStore;
import warmshelf.reminder.push.PushPost;
import warmshelf.reminder.push.PushWishStore;

/** Notices on phones. */
final class PushChannel implements Channel {
    private final PushWishStore wishes;
    private final PushAddressStore addresses;
    private final PushNoticeStore notices;
    private final PushPost post;

    PushChannel(PushWishStore wishes, PushAddressStore addresses, PushNoticeStore notices, PushPost post) {
        this.wishes = wishes;
        this.addresses = addresses;
        this.notices = notices;
        this.post = post;
    }

    @Override
    public List<Listener> listeners() {
        addresses.endOver();
        return wishes.owners().stream()
                .map(owner -> new Listener(
                        owner.id(),
                        owner.name(),
                        owner.coordinator(),
                        owner.wish().inTheMorning(),
                        owner.wish().inTheEvening(),
                        owner.wish().ofAlarms(),
                        owner.wish().ofStandIns()))
                .toList();
    }

    @Override
    public boolean knows(UUID member, String about) {
        return notices.knows(member, about);
    }

    @Override
    public void lay(Listener listener, Telling telling) {
        notices.lay(
                listener.id(),
                new PushMessage(
                        telling.about(),
                        telling.subject(),
                        telling.brief(),
                        telling.path(),
                        telling.urgent(),
                        telling.topic(),
                        telling.until()));
    }

    @Override
    public void send(GroupProfile profile) {
        post.send();
    }
}
