package org.proviso.review.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.spring.annotation.SpringComponent;
import com.vaadin.flow.spring.annotation.VaadinSessionScope;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.file.CaseFileService;
import org.proviso.review.queue.QueueService;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.WorkingElection;

/** One reviewer's session: takes the next case, and remembers skipped cases so that they do not come right back. */
@SpringComponent
@VaadinSessionScope
class ReviewShift {

    private static final int REMEMBERED = 50;

    private final QueueService queue;
    private final CaseFileService files;
    private final WorkingElection workplace;
    private final Deque<EnvelopeNumber> putAside = new ArrayDeque<>();

    ReviewShift(QueueService queue, CaseFileService files, WorkingElection workplace) {
        this.queue = queue;
        this.files = files;
        this.workplace = workplace;
    }

    /** The button that takes the next case, the same on every page of Review. */
    ActButton button() {
        return button("");
    }

    /** The same, from a page whose case stays assigned; a message says so. */
    ActButton button(String staysBehind) {
        return new ActButton("Take next case", "N").does(() -> {
            MessageLine.done(staysBehind);
            goOn();
        });
    }

    private void goOn() {
        String said = MessageLine.words();
        takeNext();
        MessageLine.after(said);
    }

    /** Takes the next case and opens it; if none is waiting, the queue says so. */
    void takeNext() {
        Optional<ActResult<EnvelopeCase>> taken = queue.takeNext(workplace.electionId(), List.copyOf(putAside));
        if (taken.isEmpty()) {
            MessageLine.done("No cases are waiting for a reviewer.");
            UI.getCurrent().navigate(QueueView.class);
        } else if (taken.get() instanceof ActResult.Refused<EnvelopeCase> refused) {
            MessageLine.refused(refused.words());
        } else {
            open(((ActResult.Accepted<EnvelopeCase>) taken.get()).now().key());
        }
    }

    /** A blind comparison comes before the case, because the case shows whose signature it is. */
    void open(EnvelopeKey key) {
        if (files.signatureComesFirst(key)) {
            UI.getCurrent().navigate(SignatureView.class, key.envelopeNo().value());
        } else {
            UI.getCurrent().navigate(CaseView.class, key.envelopeNo().value());
        }
    }

    /** After a case is finished or returned: do not offer the same one again. */
    void goOnFrom(EnvelopeNumber envelopeNo) {
        putAside.remove(envelopeNo);
        putAside.addLast(envelopeNo);
        if (putAside.size() > REMEMBERED) {
            putAside.removeFirst();
        }
        goOn();
    }
}
