package warmshelf.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import java.lang.reflect.Method;
import java.lang.reflect.Parameter;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import warmshelf.decision.Decision;

class SentencesTest {
    private static final Pattern FIGURE = Pattern.compile("\\{(\\w+)");

    /** Every interface of the program that lists a room's sentences, told by its name. */
    static List<Class<?>> rooms() {
        return new ClassFileImporter()
                .withImportOption(new DoNotIncludeTests()).importPackages("warmshelf").stream()
                        .filter(each ->
                                each.isInterface() && each.getSimpleName().endsWith("Sentences"))
                        .map(JavaClass::reflect)
                        .collect(Collectors.toList());
    }

    @Test
    void the_rooms_are_found() {
        assertThat(rooms()).extracting(Class::getSimpleName).contains("CheckSentences");
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void each_sentence_of_the_file_is_listed_and_each_listed_one_stands_there(Class<?> listed) {
        Set<String> names =
                Arrays.stream(listed.getDeclaredMethods()).map(Method::getName).collect(Collectors.toSet());

        assertThat(Sentences.read(listed).stringPropertyNames()).isEqualTo(names);
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void each_sentence_says_all_that_it_is_given_and_nothing_else(Class<?> listed) {
        for (Method method : listed.getDeclaredMethods()) {
            String sentence = Sentences.read(listed).getProperty(method.getName());
            Set<String> used = figures(sentence);

            assertThat(used)
                    .as("%s: %s", method.getName(), sentence)
                    .isEqualTo(Stream.of(method.getParameters())
                            .map(Parameter::getName)
                            .collect(Collectors.toCollection(TreeSet::new)));
        }
    }

    private static Set<String> figures(String sentence) {
        return FIGURE.matcher(sentence)
                .results()
                .map((MatchResult found) -> found.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    interface Unlisted {
        String nothing();
    }

    @Test
    void a_sentence_that_its_file_lacks_is_said_so_at_once() {
        assertThatThrownBy(() -> Sentences.of(Unlisted.class))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("/templates/words/sentences_en.properties lacks 'nothing'");
    }

    @Test
    void a_room_without_its_file_is_said_so_at_once() {
        assertThatThrownBy(() -> Sentences.of(Decision.class))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("there is no /templates/decision/sentences_en.properties");
    }
}
