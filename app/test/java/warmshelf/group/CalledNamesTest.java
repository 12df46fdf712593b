package warmshelf.group;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CalledNamesTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Tom Okafor; Priya Nair | Tom; Priya",
                "Dev Anand; Dev Malik | Dev A.; Dev M.",
                "Dev Anand; dev malik | Dev A.; dev m.",
                "Ana Ruiz; Ana Rojas; Ana Alba | Ana Ru.; Ana Ro.; Ana A.",
                "Ana Roja; Ana Rojas | Ana Roja; Ana Rojas",
                "Ana; Ana Ruiz | Ana; Ana R.",
                "Ana Maria Ruiz; Ana Ruiz | Ana Maria Ruiz; Ana Ruiz",
                "王小明; Sunniva | 王小明; Sunniva",
                "José Ñuñez; José Álvarez | José Ñ.; José Á.",
                "Tom   Okafor; Tomas Okafor | Tom; Tomas"
            })
    void the_first_name_is_told_with_the_fewest_letters_that_tell_it_from_others(String names, String called) {
        assertThat(called(split(names))).isEqualTo(split(called));
    }

    @Test
    void a_letter_made_of_two_signs_is_not_cut_in_two() {
        assertThat(called(List.of("Dev n\u0303u", "Dev nu"))).isEqualTo(List.of("Dev n\u0303.", "Dev n."));
    }

    @Test
    void somebody_who_has_left_makes_nobodys_name_longer_but_is_told_from_those_who_are_there() {
        UUID here = new UUID(0, 1);
        UUID gone = new UUID(0, 2);

        assertThat(CalledNames.of(List.of(
                        new CalledNames.Named(here, "Dev Anand", true, false),
                        new CalledNames.Named(gone, "Dev Malik", false, false))))
                .containsEntry(here, "Dev")
                .containsEntry(gone, "Dev M.");
    }

    @Test
    void somebody_who_has_left_with_one_word_only_is_told_from_those_who_are_there_too() {
        UUID here = new UUID(0, 1);
        UUID gone = new UUID(0, 2);

        assertThat(CalledNames.of(List.of(
                        new CalledNames.Named(here, "Dev Anand", true, false),
                        new CalledNames.Named(gone, "Dev", false, false))))
                .containsEntry(here, "Dev A.")
                .containsEntry(gone, "Dev");
    }

    @Test
    void the_word_for_somebody_who_was_erased_stays_whole() {
        UUID erased = new UUID(0, 1);

        assertThat(CalledNames.of(List.of(new CalledNames.Named(erased, "Former member 1", false, true))))
                .containsEntry(erased, "Former member 1");
    }

    /** Against each compared with each, letter by letter. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void nobody_is_called_as_another_from_whom_they_are_to_be_told_nor_longer_than_needed(long seed) {
        Random random = new Random(seed);
        List<String> firsts = List.of("Ana", "ana", "Tom");
        List<String> lasts = List.of("", " R", " Ro", " Roj", " Rojas", " roja", " Ruiz", " Maria Ruiz", " Ñu");
        List<CalledNames.Named> people = new ArrayList<>();
        for (int i = 0; i < 14; i++) {
            String name = firsts.get(random.nextInt(firsts.size())) + lasts.get(random.nextInt(lasts.size()));
            people.add(new CalledNames.Named(new UUID(0, i), name, random.nextInt(4) > 0, false));
        }

        var called = CalledNames.of(people);

        assertThat(people).allSatisfy(each -> assertThat(called.get(each.id())).isEqualTo(oneByOne(each, people)));
    }

    private static String oneByOne(CalledNames.Named person, List<CalledNames.Named> people) {
        List<String> others = people.stream()
                .filter(other -> !other.id().equals(person.id()))
                .filter(other ->
                        other.present() || !person.present() || !other.name().contains(" "))
                .map(CalledNames.Named::name)
                .toList();
        String[] words = person.name().split(" ", -1);
        String last = words.length == 1 ? "" : words[words.length - 1];
        for (int end = 0; end < last.length(); end++) {
            int letters = end;
            if (others.stream()
                    .noneMatch(other -> plain(cut(other, letters)).equals(plain(cut(person.name(), letters))))) {
                return cut(person.name(), letters);
            }
        }
        return person.name();
    }

    private static String plain(String words) {
        return Member.key(words.replace(".", ""));
    }

    private static String cut(String name, int letters) {
        String[] words = name.split(" ", -1);
        String last = words.length == 1 ? "" : words[words.length - 1];
        if (letters == 0 || last.isEmpty()) {
            return words[0];
        }
        return words[0] + " " + (letters < last.length() ? last.substring(0, letters) + "." : last);
    }

    private static List<String> called(List<String> names) {
        List<CalledNames.Named> people = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            people.add(new CalledNames.Named(new UUID(0, i), names.get(i), true, false));
        }
        var called = CalledNames.of(people);
        return people.stream().map(person -> called.get(person.id())).toList();
    }

    private static List<String> split(String names) {
        return Arrays.stream(names.split("; ")).toList();
    }
}
