package warmshelf.seed;

import java.util.List;
import java.util.UUID;

/** Pictures of packets; told by whoever keeps them. */
public interface PacketPictures {
    /** Those of a lot, in the order in which they were added. */
    List<PacketPicture> of(UUID lotId);

    /**
     * A picture of a packet, without its bytes.
     *
     * @param width in pixels
     * @param height in pixels
     * @param by who added it
     */
    record PacketPicture(UUID id, int width, int height, UUID by, String byName) {}
}
