package warmshelf.reminder.push;

import java.time.Clock;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** Sends the notices that are laid ready and keeps what the push services answer. */
public final class PushPost {
    private static final Logger LOG = LoggerFactory.getLogger(PushPost.class);

    private final PushNoticeStore notices;
    private final PushAddressStore addresses;
    private final PushSender sender;

    public PushPost(Database database, Audit audit, PushKeys keys, EndpointRule rule, Clock clock) {
        this.notices = new PushNoticeStore(database, audit);
        this.addresses = new PushAddressStore(database, audit);
        this.sender = new PushSender(keys, rule, clock);
    }

    /** Sends what is due. No line in the log names an address: whoever reads it could try to send there. */
    public void send() {
        for (PushNoticeStore.Ready ready : notices.take()) {
            PushAnswer answer = sender.send(ready.target(), ready.notice());
            switch (answer.kind()) {
                case TAKEN -> notices.sent(ready);
                case GONE -> {
                    notices.giveUp(ready.id());
                    addresses.gone(ready.address(), ready.target());
                }
                case REFUSED -> {
                    notices.giveUp(ready.id());
                    LOG.warn("notice {} was refused by the push service: {}", ready.id(), answer.why());
                }
                case LATER -> later(ready, answer);
            }
        }
    }

    private void later(PushNoticeStore.Ready ready, PushAnswer answer) {
        boolean again = notices.later(ready, answer.pause());
        LOG.warn(
                "notice {} was not taken by the push service (try {}): {}; {}",
                ready.id(),
                ready.tries(),
                answer.why(),
                again ? "it is tried again" : "it is given up");
    }
}
