package org.proviso.notices;

import java.util.ArrayList;
import java.util.List;
import org.proviso.core.Election;
import org.proviso.core.chain.Sha256;

/**
 * A letter in plain parts: who writes, to whom, about what, and its paragraphs. The text is in English; {@code language}
 * is the one the voter asked for (52 USC 10503 wants notices in covered languages). {@code formComes}: the letter says that
 * a form to register comes with it, so that whoever sends it encloses one. {@code office} is who
 * writes, whose phone number the text may name.
 */
public record Letter(
        Election.Office office,
        List<String> from,
        MailTo to,
        String subject,
        List<String> paragraphs,
        String language,
        boolean formComes) {

    static final String ENGLISH = "en";

    /** Whether the voter asked for a language in which the program has no text: enclose a translation. */
    public boolean needsTranslation() {
        return !language.equals(ENGLISH);
    }

    /** The whole letter, its parts one under the other. */
    public String text() {
        List<String> parts = new ArrayList<>(from);
        parts.add(to.name());
        parts.add(to.address());
        parts.add(subject);
        parts.addAll(paragraphs);
        return String.join("\n", parts);
    }

    /** SHA-256 of the text: which letter it was that went out. */
    String hash() {
        return Sha256.of(text());
    }
}
