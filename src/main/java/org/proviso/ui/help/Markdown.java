package org.proviso.ui.help;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlRenderer;

/** Markdown as HTML. Pictures are left out: they are for the reader of the files. HTML within a text is shown as text. */
final class Markdown {

    private static final List<Extension> EXTENSIONS = List.of(TablesExtension.create());
    private static final Parser PARSER = Parser.builder().extensions(EXTENSIONS).build();
    private static final HtmlRenderer RENDERER = HtmlRenderer.builder()
            .extensions(EXTENSIONS)
            .nodeRendererFactory(context -> new NoPicture())
            .attributeProviderFactory(context -> Markdown::named)
            .escapeHtml(true)
            .sanitizeUrls(true)
            .build();

    private Markdown() {}

    static String html(String text) {
        return RENDERER.render(PARSER.parse(text));
    }

    /** A table is called by the heading over it, for who hears it. */
    private static void named(Node node, String tag, Map<String, String> attributes) {
        if (!(node instanceof TableBlock)) {
            return;
        }
        Node over = node.getPrevious();
        while (over != null && !(over instanceof Heading)) {
            over = over.getPrevious();
        }
        if (over != null) {
            attributes.put("aria-label", words(over));
        }
    }

    private static String words(Node node) {
        StringBuilder words = new StringBuilder();
        for (Node part = node.getFirstChild(); part != null; part = part.getNext()) {
            words.append(part instanceof Text text ? text.getLiteral() : words(part));
        }
        return words.toString();
    }

    private static final class NoPicture implements NodeRenderer {

        @Override
        public Set<Class<? extends Node>> getNodeTypes() {
            return Set.of(Image.class);
        }

        @Override
        public void render(Node picture) {
            // The text goes on without it.
        }
    }
}
