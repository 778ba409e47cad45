package org.tautlog.report.paper;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A page made ready for print: text that the fonts hold, drawings in fixed colours with their descriptions. */
final class PrintedPage {
    private static final Pattern NAMED_COLOUR = Pattern.compile("var\\(--[a-z-]+,(#[0-9a-f]{6})\\)");
    private static final List<String> COLOURED = List.of("style", "fill", "stroke");
    private static final Pattern LENGTH = Pattern.compile("\\d+(\\.\\d+)?");
    private static final double PIXELS_PER_MM = 5;
    private static final String IN_ROW = "in-row";
    private static final String BLOCK = "div";
    private static final String DESCRIPTION = "aria-label";

    private PrintedPage() {}

    static Document of(String page, Glyphs glyphs) {
        var document = parse(page);
        ready(document.getDocumentElement(), glyphs, false);
        return document;
    }

    private static Document parse(String page) {
        try {
            var factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setExpandEntityReferences(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
            var builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            return builder.parse(new InputSource(new StringReader(page)));
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new IllegalStateException("the page is not well-formed", e);
        }
    }

    private static void ready(Element element, Glyphs glyphs, boolean drawn) {
        boolean drawing = drawn || "svg".equals(element.getLocalName());
        if (drawing) {
            fixColours(element);
        }
        if (drawing && !drawn) {
            scale(element);
        }
        if (element.hasAttribute(DESCRIPTION) && !drawn) {
            element.setAttribute("alt", element.getAttribute(DESCRIPTION));
        }
        var children = new ArrayList<Node>();
        for (var child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            children.add(child);
        }
        if (hasClass(element, IN_ROW)) {
            loosen(element, children);
        }
        for (var child : children) {
            if (child instanceof Element inner) {
                ready(inner, glyphs, drawing);
            } else if (child instanceof Text text && !"style".equals(element.getLocalName())) {
                text.setData(glyphs.printable(text.getData()));
            }
        }
    }

    /** The library leaves the items of a list out of the tree of tags where they stand in a row: they become blocks. */
    private static void loosen(Element list, List<Node> items) {
        var document = list.getOwnerDocument();
        for (var item : items) {
            if (item instanceof Element element && "li".equals(element.getLocalName())) {
                document.renameNode(element, element.getNamespaceURI(), BLOCK);
            }
        }
        document.renameNode(list, list.getNamespaceURI(), BLOCK);
    }

    private static boolean hasClass(Element element, String name) {
        return List.of(element.getAttribute("class").split(" ", -1)).contains(name);
    }

    /** A drawing is made in pixels of its own page; on paper five of them are a millimetre. */
    private static void scale(Element drawing) {
        var style = new StringBuilder(drawing.getAttribute("style"));
        for (var side : List.of("width", "height")) {
            var length = drawing.getAttribute(side);
            if (LENGTH.matcher(length).matches()) {
                style.append(
                        String.format(Locale.ROOT, ";%s:%.2fmm", side, Double.parseDouble(length) / PIXELS_PER_MM));
                drawing.removeAttribute(side);
            }
        }
        drawing.setAttribute("style", style.toString());
    }

    private static void fixColours(Element element) {
        for (var name : COLOURED) {
            var value = element.getAttribute(name);
            if (value.contains("var(--")) {
                element.setAttribute(name, NAMED_COLOUR.matcher(value).replaceAll("$1"));
            }
        }
    }
}
