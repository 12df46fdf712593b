package warmshelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import warmshelf.reminder.MailServer;
import warmshelf.reminder.push.PushKeys;
import warmshelf.testing.CommandRun;

class SettingsOptionsTest {
    @Test
    void every_default_just_works() {
        Settings settings = read(Map.of());

        assertThat(settings.host()).isEqualTo("127.0.0.1");
        assertThat(settings.port()).isEqualTo(7070);
        assertThat(settings.dataFolder()).isEqualTo(Path.of("warmshelf-data"));
        assertThat(settings.jdbcUrl()).isNull();
        assertThat(settings.upkeep().slowQuery()).isEqualTo(Upkeep.SLOW_QUERY);
        assertThat(settings.addressAt(7070)).isEqualTo("http://localhost:7070");
    }

    @Test
    void the_environment_sets_what_no_option_gives() {
        Settings settings = read(
                Map.of(
                        "WARMSHELF_PORT", "8081",
                        "WARMSHELF_BASE_URL", "https://seeds.example.org/",
                        "WARMSHELF_TIME_ZONE", "America/Chicago",
                        "WARMSHELF_TRUSTED_PROXIES", "10.0.0.1, 10.0.0.2",
                        "WARMSHELF_JDBC_PASSWORD", "secret"),
                "--port",
                "9000");

        assertThat(settings.port()).isEqualTo(9000);
        assertThat(settings.baseUrl()).isEqualTo("https://seeds.example.org");
        assertThat(settings.zone()).isEqualTo(ZoneId.of("America/Chicago"));
        assertThat(settings.trustedProxies()).containsExactlyInAnyOrder("10.0.0.1", "10.0.0.2");
        assertThat(settings.jdbcPassword()).isEqualTo("secret");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    --port      | abc                       | --port was 'abc'; a whole number from 0 to 65535 is accepted.
                    --port      | 65536                     | --port was '65536'; a whole number from 0 to 65535 is accepted.
                    --port      | -1                        | --port was '-1'; a whole number from 0 to 65535 is accepted.
                    --base-url  | seeds.example.org         | --base-url was 'seeds.example.org'; an address such as
                    --base-url  | https://x.example/path    | without a path, is accepted.
                    --base-url  | ftp://x.example           | --base-url was 'ftp://x.example'
                    --time-zone | Duluth                    | --time-zone was 'Duluth'; a time zone such as America/Chicago
                    --jdbc-url  | mysql://x                 | an address that starts with jdbc:postgresql:
                    --mail-host | mail.example.org          | --mail-host was 'mail.example.org', but --mail-from is missing
                    --slow-query | 0                        | --slow-query was '0'; a whole number of milliseconds from 1 to 999999 is accepted.
                    --host      | 'a b'                     | --host was 'a b'; a network address such as
                    """)
    void a_wrong_value_is_named_with_what_is_accepted(String option, String value, String sentence) {
        assertThatThrownBy(() -> read(Map.of(), option + "=" + value))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining(sentence);
    }

    @Test
    void a_mail_server_is_set_by_its_name_and_the_address_letters_come_from() {
        Settings settings = read(
                Map.of("WARMSHELF_MAIL_HOST", "mail.example.org", "WARMSHELF_MAIL_PASSWORD", "secret"),
                "--mail-from=seeds@example.org",
                "--mail-user=seeds",
                "--mail-security=tls",
                "--mail-port=465");

        assertThat(settings.mail())
                .isEqualTo(new MailServer(
                        "mail.example.org", 465, "seeds", "secret", "seeds@example.org", MailServer.Security.TLS));
        assertThat(read(Map.of()).mail()).isNull();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    --mail-port     | abc   | --mail-port was 'abc'; a whole number from 0 to 65535 is accepted.
                    --mail-security | ssl   | --mail-security was 'ssl'; starttls, tls or none is accepted.
                    --mail-from     | seeds | --mail-from was 'seeds'; an address such as seeds@example.org is accepted.
                    """)
    void a_wrong_mail_setting_is_named_with_what_is_accepted(String option, String value, String sentence) {
        Map<String, String> environment =
                Map.of("WARMSHELF_MAIL_HOST", "mail.example.org", "WARMSHELF_MAIL_FROM", "seeds@example.org");

        assertThatThrownBy(() -> read(environment, option + "=" + value))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining(sentence);
    }

