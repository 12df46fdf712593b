package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import java.util.List;
import java.util.Map;
import warmshelf.words.FormReader;

/**
 * An invitation as it is typed.
 *
 * @param coordinator whether whoever joins by it coordinates
 * @param note for whom it is
 */
public record InviteForm(FormReader reader, boolean coordinator, String note) {
    private static final int LONGEST_NOTE = 80;

    public static InviteForm of(Map<String, List<String>> typed) {
        FormReader reader = new FormReader(typed);
        String role = reader.choice("role", SAY.joinsAsField(), List.of("member", "coordinator"));
        String note = reader.requiredText("note", SAY.forWhomField(), LONGEST_NOTE);
        return new InviteForm(reader, role.equals("coordinator"), note);
    }
}
