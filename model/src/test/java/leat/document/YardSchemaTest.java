package leat.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leat.model.plan.Site;
import leat.model.quantity.UnitSystem;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The published schema, with a validator from outside, says the same of documents as the reader does. */
@Tag("reference")
class YardSchemaTest {

    private static final Path REFERENCE = Path.of("../docs/reference");

    private static Schema schema;

    @BeforeAll
    static void readSchema() throws IOException {
        schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(REFERENCE.resolve("yard.schema.json")));
    }

    private static List<Error> faults(String text) {
        return schema.validate(text, InputFormat.JSON);
    }

    @RepeatedTest(40)
    void whatIsWrittenIsValid(RepetitionInfo turn) {
        for (UnitSystem units : UnitSystem.values()) {
            String text = YardDocument.write(
                    RandomYards.of(turn.getCurrentRepetition()).units(units));
            assertEquals(List.of(), faults(text));
        }
    }

    @Test
    void theExampleOfThePageIsValidAndIsReadAndNamesWhatTheTablesHave() throws IOException {
        String page = Files.readString(REFERENCE.resolve("yard-document.md"));
        Matcher example = Pattern.compile("```json\n(.*?)```", Pattern.DOTALL).matcher(page);
        assertTrue(example.find());
        assertEquals(List.of(), faults(example.group(1)));
        Site site = YardDocument.readSite(example.group(1), "yard-document.md");
        assertEquals(1, site.yard().water().heads().size());
        assertEquals(example.group(1), YardDocument.write(site.yard()));
    }

    /** One passage changed for another makes the document wrong for the schema, and for the reader. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"radius\": \"15 ft\" | \"raduis\": \"15 ft\"",
                "\"radius\": \"15 ft\" | \"radius\": \"15 psi\"",
                "\"radius\": \"15 ft\" | \"radius\": 15",
                "\"radius\": \"15 ft\" | \"radius\": \"NaN ft\"",
                "\"kind\": \"spray\" | \"kind\": \"sprya\"",
                "\"version\": 2 | \"version\": 3",
                "\"format\": \"leat-yard\" | \"format\": \"yard\"",
                "\"units\": \"US\" | \"units\": \"us\"",
                "\"at\": [\"15 ft\", \"0 ft\"] | \"at\": [\"15 ft\"]",
                "\"at\": [\"15 ft\", \"0 ft\"] | \"at\": [\"15 ft\", \"0 ft\", \"0 ft\"]",
                "\"from\": {\"valve\": \"V1\"} | \"from\": \"valve V1\"",
                "\"from\": {\"valve\": \"V1\"} | \"from\": {\"valve\": \"V1\", \"pipe\": \"main\"}",
                "\"name\": \"First lawn\" | \"name\": \" \"",
                "\"meter\": \"meter-5_8\" | \"meter\": null",
                "\"heads\": [\"S1\", \"S2\"] | \"heads\": \"S1\""
            })
    void whatIsBrokenIsRefused(String passage, String other) {
        String good = YardDocument.write(FirstLawn.yardInFeet());
        assertEquals(List.of(), faults(good));
        String broken = good.replace(passage, other);
        assertNotEquals(good, broken);
        assertFalse(faults(broken).isEmpty(), other);
        assertThrows(DocumentException.class, () -> YardDocument.read(broken, "broken.yard.json"));
    }
}
