package warmshelf.program;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import java.time.Instant;
import java.time.LocalDate;

/** Answers as JSON: days and moments as ISO 8601 has them, what is not known as null. */
final class ProgramJson {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .addModule(new SimpleModule()
                    .addSerializer(LocalDate.class, ToStringSerializer.instance)
                    .addSerializer(Instant.class, ToStringSerializer.instance))
            .build();

    private ProgramJson() {}

    static String text(Object answer) {
        try {
            return MAPPER.writeValueAsString(answer) + "\n";
        } catch (JsonProcessingException unwritable) {
            throw new IllegalStateException("an answer could not be written as JSON", unwritable);
        }
    }
}
