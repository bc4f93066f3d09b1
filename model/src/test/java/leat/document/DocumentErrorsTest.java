package leat.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import leat.model.plan.Yard;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a person is told of a broken document, word for word. */
@Tag("pinned")
class DocumentErrorsTest {

    private static final String GOOD = YardDocument.write(FirstLawn.yardInFeet());

    private static final String NO_JSON =
            " cannot stand here; JSON has text in double quotes, numbers, true, false, lists in"
                    + " [ ] and objects in { }, with commas between and a colon behind each name";

    private static void refused(String text, String message) {
        var refused = assertThrows(DocumentException.class, () -> YardDocument.read(text, "lawn.yard.json"));
        assertEquals("lawn.yard.json" + message, refused.getMessage());
    }

    /** The good document with one passage changed, once. */
    private static String with(String passage, String other) {
        int at = GOOD.indexOf(passage);
        assertEquals(true, at >= 0, passage);
        return GOOD.substring(0, at) + other + GOOD.substring(at + passage.length());
    }

    @Test
    void aFieldThatIsNotKnown() {
        refused(
                with("\"radius\"", "\"raduis\""),
                ", line 67, column 9 (/water/heads/0/raduis): a spray has no field 'raduis'; it must be one of id, kind, family, at, arc, radius; perhaps 'radius'");
    }

    @Test
    void aFieldThatIsMissing() {
        refused(
                with("\"family\": \"spray-4_6\",", ""),
                ", line 61, column 7 (/water/heads/0): the spray lacks the field 'family'; it must be given");
    }

    @Test
    void aKindThatIsNotKnown() {
        refused(
                with("\"kind\": \"spray\"", "\"kind\": \"sprya\""),
                ", line 63, column 17 (/water/heads/0/kind): 'sprya' cannot stand here; it must be one of rotor, spray, bubbler, drip line; perhaps 'spray'");
    }

    @Test
    void aWrongUnit() {
        refused(
                with("\"radius\": \"15 ft\"", "\"radius\": \"15 psi\""),
                ", line 67, column 19 (/water/heads/0/radius): '15 psi' is no length; it must be a number with one of these units: m, mm, ft, in");
    }

    @Test
    void aNumberWithoutUnit() {
        refused(
                with("\"radius\": \"15 ft\"", "\"radius\": 15"),
                ", line 67, column 19 (/water/heads/0/radius): the number 15 cannot stand here; it must be text: a length with its unit");
    }

    @Test
    void aNegativeLength() {
        refused(
                with("\"radius\": \"15 ft\"", "\"radius\": \"-15 ft\""),
                ", line 67, column 19 (/water/heads/0/radius): spray S1: radius is -4.572 m; it must be more than 0 m (here stands '-15 ft')");
    }

    @Test
    void anArcThatIsTooWide() {
        refused(
                with("\"sweep\": \"90 deg\"", "\"sweep\": \"540 deg\""),
                ", line 66, column 44 (/water/heads/0/arc/sweep): arc: sweep is 540 deg; it must be more than 0 and at most 360 deg");
    }

    @Test
    void aFlowTestAboveTheStaticPressure() {
        refused(
                with("\"residual\": \"50 psi\"", "\"residual\": \"61 psi\""),
                ", line 34, column 52 (/water/sources/0/flowTest/residual): mains street: flowTest.residual is 61 psi; it must be less than the static pressure");
    }

    @Test
    void aBoundaryThatCrossesItself() {
        refused(
                with("\"180 deg\", \"distance\": \"36 ft\"", "\"250 deg\", \"distance\": \"50 ft\""),
                ", line 10, column 18 (/site/survey/courses): survey, region: outer is a line whose side 3 meets its side 1; it must be one that neither crosses nor touches itself");
    }

    @Test
    void anOutlineThatCrossesItself() {
        refused(
                with(
                        "[[\"0 ft\", \"0 ft\"], [\"15 ft\", \"0 ft\"], [\"15 ft\", \"15 ft\"], [\"0 ft\", \"15 ft\"]]",
                        "[[\"0 ft\", \"0 ft\"], [\"15 ft\", \"15 ft\"], [\"15 ft\", \"0 ft\"], [\"0 ft\", \"15 ft\"]]"),
                ", line 21, column 20 (/site/surfaces/0/outline): region: outer is a line whose side 3 meets its side 1; it must be one that neither crosses nor touches itself");
    }

