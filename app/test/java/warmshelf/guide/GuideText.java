package warmshelf.guide;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A section of a file of the guide's texts, as it was written.
 *
 * @param file such as 'steps/light'
 */
record GuideText(String file, String section, String written) {
    private static final Path FOLDER = Path.of("templates/guide/en");
    private static final Pattern MARK = Pattern.compile("(?m)^\\{# == (.+?) == #}\\s*$");
    private static final Pattern WITHIN = Pattern.compile("#\\{.*?}");
    private static final Pattern TAG = Pattern.compile("(?s)\\{\\{.*?}}|\\{%.*?%}");

    static List<GuideText> all() throws IOException {
        List<GuideText> all = new ArrayList<>();
        try (Stream<Path> files = Files.walk(FOLDER)) {
            for (Path path : files.filter(file -> file.toString().endsWith(".peb"))
                    .sorted()
                    .toList()) {
                all.addAll(of(FOLDER.relativize(path).toString().replace('\\', '/'), Files.readString(path)));
            }
        }
        return all;
    }

    /** All of them in one. */
    static String allWritten() throws IOException {
        return all().stream().map(GuideText::written).collect(Collectors.joining("\n"));
    }

    /** The program's own code, which asks for sections and figures by their names. */
    static String code() throws IOException {
        StringBuilder code = new StringBuilder();
        try (Stream<Path> files = Files.walk(Path.of("app/main/java"))) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                code.append(Files.readString(file));
            }
        }
        return code.toString();
    }

    private static List<GuideText> of(String path, String text) {
        List<MatchResult> marks = MARK.matcher(text).results().toList();
        List<GuideText> sections = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            int end = i + 1 < marks.size() ? marks.get(i + 1).start() : text.length();
            sections.add(new GuideText(
                    path.replace(".peb", ""),
                    marks.get(i).group(1),
                    text.substring(marks.get(i).end(), end)));
        }
        return sections;
    }

    /** What stands there for every reader and sowing alike. */
    String plain() {
        return TAG.matcher(written).replaceAll("…").replaceAll("</?\\w+>", "");
    }

    /** What is filled in and quoted; what is filled into a quoted sentence stands beside it. */
    List<String> filledIn() {
        return TAG.matcher(written)
                .results()
                .map(MatchResult::group)
                .flatMap(GuideText::apart)
                .toList();
    }

    private static Stream<String> apart(String tag) {
        return Stream.concat(
                Stream.of(WITHIN.matcher(tag).replaceAll("…")),
                WITHIN.matcher(tag).results().map(MatchResult::group));
    }

    @Override
    public String toString() {
        return file + ", " + section;
    }
}
