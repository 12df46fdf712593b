package warmshelf.archive;

import java.util.LinkedHashMap;
import java.util.Map;

/** What the commands print of a file. */
final class ArchiveAnswer {
    private ArchiveAnswer() {}

    static Map<String, Object> of(ArchiveMade made) {
        Map<String, Object> answer = counts(made.tally());
        answer.put("bytes", made.bytes());
        answer.put("sha256", made.sha256());
        return answer;
    }

    static Map<String, Object> of(TakenIn taken) {
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("group", taken.group());
        answer.putAll(counts(taken.tally()));
        answer.put("sha256", taken.sha256());
        return answer;
    }

    private static Map<String, Object> counts(ArchiveTally tally) {
        Map<String, Object> counts = new LinkedHashMap<>();
        counts.put("members", tally.members());
        counts.put("lots", tally.lots());
        counts.put("sowings", tally.sowings());
        counts.put("entries", tally.entries());
        counts.put("stays", tally.stays());
        counts.put("photos", tally.photos());
        return counts;
    }
}
