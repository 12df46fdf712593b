package warmshelf.jar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;

/** The packaged jar carries native code for the kinds of machine on which it can use it, and for no other. */
class JarContentIT {
    private static final Pattern NATIVE = Pattern.compile(
            "(?:com/sun/jna|lib|ortools)[/-]([a-z0-9]+-[a-z0-9_-]+)/[^/]*\\.(?:so|dll|dylib|jnilib|a)\\b[^/]*");

    @Test
    void native_code_is_there_for_the_kinds_of_machine_that_the_handbook_names() throws IOException {
        Set<String> kinds = new TreeSet<>();
        try (ZipFile jar = new ZipFile(System.getProperty("warmshelf.jar"))) {
            jar.stream()
                    .map(ZipEntry::getName)
                    .map(NATIVE::matcher)
                    .filter(Matcher::matches)
                    .forEach(match -> kinds.add(match.group(1)
                            .replace('_', '-')
                            .replaceAll("^(osx|darwin)", "mac")
                            .replaceAll("^(win32|windows)", "windows")));
        }

        assertThat(kinds)
                .containsExactly("linux-aarch64", "linux-x86-64", "mac-aarch64", "mac-x86-64", "windows-x86-64");
    }
}
