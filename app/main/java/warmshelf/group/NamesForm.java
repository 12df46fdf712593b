package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import warmshelf.words.FormReader;

/** Names as they are pasted: a line each, or a column or rows of a spreadsheet, of which the first cell with something in it counts. */
final class NamesForm {
    /** As many as a group invites of an evening; more is most likely something else that was pasted. */
    private static final int MOST = 100;

    private static final int LONGEST = 80;
    private static final String FIELD = "names";

    private final FormReader reader;

    NamesForm(Map<String, List<String>> typed) {
        this.reader = new FormReader(typed);
    }

    FormReader reader() {
        return reader;
    }

    /** Each name once, in the order in which they came; none, with the reason in the reader, where one cannot be used. */
    List<String> names() {
        Map<String, String> once = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        List<String> names = new ArrayList<>();
        reader.text(FIELD)
                .lines()
                .map(NamesForm::name)
                .filter(name -> !name.isEmpty())
                .forEach(name -> {
                    if (name.length() > LONGEST) {
                        reader.refuse(FIELD, SAY.nameTooLong(name.substring(0, LONGEST), LONGEST));
                    } else if (once.putIfAbsent(name, name) == null) {
                        names.add(name);
                    }
                });
        if (names.size() > MOST) {
            reader.refuse(FIELD, SAY.tooManyNames(names.size(), MOST));
        } else if (names.isEmpty() && reader.ok()) {
            reader.refuse(FIELD, SAY.noNames());
        }
        return reader.ok() ? List.copyOf(names) : List.of();
    }

    private static String name(String line) {
        for (String cell : line.split("\t", -1)) {
            String bare = cell.strip()
                    .replaceAll("^\"|\"$", "")
                    .replaceAll("\\s+", " ")
                    .strip();
            if (!bare.isEmpty()) {
                return bare;
            }
        }
        return "";
    }
}
