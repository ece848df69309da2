package org.proviso.review.ui.list;

import java.util.Locale;

/** The language of an affirmation as it reads: {@code Spanish} for {@code es}. */
final class Languages {

    private Languages() {}

    /** A code that is no language's, or words that somebody keyed, stand as they are. */
    static String words(String language) {
        return language.matches("[a-z]{2,3}")
                ? Locale.forLanguageTag(language).getDisplayLanguage(Locale.US)
                : language;
    }
}
