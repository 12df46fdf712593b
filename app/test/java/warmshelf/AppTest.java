package warmshelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import warmshelf.testing.CommandRun;

class AppTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "wrong",
                "emerge",
                "emerge pepper",
                "emerge pepper warm",
                "emerge pepper NaN",
                "emerge peper 25",
                "emerge pepper 25 26",
                "emerge pepper 25 --wrong",
                "frost 55811 --wrong",
                "frost --season soon 55811",
                "frost 55811 --season 99999",
                "frost",
                "frost 5581x",
                "frost 55811 --country CA",
                "frost 55811 --at 46.8,-92.1,180",
                "frost --at 46.8,-92.1",
                "frost --at 46.8,-92.1,high",
                "frost --at 96.8,-92.1,180",
                "frost --at 46.8,-92.1,9000",
                "frost --at -33.9,151.2,5"
            })
    void bad_input_ends_with_status_2_and_one_sentence_on_standard_error(String words) {
        CommandRun run = CommandRun.of(words.isEmpty() ? new String[0] : words.split(" "));

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).hasLineCount(1).matches("(?s)[A-Z-].*[.]\\R").doesNotContain("Exception");
    }

    @Test
    void a_fault_ends_with_status_1_and_a_sentence_without_stack_trace() {
        StringWriter err = new StringWriter();
        CommandLine line = new CommandLine(new Broken());
        line.setExecutionExceptionHandler(CommandTrouble::failed);
        line.setErr(new PrintWriter(err, true));

        int status = line.execute();

        assertThat(status).isEqualTo(1);
        assertThat(err.toString()).hasLineCount(1).contains("the disk is full").doesNotContain("\tat ");
    }

    @Test
    void help_lists_the_commands() {
        CommandRun run = CommandRun.of("--help");

        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("frost", "emerge");
    }

    @Command(name = "broken")
    static final class Broken implements Callable<Integer> {
        @Override
        public Integer call() {
            throw new IllegalStateException("the disk is full");
        }
    }
}