    @Test
    void aRouteOfOnePoint() {
        refused(
                with("[[\"-8 ft\", \"-8 ft\"], [\"-3 ft\", \"-3 ft\"]]", "[[\"-8 ft\", \"-8 ft\"]]"),
                ", line 45, column 18 (/water/main/0/route): route: points is a list of 1; it must be a list of at least 2");
    }

    @Test
    void aPointOfThreeLengths() {
        refused(
                with("\"at\": [\"15 ft\", \"0 ft\"]", "\"at\": [\"15 ft\", \"0 ft\", \"0 ft\"]"),
                ", line 73, column 15 (/water/heads/1/at): a list cannot stand here; it must be a point: a list of its lengths to the east and to the north");
    }

    @Test
    void aNameOfNothing() {
        refused(
                with("\"valve\": \"V1\", \"heads\"", "\"valve\": \"V9\", \"heads\""),
                ", line 79, column 29 (/water/zones/0/valve): zone Z1: valve is 'V9', which is not there; it must be the name of a valve of a manifold");
        refused(
                with("\"heads\": [\"S1\", \"S2\"]", "\"heads\": [\"S1\", \"S7\"]"),
                ", line 79, column 51 (/water/zones/0/heads/1): zone Z1: heads is 'S7', which is not there; it must be the name of a head");
        refused(
                with("\"on\": \"main\", \"device\"", "\"on\": \"mian\", \"device\""),
                ", line 39, column 30 (/water/backflows/0/on): backflow preventer garden: on is 'mian', which is not there; it must be the name of a pipe of the main");
        refused(
                with("\"from\": {\"source\": \"street\"}", "\"from\": {\"source\": \"road\"}"),
                ", line 44, column 28 (/water/main/0/from/source): pipe main: from is 'road', which is not there; it must be the name of a source");
        refused(
                with("\"contents\": [\"main\"]", "\"contents\": [\"spare\"]"),
                ", line 105, column 100 (/trenches/0/contents/0): trench T1: contents is pipe 'spare', which is not there; it must be pipes, conduits and cables of the yard");
        refused(
                with("{\"position\": {\"heads\": [\"S2\"]}", "{\"position\": {\"heads\": [\"S3\"]}"),
                ", line 107, column 38 (/planned/position/heads/0): plan: head is 'S3', which is not there; it must be a thing that can be planned; perhaps 'S1'");
    }

    @Test
    void aNameThatIsUsedTwice() {
        refused(
                with("\"id\": \"S2\"", "\"id\": \"S1\""),
                ", line 70, column 15 (/water/heads/1/id): head S1: id is used twice; it must be unique among its kind");
        refused(
                with("\"id\": \"Z1/2\"", "\"id\": \"main\"").replace("\"S2\": \"Z1/2\"", "\"S2\": \"main\""),
                ", line 93, column 19 (/water/laterals/0/pipes/1/id): pipe main: id is used twice; it must be unique among its kind");
        refused(
                with("[\"S1\", \"S2\"]", "[\"S1\", \"S2\", \"S1\"]"),
                ", line 79, column 14 (/water/zones/0/id): zone Z1, head S1: id is used twice; it must be unique among its kind");
    }

    @Test
    void aNameThatIsBlank() {
        refused(
                with("\"id\": \"S2\"", "\"id\": \" \""),
                ", line 70, column 15 (/water/heads/1/id): head: name is ' '; it must be 1 to 80 printable characters without a space at either end");
    }

    @Test
    void aLoopInALateral() {
        refused(
                with("{\"valve\": \"V1\"}", "{\"pipe\": \"Z1/2\"}"),
                ", line 87, column 21 (/water/laterals/0/pipes/0/from): lateral of zone Z1, pipe Z1/1: from is in a loop through Z1/1, Z1/2; it must be a feed from outside it");
    }

    @Test
    void aPipeThatIsFedTwice() {
        refused(
                with("{\"valve\": \"V1\"}", "{\"valve\": \"V1\", \"source\": \"street\"}"),
                ", line 87, column 21 (/water/laterals/0/pipes/0/from): a pipe is fed by one thing; it must be one of source, pipe, valve with a name");
    }

    @Test
    void noNumber() {
        refused(with("\"radius\": \"15 ft\"", "\"radius\": NaN"), ", line 67, column 19: 'NaN'" + NO_JSON);
        refused(
                with("\"radius\": \"15 ft\"", "\"radius\": \"NaN ft\""),
                ", line 67, column 19 (/water/heads/0/radius): 'NaN ft' is no length; it must be a number with one of these units: m, mm, ft, in");
    }

