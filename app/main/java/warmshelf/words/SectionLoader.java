package warmshelf.words;

import io.pebbletemplates.pebble.error.LoaderException;
import io.pebbletemplates.pebble.loader.ClasspathLoader;
import io.pebbletemplates.pebble.loader.Loader;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads templates from the program. A name such as {@code steps/light.peb#how} is one section of a file: what stands after the line
 * <code>{# == how == #}</code>, as far as the next such line.
 */
public final class SectionLoader implements Loader<String> {
    private static final Pattern MARK = Pattern.compile("(?m)^\\{# == (.+?) == #}\\s*$");

    private final Map<String, Map<String, String>> kept = new ConcurrentHashMap<>();
    private final ClasspathLoader files = new ClasspathLoader(SectionLoader.class.getClassLoader());

    public SectionLoader() {
        files.setPrefix("templates/");
    }

    private Map<String, String> sections(String file) {
        return kept.computeIfAbsent(file, this::read);
    }

    /** The sections of a file by their names. */
    private Map<String, String> read(String file) {
        StringWriter text = new StringWriter();
        try (Reader reader = files.getReader(file)) {
            reader.transferTo(text);
        } catch (IOException unreadable) {
            throw new LoaderException(unreadable, "the template " + file + " cannot be read");
        }
        Map<String, String> sections = new HashMap<>();
        Matcher marks = MARK.matcher(text.toString());
        boolean more = marks.find();
        while (more) {
            MatchResult mark = marks.toMatchResult();
            more = marks.find();
            int end = more ? marks.start() : text.getBuffer().length();
            if (sections.put(mark.group(1), text.toString().substring(mark.end(), end)) != null) {
                throw new LoaderException(null, "%s has the section '%s' twice".formatted(file, mark.group(1)));
            }
        }
        return sections;
    }

    @Override
    public Reader getReader(String name) {
        int hash = name.indexOf('#');
        if (hash < 0) {
            return files.getReader(name);
        }
        String file = name.substring(0, hash);
        String section = sections(file).get(name.substring(hash + 1));
        if (section == null) {
            throw new LoaderException(null, "%s has no section '%s'".formatted(file, name.substring(hash + 1)));
        }
        return new StringReader(section);
    }

    @Override
    public void setCharset(String charset) {
        files.setCharset(charset);
    }

    @Override
    public void setPrefix(String prefix) {
        files.setPrefix(prefix);
    }

    @Override
    public void setSuffix(String suffix) {
        files.setSuffix(suffix);
    }

    @Override
    public String resolveRelativePath(String relativePath, String anchorPath) {
        return files.resolveRelativePath(relativePath, anchorPath);
    }

    @Override
    public String createCacheKey(String name) {
        return name;
    }

    @Override
    public boolean resourceExists(String name) {
        int hash = name.indexOf('#');
        return hash < 0
                ? files.resourceExists(name)
                : files.resourceExists(name.substring(0, hash))
                        && sections(name.substring(0, hash)).containsKey(name.substring(hash + 1));
    }
}
