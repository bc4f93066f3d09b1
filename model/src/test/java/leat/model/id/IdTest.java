package leat.model.id;

import static leat.model.Refusals.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import leat.model.fault.InvalidValueException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IdTest {

    private static List<Id> oneOfEachKind(String name) throws ReflectiveOperationException {
        List<Id> ids = new ArrayList<>();
        List<Class<?>> open = new ArrayList<>(List.of(Id.class));
        while (!open.isEmpty()) {
            Class<?> type = open.remove(0);
            if (type.isRecord()) {
                ids.add((Id) type.getDeclaredConstructor(String.class).newInstance(name));
            } else {
                open.addAll(List.of(type.getPermittedSubclasses()));
            }
        }
        return ids.stream().distinct().toList();
    }

    /** Else two ids that are not equal would fall together in a sorted set. */
    @Tag("law")
    @Test
    void eachKindHasAWordOfItsOwn() throws ReflectiveOperationException {
        List<Id> ids = oneOfEachKind("back");
        assertTrue(ids.size() >= 14);
        assertEquals(ids.size(), ids.stream().map(Id::kind).distinct().count());
        assertEquals(ids.size(), new TreeSet<>(ids).size());
        for (Id a : ids) {
            assertEquals("back", a.toString());
            for (Id b : ids) {
                assertEquals(a.equals(b), a.compareTo(b) == 0);
            }
        }
    }

    @Tag("law")
    @Test
    void aHeadIsNoValve() {
        assertNotEquals(new HeadId("7"), new ValveId("7"));
        assertTrue(new HeadId("R2").compareTo(new HeadId("R10")) < 0);
    }

    @Tag("law")
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                " R1",
                "R1 ",
                "R\n1",
                "R\t1",
                "R\u00001",
                "R\u2028x",
                "R\u2029x",
                "R\ud800",
                "\udc00R",
                "R\u0085x"
            })
    void namesThatNobodyCouldReadBackAreRefused(String name) {
        assertThrows(InvalidValueException.class, () -> new HeadId(name));
    }

    @Tag("law")
    @Test
    void namesMayBeLongAndInAnyScript() {
        assertEquals("südliche Mauer 2", new BibId("südliche Mauer 2").name());
        assertEquals("庭 \ud83c\udf33", new SurfaceId("庭 \ud83c\udf33").name());
        assertEquals(80, new PipeId("x".repeat(80)).name().length());
        assertThrows(InvalidValueException.class, () -> new PipeId("x".repeat(81)));
    }

    @Tag("pinned")
    @Test
    void refusalsNameTheKind() {
        refused(
                "head: name is 'R?1'; it must be 1 to 80 printable characters without a space at either end",
                () -> new HeadId("R\n1"));
        refused("digging rule: name is missing; it must be given", () -> new DigZoneId(null));
    }
}
