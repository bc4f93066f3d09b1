package leat.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import leat.model.catalog.PriceBook;
import leat.model.fault.LeatException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("law")
class PriceTableTest {

    private static final String HEAD = "key,unit,price,currency,source,date\n";

    @Test
    void columnsMayStandInAnyOrderAndRemarksArePassedOver() {
        PriceBook book = PriceTable.read(
                "p.csv",
                "# of May\ndate,source,currency,price,unit,key\n2026-05-01,shop,EUR,0.085,m,wire 2.5 mm2 blue\n");
        assertEquals("0.085", book.find("wire 2.5 mm2 blue").orElseThrow().digits());
        assertEquals("EUR", book.currency().orElseThrow().getCode());
        assertEquals(PriceBook.EMPTY, PriceTable.read("p.csv", HEAD));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "cap,each,-1,USD,shop,2026-05-01 | price of cap: price is '-1'; it must be a number from 0 up in digits with at most 6 decimals, such as 4.25",
                "cap,each,NaN,USD,shop,2026-05-01 | price of cap: price is 'NaN'; it must be a number from 0 up in digits with at most 6 decimals, such as 4.25",
                "cap,each,1e3,USD,shop,2026-05-01 | price of cap: price is '1e3'; it must be a number from 0 up in digits with at most 6 decimals, such as 4.25",
                "cap,each,\"1,50\",USD,shop,2026-05-01 | price of cap: price is '1,50'; it must be a number from 0 up in digits with at most 6 decimals, such as 4.25",
                "cap,dozen,1,USD,shop,2026-05-01 | price: unit is 'dozen'; it must be one of each, stick, coil, ft, m, ft3, yd3, m3",
                "cap,each,1,US$,shop,2026-05-01 | price of cap: currency is 'US$'; it must be a code of three letters of ISO 4217, such as USD",
                "cap,each,1,USD,shop,1 May 2026 | price of cap: date is '1 May 2026'; it must be a date as year-month-day, such as 2026-03-31",
                "cap,each,1,USD,shop,2026-02-30 | price of cap: date is '2026-02-30'; it must be a date as year-month-day, such as 2026-03-31",
                "cap,each,1,USD,shop | the line has 5 fields; it must have 6",
                "tee,each,1,USD,shop,2026-05-01 | 'tee' has a price on line 2 already; it must have one",
                "cap,each,1,EUR,shop,2026-05-01 | the price of 'cap' is in EUR; it must be in USD as on line 2"
            })
    void aLineThatMeansNothingIsRefusedWithItsPlace(String line, String told) {
        String text = HEAD + "tee,each,1.19,USD,shop,2026-05-01\n" + line + "\n";
        var refused = assertThrows(LeatException.class, () -> PriceTable.read("p.csv", text));
        assertEquals("p.csv:3: " + told, refused.getMessage());
    }

    @Test
    void otherColumnsAreNamed() {
        var refused = assertThrows(
                LeatException.class, () -> PriceTable.read("p.csv", "key,unit,cost,currency,source,date\n"));
        assertEquals(
                "p.csv:1: the columns are key, unit, cost, currency, source, date; they must be key, unit, price, currency,"
                        + " source, date. Missing: price. Not known: cost",
                refused.getMessage());
        assertThrows(LeatException.class, () -> PriceTable.read("p.csv", ""));
    }

    @Test
    void thePricesOfTernHillCanBeRead() throws Exception {
        String text = Files.readString(Path.of("../../examples/tern-hill/prices.csv"));
        assertEquals(
                "USD",
                PriceTable.read("prices.csv", text).currency().orElseThrow().getCode());
    }
}
