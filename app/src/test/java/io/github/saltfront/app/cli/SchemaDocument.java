package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.github.saltfront.app.schema.Schemas;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** A published schema, to validate with and to look into. */
final class SchemaDocument {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final YAMLMapper YAML = YAMLMapper.builder().build();

    private final JsonNode node;
    private final Schema schema;

    private SchemaDocument(String name) {
        node = JSON.readTree(Schemas.text(name));
        schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(node);
    }

    static SchemaDocument of(String name) {
        return new SchemaDocument(name);
    }

    static JsonNode file(Path file) throws java.io.IOException {
        String text = Files.readString(file);
        return file.toString().endsWith(".json") ? JSON.readTree(text) : YAML.readTree(text);
    }

    JsonNode node() {
        return node;
    }

    List<Error> errors(JsonNode instance) {
        return schema.validate(instance);
    }

    void requireValid(String what, JsonNode instance) {
        assertThat(errors(instance)).as(what).isEmpty();
    }

    /** Returns the property names of every object that the schema describes, by the place of the description. */
    Map<String, Set<String>> objects() {
        Map<String, Set<String>> objects = new TreeMap<>();
        collect("", node, objects);
        return objects;
    }

    private static void collect(String place, JsonNode at, Map<String, Set<String>> objects) {
        if (at.isObject()) {
            // descriptions of the object's own keys say additionalProperties; conditions within do not
            if (at.has("properties") && at.has("additionalProperties")) {
                objects.put(place, new TreeSet<>(at.get("properties").propertyNames()));
            }
            at.properties().forEach(e -> collect(place + "/" + e.getKey(), e.getValue(), objects));
        } else if (at.isArray()) {
            for (int i = 0; i < at.size(); i++) {
                collect(place + "/" + i, at.get(i), objects);
            }
        }
    }
}
