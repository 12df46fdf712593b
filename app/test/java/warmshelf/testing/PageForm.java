package warmshelf.testing;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A form that posts, as it stands on a page: where it goes, and every field it would send, with what it holds now. A field that
 * is not chosen yet holds the first value that can be chosen.
 *
 * @param uploads whether it sends a file
 */
public record PageForm(String page, String action, Map<String, String> fields, boolean uploads) {
    private static final Pattern FORM = Pattern.compile("(?s)<form\\b([^>]*)>(.*?)</form>");
    private static final Pattern CONTROL = Pattern.compile(
            "(?s)<(input|button)\\b([^>]*)>|<(select)\\b([^>]*)>(.*?)</select>|<(textarea)\\b([^>]*)>(.*?)</textarea>");
    private static final Pattern OPTION = Pattern.compile("<option\\b([^>]*)>");
    private static final Set<String> TICKS = Set.of("checkbox", "radio");

    public PageForm {
        fields = Map.copyOf(new LinkedHashMap<>(fields));
    }

    /** The forms of a page that post; controls outside a form that name it by its id belong to it. */
    public static List<PageForm> on(String page, String html) {
        return on(page, html, "post");
    }

    /** The forms of a page that only ask for another page. */
    public static List<PageForm> asking(String page, String html) {
        return on(page, html, "get");
    }

    private static List<PageForm> on(String page, String html, String method) {
        List<PageForm> found = new ArrayList<>();
        Matcher form = FORM.matcher(html);
        while (form.find()) {
            String marks = form.group(1);
            String named = attribute(marks, "method");
            if (!method.equalsIgnoreCase(named == null ? "get" : named)) {
                continue;
            }
            Map<String, String> fields = new LinkedHashMap<>();
            Set<String> chosen = new LinkedHashSet<>();
            boolean uploads = read(form.group(2), null, fields, chosen);
            String id = attribute(marks, "id");
            if (id != null) {
                read(html, id, fields, chosen);
            }
            String action = attribute(marks, "action");
            found.add(new PageForm(page, action == null ? page : action, fields, uploads));
        }
        return found;
    }

    /** The address that a form which only asks leads to as it stands. */
    public String asked() {
        String query = fields.entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return action.replaceAll("\\?.*", "") + "?" + query;
    }

    private static boolean read(String html, @Nullable String formId, Map<String, String> fields, Set<String> chosen) {
        boolean uploads = false;
        Matcher control = CONTROL.matcher(html);
        while (control.find()) {
            String marks = first(control.group(2), control.group(4), control.group(7));
            String name = attribute(marks, "name");
            if (name == null || (formId != null && !formId.equals(attribute(marks, "form")))) {
                continue;
            }
            String type = String.valueOf(attribute(marks, "type"));
            if (type.equals("file")) {
                uploads = true;
            } else if (control.group(5) != null) {
                fields.put(name, option(control.group(5)));
            } else if (control.group(8) != null) {
                fields.put(name, plain(control.group(8)).strip());
            } else if (TICKS.contains(type)) {
                tick(name, marks, fields, chosen);
            } else if (!type.equals("submit") && !"button".equals(control.group(1))) {
                fields.put(name, text(marks));
            } else {
                fields.putIfAbsent(name, text(marks));
            }
        }
        return uploads;
    }

    private static void tick(String name, String marks, Map<String, String> fields, Set<String> chosen) {
        if (marks.matches("(?s).*\\bchecked\\b.*") && chosen.add(name)) {
            fields.put(name, text(marks));
        } else {
            fields.putIfAbsent(name, text(marks));
        }
    }

    private static String option(String inside) {
        String first = null;
        Matcher option = OPTION.matcher(inside);
        while (option.find()) {
            String value = text(option.group(1));
            if (option.group(1).matches("(?s).*\\bselected\\b.*") && !value.isEmpty()) {
                return value;
            }
            if (first == null && !value.isEmpty()) {
                first = value;
            }
        }
        return first == null ? "" : first;
    }

    private static String text(String marks) {
        String value = attribute(marks, "value");
        return value == null ? "" : value;
    }

    private static @Nullable String attribute(String marks, String name) {
        Matcher value =
                Pattern.compile("(?s)(?:^|\\s)" + name + "=\"([^\"]*)\"").matcher(marks);
        return value.find() ? plain(value.group(1)) : null;
    }

    private static String plain(String html) {
        return html.replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&");
    }

    private static String first(@Nullable String... texts) {
        for (String text : texts) {
            if (text != null) {
                return text;
            }
        }
        return "";
    }
}
