package warmshelf.words;

import io.pebbletemplates.pebble.PebbleEngine;
import io.pebbletemplates.pebble.cache.template.ConcurrentMapTemplateCache;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;

/** Words that a person edits without the program's code: files of the templates' folder, in sections, with figures filled in. */
public final class Texts {
    private static final Pattern SPACE = Pattern.compile("[ \\t\\r\\n]+");

    private final SectionLoader loader = new SectionLoader();
    private final String folder;
    /** Plain text goes to calendars and commands too: whatever page shows it, escapes it. */
    private final PebbleEngine engine = new PebbleEngine.Builder()
            .loader(loader)
            .strictVariables(true)
            .autoEscaping(false)
            .templateCache(new ConcurrentMapTemplateCache())
            .build();

    /**
     * The files of a folder.
     *
     * @param folder of the templates' folder, such as 'guide/en'
     */
    public Texts(String folder) {
        this.folder = folder;
    }

    /**
     * A section as one line of plain text.
     *
     * @param file without its ending, such as 'steps/light'
     * @param values what the section fills in
     */
    public String line(String file, String section, Map<String, ?> values) {
        StringWriter text = new StringWriter();
        try {
            engine.getTemplate(address(file, section)).evaluate(text, new HashMap<>(values));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return SPACE.matcher(text.toString()).replaceAll(" ").strip();
    }

    /** Whether a file has a section of this name. */
    public boolean has(String file, String section) {
        return loader.resourceExists(address(file, section));
    }

    /** Where a template finds the section, to take it in. */
    public String address(String file, String section) {
        return folder + "/" + file + ".peb#" + section;
    }
}
