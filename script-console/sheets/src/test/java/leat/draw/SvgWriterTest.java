package leat.draw;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

@Tag("law")
class SvgWriterTest {

    private static final Style THIN = Style.line(LineWidth.W018, Palette.BLACK);

    private static Document parse(byte[] svg) throws Exception {
        var factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
    }

    private static Drawing sample() {
        return new Canvas()
                .beginLayer("heads", "Heads")
                .beginItem("R7: 32 ft", "A head.")
                .shape(PenPath.arc(50, 50, 10, 350, 200, true), THIN.withDash(Dash.DASH_DOT))
                .shape(
                        PenPath.circle(50, 50, 3),
                        Style.hatch(new Hatch(Hatch.Pattern.TUFTS, 4, 45, LineWidth.W013, Palette.GREEN)))
                .text(50, 50, "R7", Lettering.small().turned(-30).withHalo())
                .endItem()
                .endLayer()
                .drawing("Plan", "", 210, 297);
    }

    @Test
    void theFileIsWellFormedAndItsSizeIsThatOfTheSheet() throws Exception {
        Element root = parse(SvgWriter.file(sample())).getDocumentElement();
        assertEquals("http://www.w3.org/2000/svg", root.getNamespaceURI());
        assertEquals("210mm", root.getAttribute("width"));
        assertEquals("0 0 210 297", root.getAttribute("viewBox"));
    }

    @Test
    void theSameDrawingGivesTheSameBytesInAnyLocale() {
        byte[] once = SvgWriter.file(sample());
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertArrayEquals(once, SvgWriter.file(sample()));
            Locale.setDefault(Locale.GERMANY);
            assertArrayEquals(once, SvgWriter.file(sample()));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void textComesBackAsItWasWrittenWhateverItHolds() throws Exception {
        String nasty = "</text><script>alert('x')</script> & \"]]> é — 漢 \uD83C\uDF31";
        byte[] svg = SvgWriter.file(new Canvas()
                .beginItem(nasty, nasty)
                .text(1, 5, nasty, Lettering.small())
                .endItem()
                .drawing(nasty, nasty, 10, 10));
        Document document = parse(svg);
        assertEquals(nasty, document.getElementsByTagName("text").item(0).getTextContent());
        assertEquals(nasty, document.getElementsByTagName("title").item(1).getTextContent());
        assertEquals(0, document.getElementsByTagName("script").getLength());
    }

    @Test
    void charactersThatXmlForbidsAreReplaced() throws Exception {
        byte[] svg = SvgWriter.file(new Canvas()
                .text(1, 5, "a\u0000b\uD800c\uFFFFd", Lettering.small())
                .drawing("t", "", 10, 10));
        assertEquals(
                "a\uFFFDb\uFFFDc\uFFFDd",
                parse(svg).getElementsByTagName("text").item(0).getTextContent());
    }

    @Test
    void tenMetresAtOneToAHundredAreAHundredMillimetres() throws Exception {
        View view = new View(Scale.METRIC.get(1), 20, 150);
        byte[] svg = SvgWriter.file(new Canvas()
                .shape(PenPath.line(view.x(0), view.y(0), view.x(10), view.y(0)), THIN)
                .drawing("t", "", 210, 297));
        Element path = (Element) parse(svg).getElementsByTagName("path").item(0);
        assertEquals("M20 150L120 150", path.getAttribute("d"));
    }

    /** Source: an inch is 25.4 mm by definition. */
    @Test
    void tenFeetAtOneInchToTenFeetAreOneInch() {
        Scale scale = Scale.US.stream()
                .filter(s -> s.text().equals("1\" = 10'"))
                .findFirst()
                .orElseThrow();
        assertEquals(25.4, scale.mm(3.048), 1e-12);
    }

    @Test
    void idsOfTwoDrawingsInOnePageDoNotClash() {
        String first = SvgWriter.element(sample(), "a-");
        assertTrue(first.contains("id=\"a-layer-heads\""));
        assertTrue(SvgWriter.element(sample(), "b-").contains("id=\"b-layer-heads\""));
    }

    /** Browsers print a repeated tile as a picture of the whole sheet: tens of megabytes, and not sharp. */
    @Test
    void aHatchIsStrokesAndNotARepeatedTile() {
        String svg = SvgWriter.element(sample(), "");
        assertFalse(svg.contains("<pattern"));
        assertFalse(svg.contains("url("));
    }

    @Test
    void aHiddenLayerIsWrittenButDoesNotShow() {
        Drawing drawing = new Canvas().beginLayer("x", "X", false).endLayer().drawing("t", "", 9, 9);
        assertTrue(SvgWriter.element(drawing, "").contains("display=\"none\""));
        assertFalse(SvgWriter.element(sample(), "").contains("display=\"none\""));
    }

    @Test
    void whatIsOpenedIsClosed() {
        Canvas canvas = new Canvas().beginLayer("x", "X");
        assertThrows(IllegalStateException.class, () -> canvas.drawing("t", "", 1, 1));
        assertThrows(IllegalStateException.class, () -> canvas.beginLayer("y", "Y"));
        canvas.endLayer();
        assertThrows(IllegalStateException.class, () -> canvas.beginLayer("x", "again"));
    }

    @Test
    void numbersArePrintedWithoutMinusZeroOrExponent() {
        assertEquals("0", Numbers.mm(-0.0));
        assertEquals("0", Numbers.mm(-0.0004));
        assertEquals("-0.001", Numbers.mm(-0.0006));
        assertEquals("12.05", Numbers.mm(12.05));
        assertEquals("123456789", Numbers.mm(123456789));
        assertThrows(IllegalArgumentException.class, () -> Numbers.mm(Double.NaN));
    }
}
