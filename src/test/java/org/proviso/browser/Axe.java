package org.proviso.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Asks the axe script what on a page keeps somebody out: every rule for WCAG 2.0 to 2.2, levels A and AA, and axe's best
 * practices, inside components too. The vendor's line for a lost connection is left out: it lies beside the page's
 * landmarks, and the program cannot move it. Of a long table the first dozen rows are looked at: the others are made
 * alike, and two hundred of them take a minute.
 */
public final class Axe {

    private static final String ASK = """
            const done = arguments[arguments.length - 1];
            axe.run({include: [document], exclude: ['vaadin-connection-indicator', 'tbody > tr:nth-child(n + 13)']}, {
              resultTypes: ['violations'],
              runOnly: {type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa', 'best-practice']}
            }).then(result => done(result.violations.flatMap(rule => rule.nodes.map(node =>
              rule.help + ' (' + rule.id + ', ' + rule.impact + ') at ' + node.target.flat().join(' > ') + ': '
                + node.failureSummary.replace(/\\s+/g, ' ')))),
              error => done(['axe could not look: ' + error]));""";

    private Axe() {}

    /** A sentence for each finding on the page as it is now; empty where there is none. */
    @SuppressWarnings("unchecked")
    public static List<String> findings(Browser browser) {
        browser.script(script());
        return (List<String>) browser.driver().executeAsyncScript(ASK);
    }

    private static String script() {
        try (InputStream script = Axe.class.getResourceAsStream("/axe.min.js")) {
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
