package leat.document;

import java.util.List;
import java.util.SortedMap;

/** A value of a file with the place it stands at. */
sealed interface Json {

    Spot spot();

    /** What a person calls the value, for messages. */
    String called();

    record Text(Spot spot, String value) implements Json {
        @Override
        public String called() {
            return "the text " + Words.quoted(value);
        }
    }

    /** @param digits as they stand in the file */
    record Figure(Spot spot, String digits) implements Json {
        @Override
        public String called() {
            return "the number " + digits;
        }
    }

    record Flag(Spot spot, boolean value) implements Json {
        @Override
        public String called() {
            return String.valueOf(value);
        }
    }

    record Nothing(Spot spot) implements Json {
        @Override
        public String called() {
            return "null";
        }
    }

    record Items(Spot spot, List<Json> values) implements Json {
        @Override
        public String called() {
            return "a list";
        }
    }

    record Fields(Spot spot, SortedMap<String, Field> byName) implements Json {
        @Override
        public String called() {
            return "an object";
        }
    }

    /** @param nameSpot where the name of the field stands */
    record Field(Spot nameSpot, Json value) {}
}
