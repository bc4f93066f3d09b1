package leat.document;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.core.json.JsonFactory;

/** Turns the text of a file into values that know where they stand. Jackson finds the tokens; all complaints are ours. */
final class JsonReader {

    /** Far above what a yard needs, far below what fills the memory. */
    private static final int MOST_CHARACTERS = 64 << 20;

    private static final int DEEPEST = 32;
    private static final int LONGEST_TEXT = 200_000;
    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_NUMBER = 100;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(2 * DEEPEST)
                    .maxStringLength(LONGEST_TEXT)
                    .maxNameLength(LONGEST_NAME)
                    .maxNumberLength(LONGEST_NUMBER)
                    .maxDocumentLength(MOST_CHARACTERS)
                    .build())
            .build();

    private static final Pattern NAME = Pattern.compile("\"(?:[^\"\\\\]|\\\\.)*+\"\\s*:\\s*");

    private final String file;
    private final String text;
    private final JsonParser parser;

    /** The last good token and where it ended: what is wrong begins behind it. */
    private @Nullable JsonToken lastRead;

    private int readTo;

    private int depth;

    private JsonReader(String file, String text, JsonParser parser) {
        this.file = file;
        this.text = text;
        this.parser = parser;
    }

    /**
     * @param file its name, for messages
     * @throws DocumentException if the text is not one JSON value with fields that are unique
     */
    static Json read(String file, String text) {
        String bare = text.startsWith("\uFEFF") ? text.substring(1) : text; // some editors leave a mark there
        if (bare.isBlank()) {
            throw DocumentException.of(file, "the file is empty; it must be a document of a yard", null);
        }
        if (bare.length() > MOST_CHARACTERS) {
            throw DocumentException.of(
                    file,
                    "the file has " + bare.length() + " characters; it must have at most " + MOST_CHARACTERS,
                    null);
        }
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), bare)) {
            return new JsonReader(file, bare, parser).whole();
        }
    }

    private Json whole() {
        try {
            Json root = value("", next());
            if (next() != null) {
                throw spot("", parser.currentTokenLocation())
                        .fault("there is more behind the end of the document; it must end with its last bracket");
            }
            return root;
        } catch (UnexpectedEndOfInputException e) {
            throw place(text.length()).fault("the file ends before its last bracket; perhaps it was cut off");
        } catch (StreamConstraintsException e) {
            throw place(startOfFault())
                    .fault("what stands here is too long; texts have at most " + LONGEST_TEXT + " characters, names "
                            + LONGEST_NAME + ", numbers " + LONGEST_NUMBER);
        } catch (JacksonException e) {
            throw notJson();
        }
    }

    private @Nullable JsonToken next() {
        JsonToken token = parser.nextToken();
        if (token == JsonToken.VALUE_STRING) {
            parser.getString(); // the rest of a text is looked at only when it is asked for
        }
        if (token != null) {
            lastRead = token;
            readTo = (int) parser.currentLocation().getCharOffset();
        }
        return token;
    }

    private Json value(String pointer, @Nullable JsonToken token) {
        Spot spot = spot(pointer, parser.currentTokenLocation());
        if (token == null) {
            throw notJson();
        }
        return switch (token) {
            case START_OBJECT -> fields(spot);
            case START_ARRAY -> items(spot);
            case VALUE_STRING -> new Json.Text(spot, parser.getString());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Json.Figure(spot, parser.getString());
            case VALUE_TRUE -> new Json.Flag(spot, true);
            case VALUE_FALSE -> new Json.Flag(spot, false);
            case VALUE_NULL -> new Json.Nothing(spot);
            default -> throw notJson();
        };
    }

    private Json fields(Spot spot) {
        descend(spot);
        SortedMap<String, Json.Field> fields = new TreeMap<>();
        while (next() == JsonToken.PROPERTY_NAME) {
            String name = parser.currentName();
            String pointer = spot.pointer() + "/" + name.replace("~", "~0").replace("/", "~1");
            Spot nameSpot = spot(pointer, parser.currentTokenLocation());
            if (fields.put(name, new Json.Field(nameSpot, value(pointer, next()))) != null) {
                throw nameSpot.fault("the field " + Words.quoted(name) + " is given twice; it must be given once");
            }
        }
        depth--;
        return new Json.Fields(spot, Collections.unmodifiableSortedMap(fields));
    }

    private Json items(Spot spot) {
        descend(spot);
        List<Json> items = new ArrayList<>();
        for (JsonToken token = next(); token != JsonToken.END_ARRAY; token = next()) {
            items.add(value(spot.pointer() + "/" + items.size(), token));
        }
        depth--;
        return new Json.Items(spot, List.copyOf(items));
    }

    private void descend(Spot spot) {
        depth++;
        if (depth > DEEPEST) {
            throw new Spot(file, "", spot.line(), spot.column())
                    .fault("brackets are nested more than " + DEEPEST + " deep; a document of a yard needs fewer");
        }
    }

    private Spot spot(String pointer, TokenStreamLocation location) {
        return new Spot(file, pointer, location.getLineNr(), location.getColumnNr());
    }

    /** What stands behind the last good token, and where. */
    private DocumentException notJson() {
        int start = startOfFault();
        int end = start;
        while (end < text.length() && end < start + 20 && ",:[]{}\n\r".indexOf(text.charAt(end)) < 0) {
            end++;
        }
        String found = text.substring(start, Math.min(Math.max(end, start + 1), text.length()));
        return place(start)
                .fault(Words.quoted(found.strip())
                        + " cannot stand here; JSON has text in double quotes, numbers, true,"
                        + " false, lists in [ ] and objects in { }, with commas between and a colon behind each name");
    }

    /** Jackson looks at the first letters of a value together with the name before it: names that are fine are skipped. */
    private int startOfFault() {
        int at = afterSpace(Math.min(readTo, text.length()));
        boolean nameMayFollow = lastRead == JsonToken.START_OBJECT;
        if (at < text.length() && text.charAt(at) == ',') {
            at = afterSpace(at + 1);
            nameMayFollow = true;
        }
        Matcher name = NAME.matcher(text).region(at, text.length());
        return nameMayFollow && name.lookingAt() ? name.end() : at;
    }

    private int afterSpace(int from) {
        int at = from;
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        return at;
    }

    private Spot place(int offset) {
        int line = 1;
        int lineStart = 0;
        for (int i = 0; i < offset; i++) {
            boolean returned = text.charAt(i) == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n');
            if (text.charAt(i) == '\n' || returned) {
                line++;
                lineStart = i + 1;
            }
        }
        return new Spot(file, "", line, offset - lineStart + 1);
    }
}
