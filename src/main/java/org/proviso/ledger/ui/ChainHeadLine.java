package org.proviso.ledger.ui;

import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import org.proviso.core.chain.ChainHead;
import org.proviso.ui.UsDates;

/** How long the chain is, and the hash at its head, as it is printed on minutes and reports. */
final class ChainHeadLine extends Paragraph {

    ChainHeadLine(ChainHead head) {
        Span hash = new Span(head.hash());
        hash.addClassNames("num", "hash");
        String entries = head.sequence() == 1 ? "1 entry" : UsDates.count(head.sequence(), "act");
        add(new Span(entries + ". Chain head: "), hash);
    }
}
