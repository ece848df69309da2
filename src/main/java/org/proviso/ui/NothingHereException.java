package org.proviso.ui;

import com.vaadin.flow.router.NotFoundException;

/** An address of a page whose envelope, session, batch or letter there is not; the message is a sentence for the page. */
public final class NothingHereException extends NotFoundException {

    private static final long serialVersionUID = 1L;

    private final String words;

    public NothingHereException(String words) {
        super(words);
        this.words = words;
    }

    /** The sentence for the page. */
    public String words() {
        return words;
    }
}