    @Test
    void the_push_keys_that_the_command_prints_can_be_set() {
        Map<String, String> keys = pushKeys();

        PushKeys push = Objects.requireNonNull(read(
                        Map.of("WARMSHELF_PUSH_PRIVATE_KEY", keys.get("privateKey")),
                        "--push-public-key=" + keys.get("publicKey"),
                        "--push-contact=mailto:seeds@example.org")
                .push());

        assertThat(push.publicKey()).isEqualTo(keys.get("publicKey"));
        assertThat(push.contact()).isEqualTo("mailto:seeds@example.org");
        assertThat(read(Map.of()).push()).isNull();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    --push-public-key  | abc     | --push-public-key was 'abc'; a public key as push-keys prints it, 87 characters, is accepted.
                    --push-private-key | secret1 | --push-private-key had 7 characters and is no private key; one as push-keys prints it, 43
                    --push-contact     | seeds   | --push-contact was 'seeds'; an address such as mailto:seeds@example.org is accepted.
                    """)
    void a_wrong_push_setting_is_named_and_no_secret_is_repeated(String option, String value, String sentence) {
        Map<String, String> keys = pushKeys();
        Map<String, String> environment = Map.of(
                "WARMSHELF_PUSH_PUBLIC_KEY", keys.get("publicKey"),
                "WARMSHELF_PUSH_PRIVATE_KEY", keys.get("privateKey"),
                "WARMSHELF_PUSH_CONTACT", "mailto:seeds@example.org");

        assertThatThrownBy(() -> read(environment, option + "=" + value))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining(sentence)
                .message()
                .doesNotContain("secret1", keys.get("privateKey"));
    }

    @Test
    void push_keys_of_two_pairs_or_one_alone_are_refused() {
        Map<String, String> keys = pushKeys();
        String contact = "--push-contact=mailto:seeds@example.org";

        assertThatThrownBy(() -> read(
                        Map.of("WARMSHELF_PUSH_PRIVATE_KEY", pushKeys().get("privateKey")),
                        "--push-public-key=" + keys.get("publicKey"),
                        contact))
                .isInstanceOf(BadInput.class)
                .hasMessage(
                        "--push-public-key and --push-private-key do not belong together; take both from one run of push-keys.");
        assertThatThrownBy(() -> read(Map.of(), contact))
                .isInstanceOf(BadInput.class)
                .hasMessageStartingWith("--push-public-key is missing; notices on phones need");
    }

    private static Map<String, String> pushKeys() {
        CommandRun run = CommandRun.of("push-keys");
        assertThat(run.status()).isZero();
        try {
            return new ObjectMapper().readValue(run.out(), new TypeReference<Map<String, String>>() {});
        } catch (JsonProcessingException notJson) {
            throw new IllegalStateException(notJson);
        }
    }

    @Test
    void a_wrong_variable_is_called_by_its_own_name() {
        assertThatThrownBy(() -> read(Map.of("WARMSHELF_PORT", "abc")))
                .isInstanceOf(BadInput.class)
                .hasMessage("WARMSHELF_PORT was 'abc'; a whole number from 0 to 65535 is accepted.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "serve --port abc",
                "serve --wrong",
                "serve --time-zone Duluth",
                "serve --push-public-key abc",
                "serve here"
            })
    void serve_ends_with_status_2_and_a_sentence(String words) {
        CommandRun run = CommandRun.of(words.split(" "));

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).hasLineCount(1).doesNotContain("Exception");
    }

    @Test
    void help_lists_every_setting_with_its_variable() {
        String help = CommandRun.of("serve", "--help").out();

        assertThat(help)
                .contains("WARMSHELF_HOST", "WARMSHELF_PORT", "WARMSHELF_BASE_URL", "WARMSHELF_DATA")
                .contains("WARMSHELF_JDBC_URL", "WARMSHELF_JDBC_USER", "WARMSHELF_JDBC_PASSWORD")
                .contains("WARMSHELF_TRUSTED_PROXIES", "WARMSHELF_TIME_ZONE");
    }

    private static Settings read(Map<String, String> environment, String... arguments) {
        SettingsOptions options = new SettingsOptions();
        CommandLine line = new CommandLine(CommandLine.Model.CommandSpec.create()
                .addMixin("settings", CommandLine.Model.CommandSpec.forAnnotatedObject(options)));
        line.parseArgs(arguments);
        return options.read(environment);
    }
}
