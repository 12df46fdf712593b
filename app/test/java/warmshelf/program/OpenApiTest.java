package warmshelf.program;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.THERMOMETER;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.TestGroup;
import warmshelf.web.RouteRight;

/**
 * The description of what programs read and send, held against the routes both ways and against real answers of a group in which
 * something lies. A general validator (JSON Schema 2020-12, on which OpenAPI 3.1 stands) judges, formats included.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OpenApiTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final SchemaRegistry SCHEMAS = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    private Cellar cellar;
    private TestGroup group;
    private Script script;
    private JsonNode document;

    @BeforeAll
    void fill() throws Exception {
        cellar = Cellar.open();
        group = cellar.group();
        String sowing = cellar.ask(Cellar.peppers());
        assertThat(cellar.placeAsSuggested(sowing).status()).isEqualTo(303);
        cellar.ask(Cellar.peppers());
        cellar.tick(sowing, Map.of("step", "sown", "seenOn", "2027-02-20"));
        cellar.coordinator()
                .post(
                        "/frost/thermometers",
                        Map.of(
                                "name",
                                "Hall, north wall",
                                "whose",
                                "group",
                                "latitude",
                                "46.8",
                                "longitude",
                                "-92.1",
                                "elevation",
                                "700"));
        script = Script.of(group, cellar.coordinator(), TokenScope.values());
        document = JSON.readTree(group.stranger().get("/api/v1/openapi.json").body());
    }

    @AfterAll
    void close() {
        cellar.close();
    }

    @Test
    void each_route_is_described_and_each_described_one_is_a_route() {
        Set<String> described = new TreeSet<>();
        document.path("paths")
                .properties()
                .forEach(path -> path.getValue()
                        .fieldNames()
                        .forEachRemaining(
                                method -> described.add(method.toUpperCase(Locale.ROOT) + " " + path.getKey())));
        Set<String> routes = new TreeSet<>();
        for (RouteRight right : group.server().rights()) {
            // HEAD answers wherever GET does, by HTTP itself
            if (right.path().startsWith("/api/") && !right.method().equals("HEAD")) {
                routes.add(right.method() + " " + right.path());
            }
        }

        assertThat(described).isEqualTo(routes).hasSizeGreaterThan(8);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/token",
                "/round",
                "/round?show=all",
                "/mats",
                "/thermometers",
                "/sowings",
                "/sowings?limit=1",
                "/stays",
                "/lots"
            })
    void real_answers_are_as_described(String address) {
        JsonNode answer = script.json(address);

        assertThat(errors(answered(address.replaceAll("\\?.*", ""), "get", "200"), answer))
                .as(answer.toString())
                .isEmpty();
        boolean empty = (answer.has("items") && answer.path("items").isEmpty())
                || (answer.has("checks") && answer.path("checks").isEmpty());
        // a coordinator has no sowing of their own here
        assertThat(empty).as("nothing to hold against it").isEqualTo(address.equals("/round"));
    }

    @Test
    void what_is_sent_as_described_is_kept_and_answered_as_described() {
        String mat =
                group.database().sql().fetchValue(MAT.ID, MAT.NAME.eq("M1")).toString();
        String thermometer = group.database().sql().fetchValue(THERMOMETER.ID).toString();
        for (String path : List.of("/mats/{id}/readings", "/thermometers/{id}/nights", "/round/entries")) {
            JsonNode content =
                    operation(path, "post").path("requestBody").path("content").path("application/json");
            JsonNode example = content.path("example");

            assertThat(errors(content.path("schema"), example)).as(path).isEmpty();
            Answer answer = script.post(
                    path.replace("{id}", path.startsWith("/mats") ? mat : thermometer), path, example.toString());

            assertThat(answer.status()).as(answer.body()).isEqualTo(200);
            assertThat(errors(answered(path, "post", "200"), Script.json(answer)))
                    .as(path)
                    .isEmpty();
        }
    }

    @Test
    void each_no_is_as_described() {
        List<Answer> noes = List.of(
                Script.with(group, "unknown").get("/lots"),
                script.get("/lots?token=1"),
                script.get("/lots?limit=0"),
                script.post("/round/entries", "k", "{\"entries\": 5}"),
                script.get("/nothing"));
        JsonNode problem = document.path("components").path("schemas").path("Problem");
        assertThat(noes).extracting(Answer::status).containsExactly(401, 400, 422, 422, 404);
        for (Answer no : noes) {
            assertThat(no.header("Content-Type")).startsWith("application/problem+json");
            assertThat(errors(problem, Script.json(no))).as(no.body()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource(TokenScope.class)
    void each_scope_is_told_and_asked_for_by_some_route(TokenScope scope) {
        List<String> asked = new ArrayList<>();
        document.path("paths")
                .forEach(path -> path.forEach(operation -> operation
                        .path("security")
                        .forEach(way -> way.path("token").forEach(word -> asked.add(word.asText())))));
        List<String> told = new ArrayList<>();
        document.at("/components/schemas/Token/properties/scopes/items/enum").forEach(word -> told.add(word.asText()));

        assertThat(asked).contains(scope.word());
        assertThat(told).contains(scope.word());
    }

    @Test
    void a_route_asks_for_the_scope_that_is_described() {
        Script bare = Script.of(group, cellar.member(), TokenScope.LOTS);
        document.path("paths").properties().forEach(path -> {
            JsonNode scope = path.getValue()
                    .path("get")
                    .path("security")
                    .path(0)
                    .path("token")
                    .path(0);
            if (scope.isTextual() && !scope.asText().equals(TokenScope.LOTS.word())) {
                Answer no = bare.get(path.getKey().substring("/api/v1".length()));
                assertThat(no.status()).as(path.getKey()).isEqualTo(403);
                assertThat(no.header("WWW-Authenticate")).contains("scope=\"" + scope.asText() + "\"");
            }
        });
    }

    @Test
    void the_schemas_are_schemas_themselves() {
        Schema meta = SCHEMAS.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        document.path("components")
                .path("schemas")
                .properties()
                .forEach(schema -> assertThat(meta.validate(schema.getValue()))
                        .as(schema.getKey())
                        .isEmpty());
    }

    @Test
    void the_validator_finds_what_is_wrong() {
        JsonNode lot = document.path("components").path("schemas").path("Lot");
        ObjectNode wrong = script.json("/lots").path("items").path(0).deepCopy();
        wrong.put("addedOn", "last week");
        wrong.put("unheardOf", 1);
        wrong.remove("variety");

        assertThat(errors(lot, wrong)).hasSize(3);
    }

    private JsonNode operation(String path, String method) {
        JsonNode operation = document.path("paths").path("/api/v1" + path).path(method);
        assertThat(operation.isObject()).as(method + " " + path).isTrue();
        return operation;
    }

    private JsonNode answered(String path, String method, String status) {
        return operation(path, method)
                .path("responses")
                .path(status)
                .path("content")
                .path("application/json")
                .path("schema");
    }

    /** What of an answer is not as a schema of the document has it. */
    private List<String> errors(JsonNode schema, JsonNode answer) {
        assertThat(schema.isObject()).isTrue();
        ObjectNode whole = schema.deepCopy();
        whole.set("$defs", document.path("components").path("schemas"));
        // where a schema by itself keeps what it points to
        String text = whole.toString().replace("#/components/schemas/", "#/$defs/");
        return SCHEMAS
                .getSchema(text)
                .validate(answer, context -> context.executionConfig(config -> config.formatAssertionsEnabled(true)))
                .stream()
                .map(String::valueOf)
                .toList();
    }
}
