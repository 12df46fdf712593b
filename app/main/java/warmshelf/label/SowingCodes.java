package warmshelf.label;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** The short codes of sowings, for sheets that name them as their labels do. */
public final class SowingCodes {
    private final CodeStore codes;

    public SowingCodes(Database database, Audit audit) {
        this.codes = new CodeStore(database, audit);
    }

    /** Codes by sowing; what has none yet gets its own. */
    public Map<UUID, ShortCode> of(Collection<UUID> sowings, UUID by) {
        List<CodeStore.Subject> subjects = new ArrayList<>();
        sowings.forEach(id -> subjects.add(new CodeStore.Subject(CodeStore.Kind.SOWING, id, "", "")));
        List<ShortCode> made = codes.codesOf(subjects, by);
        Map<UUID, ShortCode> of = new HashMap<>();
        for (int i = 0; i < subjects.size(); i++) {
            of.put(subjects.get(i).id(), made.get(i));
        }
        return of;
    }
}
