package warmshelf.web;

import java.util.List;
import java.util.Map;

/**
 * What one part of the program says of how it is, to scripts that watch. It tells nothing of the group.
 *
 * @param name the field under which it stands
 * @param facts by name
 * @param problems empty: all is well
 */
public record HealthPart(String name, Map<String, Object> facts, List<Problem> problems) {
    /**
     * Something that somebody has to see to.
     *
     * @param code for scripts; it stays the same when the sentence is worded anew
     */
    public record Problem(String code, String sentence) {}
}
