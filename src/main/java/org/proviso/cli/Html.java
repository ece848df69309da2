package org.proviso.cli;

/** Text made safe for a page of HTML. */
final class Html {

    private Html() {}

    static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
