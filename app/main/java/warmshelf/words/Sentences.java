package warmshelf.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.lang.reflect.Parameter;
import java.lang.reflect.Proxy;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;

/**
 * The sentences of a room, from a file that can be edited without Java. A room lists its sentences as methods of an interface;
 * each stands under the method's name in {@code templates/<room>/sentences_en.properties}, with the parameters' names in
 * braces: {@code hasEnded={sowing} has ended.} What stands after a comma in braces is as in {@link MessageFormat}; apostrophes
 * are plain letters.
 */
public final class Sentences {
    private Sentences() {}

    /**
     * The sentences that an interface lists.
     *
     * @throws IllegalStateException when the room has no file, or it lacks one of them
     */
    public static <T> T of(Class<T> listed) {
        Properties file = read(listed);
        Map<Method, MessageFormat> formats = new HashMap<>();
        for (Method method : listed.getDeclaredMethods()) {
            String pattern = file.getProperty(method.getName());
            if (pattern == null) {
                throw new IllegalStateException("%s lacks '%s'".formatted(address(listed), method.getName()));
            }
            formats.put(method, format(pattern, method));
        }
        Object sentences = Proxy.newProxyInstance(
                listed.getClassLoader(),
                new Class<?>[] {listed},
                (proxy, method, figures) ->
                        worded(Objects.requireNonNull(formats.get(method), method.getName()), figures));
        return listed.cast(sentences);
    }

    /** Where the sentences of a room stand. */
    static String address(Class<?> listed) {
        String room = listed.getPackageName().substring("warmshelf.".length()).replace('.', '/');
        return "/templates/" + room + "/sentences_en.properties";
    }

    static Properties read(Class<?> listed) {
        Properties read = new Properties();
        try (InputStream file = listed.getResourceAsStream(address(listed))) {
            if (file == null) {
                throw new IllegalStateException("there is no " + address(listed));
            }
            read.load(new InputStreamReader(file, StandardCharsets.UTF_8));
            return read;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static MessageFormat format(String pattern, Method method) {
        String numbered = pattern.replace("'", "''");
        Parameter[] parameters = method.getParameters();
        for (int i = 0; i < parameters.length; i++) {
            numbered = numbered.replaceAll("\\{" + parameters[i].getName() + "(?=[,}])", "{" + i);
        }
        try {
            return new MessageFormat(numbered, Locale.ENGLISH);
        } catch (IllegalArgumentException unknown) {
            throw new IllegalStateException("'%s' cannot be used: %s".formatted(method.getName(), pattern), unknown);
        }
    }

    private static String worded(MessageFormat format, Object[] figures) {
        // A format keeps what it is about while it writes, so each call writes with one of its own.
        return ((MessageFormat) format.clone()).format(figures == null ? new Object[0] : figures);
    }
}
