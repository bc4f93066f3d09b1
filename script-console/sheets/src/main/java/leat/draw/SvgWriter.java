package leat.draw;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.jspecify.annotations.Nullable;

/**
 * Writes a drawing as SVG 1.1 (W3C), one user unit a millimetre, at its true size. The same drawing gives the same
 * bytes. Every item carries title and description, so that pointing at it tells what it is and a reader can read it
 * out; the roles are those of WAI-ARIA Graphics.
 */
public final class SvgWriter {

    private static final String SVG = "http://www.w3.org/2000/svg";

    private final XMLStreamWriter xml;
    private final String prefix;

    private SvgWriter(XMLStreamWriter xml, String prefix) {
        this.xml = xml;
        this.prefix = prefix;
    }

    /** A file of its own, with its declaration, in UTF-8. */
    public static byte[] file(Drawing drawing) {
        return ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + element(drawing, "") + "\n")
                .getBytes(StandardCharsets.UTF_8);
    }

    /**
     * The element alone, to stand inside a page.
     *
     * @param prefix put before every id, so that two drawings in one page do not clash
     */
    public static String element(Drawing drawing, String prefix) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            // The JDK's own, whatever else is on the class path: others order and escape differently.
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(bytes, "UTF-8");
            new SvgWriter(xml, prefix).write(drawing);
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }

    private void write(Drawing drawing) throws XMLStreamException {
        String width = Numbers.mm(drawing.widthMm());
        String height = Numbers.mm(drawing.heightMm());
        xml.writeStartElement("svg");
        xml.writeDefaultNamespace(SVG);
        attribute("width", width + "mm");
        attribute("height", height + "mm");
        attribute("viewBox", "0 0 " + width + " " + height);
        attribute("role", "graphics-document");
        attribute("aria-labelledby", prefix + "title");
        attribute("font-family", Typeface.FAMILIES);
        attribute("stroke-linecap", "butt");
        attribute("stroke-linejoin", "round");
        attribute("fill-rule", "evenodd");
        element("title", drawing.title(), "title");
        if (!drawing.description().isEmpty()) {
            element("desc", drawing.description(), null);
        }
        for (Mark mark : drawing.marks()) {
            write(mark);
        }
        line();
        xml.writeEndElement();
    }

    private void write(Mark mark) throws XMLStreamException {
        if (mark instanceof Mark.LayerBegin layer) {
            line();
            xml.writeStartElement("g");
            attribute("id", prefix + "layer-" + layer.id());
            attribute("class", "layer");
            attribute("role", "graphics-object");
            attribute("aria-label", layer.name());
            if (!layer.shown()) {
                attribute("display", "none");
            }
        } else if (mark instanceof Mark.ItemBegin item) {
            line();
            xml.writeStartElement("g");
            attribute("class", "item");
            attribute("role", "graphics-symbol");
            element("title", item.title(), null);
            if (!item.description().isEmpty()) {
                element("desc", item.description(), null);
            }
        } else if (mark instanceof Mark.Shape shape) {
            write(shape);
        } else if (mark instanceof Mark.Text text) {
            write(text);
        } else {
            xml.writeEndElement();
        }
    }

    private void write(Mark.Shape shape) throws XMLStreamException {
        Style style = shape.style();
        Hatch hatch = style.hatch();
        if (hatch == null) {
            path(data(shape.path()), style, style.fill(), style.line());
        } else {
            if (style.fill() != null) {
                path(data(shape.path()), style, style.fill(), null);
            }
            hatch(shape.path(), hatch);
            if (style.line() != null) {
                path(data(shape.path()), style, null, style.line());
            }
        }
    }

    private void hatch(PenPath outline, Hatch hatch) throws XMLStreamException {
        PenPath.Builder strokes = HatchLines.within(outline, hatch);
        if (strokes.isEmpty()) {
            return;
        }
        line();
        xml.writeEmptyElement("path");
        attribute("d", data(strokes.build()));
        attribute("fill", "none");
        attribute("stroke", hatch.colour().hex());
        attribute("stroke-width", Numbers.mm(HatchLines.strokeMm(hatch)));
        if (hatch.pattern() == Hatch.Pattern.DOTS) {
            attribute("stroke-linecap", "round");
            attribute("stroke-dasharray", "0 " + Numbers.mm(hatch.spacingMm()));
        }
    }

    private void path(String data, Style style, @Nullable Colour fill, @Nullable Colour stroke)
            throws XMLStreamException {
        line();
        xml.writeEmptyElement("path");
        attribute("d", data);
        attribute("fill", fill == null ? "none" : fill.hex());
        if (style.fillOpacity() < 1 && fill != null) {
            attribute("fill-opacity", Numbers.decimal(style.fillOpacity(), 2));
        }
        if (stroke != null) {
            attribute("stroke", stroke.hex());
            attribute("stroke-width", Numbers.mm(style.width().mm()));
            if (style.dash() != Dash.SOLID) {
                attribute("stroke-dasharray", dashes(style.dash()));
            }
        }
    }

    private static String dashes(Dash dash) {
        StringBuilder text = new StringBuilder();
        for (double lengthMm : dash.lengthsMm()) {
            text.append(text.isEmpty() ? "" : " ").append(Numbers.mm(lengthMm));
        }
        return text.toString();
    }

    private void write(Mark.Text text) throws XMLStreamException {
        Lettering lettering = text.lettering();
        line();
        xml.writeStartElement("text");
        String x = Numbers.mm(text.x());
        String y = Numbers.mm(text.y());
        attribute("x", x);
        attribute("y", y);
        attribute("font-size", Numbers.mm(lettering.fontSizeMm()));
        attribute("fill", lettering.colour().hex());
        if (lettering.bold()) {
            attribute("font-weight", "bold");
        }
        if (lettering.anchor() != Lettering.Anchor.START) {
            attribute("text-anchor", lettering.anchor().svg());
        }
        if (lettering.turnDegrees() != 0) {
            attribute("transform", "rotate(" + Numbers.decimal(lettering.turnDegrees(), 2) + " " + x + " " + y + ")");
        }
        if (lettering.halo()) {
            attribute("stroke", "#ffffff");
            attribute("stroke-width", "0.8");
            attribute("paint-order", "stroke");
        }
        xml.writeCharacters(clean(text.text()));
        xml.writeEndElement();
    }

    private static String data(PenPath path) {
        StringBuilder data = new StringBuilder();
        path.trace(new PenPath.Pen() {
            @Override
            public void moveTo(double x, double y) {
                data.append('M').append(Numbers.mm(x)).append(' ').append(Numbers.mm(y));
            }

            @Override
            public void lineTo(double x, double y) {
                data.append('L').append(Numbers.mm(x)).append(' ').append(Numbers.mm(y));
            }

            @Override
            public void arcTo(double radius, boolean large, boolean clockwise, double x, double y) {
                String size = Numbers.mm(radius);
                data.append('A').append(size).append(' ').append(size).append(" 0 ");
                data.append(large ? '1' : '0')
                        .append(' ')
                        .append(clockwise ? '1' : '0')
                        .append(' ');
                data.append(Numbers.mm(x)).append(' ').append(Numbers.mm(y));
            }

            @Override
            public void close() {
                data.append('Z');
            }
        });
        return data.toString();
    }

    private void element(String name, String text, @Nullable String id) throws XMLStreamException {
        line();
        xml.writeStartElement(name);
        if (id != null) {
            attribute("id", prefix + id);
        }
        xml.writeCharacters(clean(text));
        xml.writeEndElement();
    }

    private void attribute(String name, String value) throws XMLStreamException {
        xml.writeAttribute(name, clean(value));
    }

    private void line() throws XMLStreamException {
        xml.writeCharacters("\n");
    }

    /** What XML 1.0 does not allow at all (section 2.2) becomes the replacement character. */
    private static String clean(String text) {
        StringBuilder clean = new StringBuilder(text.length());
        text.codePoints().forEach(c -> clean.appendCodePoint(isXml(c) ? c : 0xfffd));
        return clean.toString();
    }

    private static boolean isXml(int c) {
        return c == 0x9
                || c == 0xa
                || c == 0xd
                || c >= 0x20 && c <= 0xd7ff
                || c >= 0xe000 && c <= 0xfffd
                || c >= 0x10000;
    }
}
