package warmshelf;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;

/** What a command answers: one JSON object on standard output. Fields keep their order, missing figures are null. */
public final class Output {
    private static final ObjectMapper MAPPER = JsonMapper.builder()
            .addModule(new SimpleModule().addSerializer(LocalDate.class, ToStringSerializer.instance))
            .enable(SerializationFeature.INDENT_OUTPUT)
            .build();

    private Output() {}

    /** Prints a map or record as JSON. Dates are ISO 8601; the text is UTF-8 whatever the terminal's own encoding. */
    public static void json(Object answer) {
        PrintStream out = System.out;
        out.writeBytes((text(answer) + "\n").getBytes(StandardCharsets.UTF_8));
        out.flush();
    }

    /** The same JSON as text. */
    public static String text(Object answer) {
        try {
            return MAPPER.writeValueAsString(answer);
        } catch (JsonProcessingException unwritable) {
            throw new IllegalStateException("an answer could not be written as JSON", unwritable);
        }
    }
}
