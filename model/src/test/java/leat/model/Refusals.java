package leat.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import leat.model.fault.LeatException;
import org.junit.jupiter.api.function.Executable;

/** Holds refusals against their whole message. */
public final class Refusals {

    private Refusals() {}

    public static void refused(String message, Executable deed) {
        assertEquals(message, assertThrows(LeatException.class, deed).getMessage());
    }
}
