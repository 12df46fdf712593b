package warmshelf.sowing;

/**
 * Who typed in what somebody else had seen.
 *
 * @param tablet a tablet at a rack, on which that person pressed; else a member, who typed it in from paper
 */
public record Typist(String name, boolean tablet) {}
