package warmshelf.tablet;

import java.util.UUID;

/** What may be ticked by whoever sends, and in whose name beside their own. */
public interface TickReach {
    /** A member ticks everywhere, and for themself. */
    TickReach OF_MEMBERS = new TickReach() {
        @Override
        public boolean hasSowing(UUID sowing) {
            return true;
        }

        @Override
        public boolean hasMat(UUID mat) {
            return true;
        }

        @Override
        public boolean mayHaveLooked(UUID member) {
            return false;
        }
    };

    boolean hasSowing(UUID sowing);

    boolean hasMat(UUID mat);

    /** Whether a tick can be somebody's who says so. */
    boolean mayHaveLooked(UUID member);
}
