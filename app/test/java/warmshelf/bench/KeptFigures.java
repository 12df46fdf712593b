package warmshelf.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The figures of a bench, told beside those of the run that was kept last: a table of group, what, figure. */
final class KeptFigures {
    private static final Path FILE = Path.of("app", "test", "java", "warmshelf", "bench", "history.csv");

    private final String group;
    private final Map<String, String> last = new LinkedHashMap<>();
    private final Map<String, String> now = new LinkedHashMap<>();

    KeptFigures(String group) throws IOException {
        this.group = group;
        if (Files.exists(FILE)) {
            for (String line : Files.readAllLines(FILE)) {
                int comma = line.lastIndexOf(',');
                last.put(line.substring(0, comma), line.substring(comma + 1));
            }
        }
    }

    void tell(String what, double figure) {
        if (group.isEmpty()) {
            return;
        }
        String words = String.format(Locale.ROOT, "%.1f", figure);
        System.out.printf(Locale.ROOT, "%-45s %10s %10s%n", what, words, last.getOrDefault(key(what), "-"));
        now.put(key(what), words);
    }

    /** Puts the figures of this run in place of the last ones. */
    void keep() throws IOException {
        Map<String, String> all = new LinkedHashMap<>(last);
        all.putAll(now);
        List<String> lines = new ArrayList<>();
        all.forEach((what, figure) -> lines.add(what + "," + figure));
        Files.write(FILE, lines);
    }

    private String key(String what) {
        return "\"" + group + "\",\"" + what + "\"";
    }
}
