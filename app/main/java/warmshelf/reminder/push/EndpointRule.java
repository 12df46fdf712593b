package warmshelf.reminder.push;

import java.io.IOException;
import java.net.URI;
import java.util.Optional;

/** Which addresses are taken for a push service's. They come from outside, so this server could be made to ask anything. */
public interface EndpointRule {
    /** Why an address is not taken; empty when it is. */
    Optional<EndpointRefusal> refusal(String endpoint);

    /**
     * Whether to connect now: a name may lead elsewhere than when it was taken.
     *
     * @throws IOException when it cannot be known at the moment
     */
    boolean mayConnect(URI endpoint) throws IOException;
}