    @Test
    void aNumberBeyondAllBounds() {
        refused(
                with("\"radius\": \"15 ft\"", "\"radius\": \"1e999 ft\""),
                ", line 67, column 19 (/water/heads/0/radius): '1e999 ft' is no length; it must be a number with one of these units: m, mm, ft, in");
        String family = "\"version\": 2, \"additions\": {\"heads\": [{\"key\": \"mine\", \"kind\": \"spray\", \"jet\":"
                + " {\"radius\": \"3 m\", \"leastRadius\": \"2 m\", \"flow\": \"1 gpm\", \"rule\": \"fixed\","
                + " \"flowExponent\": 1e999}}]},";
        refused(
                with("\"version\": 2,", family),
                ", line 3, column 171 (/additions/heads/0/jet/flowExponent): the number 1e999 cannot stand here; it must be a finite number without quotes");
    }

    @Test
    void aFileThatWasCutOff() {
        refused(
                GOOD.substring(0, GOOD.length() / 2),
                ", line 56, column 15: the file ends before its last bracket; perhaps it was cut off");
        refused(
                GOOD.substring(0, GOOD.indexOf("Schedule")),
                ", line 46, column 24: the file ends before its last bracket; perhaps it was cut off");
        refused("{", ", line 1, column 2: the file ends before its last bracket; perhaps it was cut off");
    }

    @Test
    void aFileThatIsEmpty() {
        refused("", ": the file is empty; it must be a document of a yard");
        refused(" \n\t\n", ": the file is empty; it must be a document of a yard");
    }

    @Test
    void bracketsWithoutEnd() {
        refused(
                "[".repeat(100_000),
                ", line 1, column 33: brackets are nested more than 32 deep; a document of a yard needs fewer");
        refused(
                with("\"name\": \"First lawn\"", "\"name\": " + "{\"a\":".repeat(50) + "1" + "}".repeat(50)),
                ", line 5, column 166: brackets are nested more than 32 deep; a document of a yard needs fewer");
    }

    @Test
    void aVersionThatIsNotKnown() {
        refused(
                with("\"version\": 2", "\"version\": 3"),
                ", line 3, column 14 (/version): a later release of Leat wrote this document, in version 3; it must be a version that this release reads, 1 to 2");
        refused(
                with("\"version\": 2", "\"version\": 0"),
                ", line 3, column 14 (/version): the number 0 cannot stand here; it must be a version that this release reads, 1 to 2");
        refused(
                with("\"version\": 2", "\"version\": \"2\""),
                ", line 3, column 14 (/version): the text '2' cannot stand here; it must be a version that this release reads, 1 to 2");
        refused(
                with("\"version\": 2,", ""),
                ", line 1, column 1: the document lacks the field 'version'; it must be given");
    }

    @Test
    void anEditionThatIsNotKnown() {
        refused(
                with("\"leat-1\"", "\"leat-7\""),
                ", line 4, column 14 (/edition): standing tables: edition is 'leat-7'; it must be one that this version has: leat-1; perhaps 'leat-1'");
    }

    @Test
    void anotherFormat() {
        refused(
                "{}",
                ", line 1, column 1: this is no document of a yard; it must have the field 'format' with the value 'leat-yard'");
        refused(
                with("leat-yard", "leat-findings"),
                ", line 2, column 13 (/format): the text 'leat-findings' cannot stand here; it must be 'leat-yard'");
        refused(
                "[]",
                ", line 1, column 1: a list cannot stand here; it must be an object in { }, the document of a yard");
        refused(
                "\"text\"",
                ", line 1, column 1: the text 'text' cannot stand here; it must be an object in { }, the document of a yard");
    }

    @Test
    void aWrongType() {
        refused(
                with("\"heads\": [\"S1\", \"S2\"]", "\"heads\": \"S1, S2\""),
                ", line 79, column 44 (/water/zones/0/heads): the text 'S1, S2' cannot stand here; it must be a list in [ ]");
        refused(
                with("\"flowTest\": {\"flow\": \"15 gpm\", \"residual\": \"50 psi\"}", "\"flowTest\": [15, 50]"),
                ", line 34, column 21 (/water/sources/0/flowTest): a list cannot stand here; it must be an object in { } that describes a flow test");
        refused(
                with("\"name\": \"First lawn\"", "\"name\": 7"),
                ", line 5, column 11 (/name): the number 7 cannot stand here; it must be text in double quotes");
        refused(
                with("\"meter\": \"meter-5_8\"", "\"meter\": null"),
                ", line 35, column 18 (/water/sources/0/meter): null cannot stand here; it must be text in double quotes");
        refused(
                with(
                        "{\"id\": \"V1\", \"device\": \"valve-3_4\"}",
                        "{\"id\": \"V1\", \"device\": \"valve-3_4\", \"spare\": \"no\"}"),
                ", line 56, column 56 (/water/manifolds/0/valves/0/spare): the text 'no' cannot stand here; it must be true or false");
    }

