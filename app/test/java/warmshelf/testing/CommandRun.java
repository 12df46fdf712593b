package warmshelf.testing;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import warmshelf.App;

/** One run of a command inside the test's own process, with what it printed. */
public record CommandRun(int status, String out, String err) {

    public static CommandRun of(String... arguments) {
        PrintStream out = System.out;
        PrintStream err = System.err;
        ByteArrayOutputStream outBytes = new ByteArrayOutputStream();
        ByteArrayOutputStream errBytes = new ByteArrayOutputStream();
        try {
            System.setOut(new PrintStream(outBytes, true, StandardCharsets.UTF_8));
            System.setErr(new PrintStream(errBytes, true, StandardCharsets.UTF_8));
            int status = App.run(arguments);
            return new CommandRun(
                    status, outBytes.toString(StandardCharsets.UTF_8), errBytes.toString(StandardCharsets.UTF_8));
        } finally {
            System.setOut(out);
            System.setErr(err);
        }
    }

    /** The one JSON object that was printed. */
    public JsonNode json() {
        try {
            return new ObjectMapper().readTree(out);
        } catch (JsonProcessingException notJson) {
            throw new AssertionError("not JSON: " + out, notJson);
        }
    }
}