    @Test
    void aFieldThatIsGivenTwice() {
        refused(
                with("\"radius\": \"15 ft\"", "\"radius\": \"15 ft\", \"radius\": \"14 ft\""),
                ", line 67, column 28 (/water/heads/0/radius): the field 'radius' is given twice; it must be given once");
    }

    @Test
    void moreBehindTheEnd() {
        refused(
                GOOD + "{}",
                ", line 109, column 1: there is more behind the end of the document; it must end with its last bracket");
        refused(GOOD + "}", ", line 109, column 1: '}'" + NO_JSON);
        refused(GOOD + "thanks", ", line 109, column 1: 'thanks'" + NO_JSON);
    }

    @Test
    void whatIsNoJson() {
        refused(with("\"units\": \"US\",", "\"units\": \"US\""), ", line 7, column 3: '\"site\"'" + NO_JSON);
        refused(with("\"units\": \"US\",", "\"units\": 'US',"), ", line 6, column 12: ''US''" + NO_JSON);
        refused(with("\"units\": \"US\",", "\"units\": \"US\", // feet"), ", line 6, column 18: '// feet'" + NO_JSON);
        refused(with("\"First lawn\"", "\"First \\q lawn\""), ", line 5, column 12: 'First \\q lawn\"'" + NO_JSON);
        refused(with("\"First lawn\"", "\"First \n lawn\""), ", line 5, column 12: 'First'" + NO_JSON);
        refused("yard(\"First lawn\")", ", line 1, column 1: 'yard(\"First lawn\")'" + NO_JSON);
        refused("\u0000\u0001\u0002ELF", ", line 1, column 1: '\\u0000\\u0001\\u0002ELF'" + NO_JSON);
    }

    @Test
    void whatIsTooLong() {
        refused(
                with("First lawn", "a".repeat(300_000)),
                ", line 5, column 12: what stands here is too long; texts have at most 200000 characters, names 200, numbers 100");
        refused(
                with("First lawn", "a".repeat(81)),
                ", line 5, column 11 (/name): yard: name is 'aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa'; it must be 1 to 80 printable characters without a space at either end");
        refused(
                with("\"name\"", "\"" + "n".repeat(100_000) + "\""),
                ", line 5, column 100007: what stands here is too long; texts have at most 200000 characters, names 200, numbers 100");
    }

    @Test
    void aRuleThatIsNotKnown() {
        refused(
                with(
                        "\"version\": 2,",
                        "\"version\": 2, \"additions\": {\"limits\": [{\"rule\": \"source.presure\","
                                + " \"limit\": \"70 psi\"}]},"),
                ", line 3, column 51 (/additions/limits/0/rule): rule: id is 'source.presure'; it must be the id of a rule; perhaps 'source.pressure'");
        refused(
                with(
                        "\"version\": 2,",
                        "\"version\": 2, \"additions\": {\"limits\": [{\"rule\": \"source.pressure\","
                                + " \"limit\": \"70 ft\"}]},"),
                ", line 3, column 79 (/additions/limits/0/limit): '70 ft' is no pressure; it must be a number with one of these units: Pa, kPa, bar, psi");
    }

    @Test
    void aKeyThatIsNotInTheTables() {
        String text = with("\"family\": \"spray-4_6\"", "\"family\": \"spray-4_7\"");
        Yard yard = YardDocument.read(text, "lawn.yard.json");
        assertEquals(2, yard.water().heads().size());
        var refused = assertThrows(DocumentException.class, () -> YardDocument.readSite(text, "lawn.yard.json"));
        assertEquals(
                "lawn.yard.json, line 64, column 19 (/water/heads/0/family): head S1, head family: key is 'spray-4_7'; it must be a key of the catalogue; perhaps 'spray-3_7'",
                refused.getMessage());
    }

    @Test
    void theExceptionKnowsThePlace() {
        String text = with("\"radius\": \"15 ft\"", "\"radius\": \"-15 ft\"");
        var refused = assertThrows(DocumentException.class, () -> YardDocument.read(text, "lawn.yard.json"));
        assertEquals("lawn.yard.json", refused.file());
        assertEquals("/water/heads/0/radius", refused.pointer());
        String line = text.lines().toList().get(refused.line() - 1);
        assertEquals("\"-15 ft\"", line.substring(refused.column() - 1));
    }
}
