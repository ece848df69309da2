package org.proviso.review.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.spring.annotation.SpringComponent;
import com.vaadin.flow.spring.annotation.VaadinSessionScope;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.file.CaseFileService;
import org.proviso.review.queue.NextOfList;
import org.proviso.review.queue.QueueFilter;
import org.proviso.review.queue.QueuePosition;
import org.proviso.review.queue.QueueService;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.WorkingElection;

/**
 * One reviewer's session: takes the next case, of the queue or of the list that the case before was opened from, and
 * remembers skipped cases so that they do not come right back.
 */
@SpringComponent
@VaadinSessionScope
class ReviewShift {

    private static final int REMEMBERED = 50;

    /** A list, and where in it a case stood when it was opened. */
    record ListPlace(QueueFilter list, QueuePosition at) {}

    private final QueueService queue;
    private final CaseFileService files;
    private final WorkingElection workplace;
    private final Deque<EnvelopeNumber> putAside = new ArrayDeque<>();
    private final Map<EnvelopeNumber, ListPlace> places = new LinkedHashMap<>();

    ReviewShift(QueueService queue, CaseFileService files, WorkingElection workplace) {
        this.queue = queue;
        this.files = files;
        this.workplace = workplace;
    }

    /** The button that takes the next case, the same on every page of Review. */
    ActButton button() {
        return new ActButton("Take next case", "N").does(() -> goOn(null, List.of()));
    }

    /** The button that takes the case after this one, of its list if it came from one; a message says what stays behind. */
    ActButton button(EnvelopeNumber envelopeNo, String staysBehind) {
        ListPlace from = placeOf(envelopeNo).orElse(null);
        return new ActButton(from == null ? "Take next case" : "Take next of this list", "N").does(() -> {
            MessageLine.done(staysBehind);
            goOn(from, List.of(envelopeNo));
        });
    }

    /** Remembers that a case was opened from a list, and where it stood there when it was opened first. */
    void cameFrom(EnvelopeNumber envelopeNo, QueueFilter list) {
        if (listOf(envelopeNo).filter(list::equals).isEmpty()) {
            queue.position(list, envelopeNo).ifPresent(at -> remember(envelopeNo, new ListPlace(list, at)));
        }
    }

    /** The list that a case was opened from in this session. */
    Optional<QueueFilter> listOf(EnvelopeNumber envelopeNo) {
        return placeOf(envelopeNo).map(ListPlace::list);
    }

    private Optional<ListPlace> placeOf(EnvelopeNumber envelopeNo) {
        return Optional.ofNullable(places.get(envelopeNo))
                .filter(place -> place.list().electionId().equals(workplace.electionId()));
    }

    /** From here on the case is one of the queue again. */
    void leaveList(EnvelopeNumber envelopeNo) {
        places.remove(envelopeNo);
    }

    private void remember(EnvelopeNumber envelopeNo, ListPlace place) {
        places.remove(envelopeNo);
        places.put(envelopeNo, place);
        if (places.size() > REMEMBERED) {
            places.remove(places.keySet().iterator().next());
        }
    }

    private void goOn(@Nullable ListPlace from, List<EnvelopeNumber> leftOut) {
        String said = MessageLine.words();
        if (from == null) {
            takeNext();
        } else {
            takeNextOf(from, leftOut);
        }
        MessageLine.after(said);
    }

    /** Takes the next case and opens it; if none is waiting, the queue says so. */
    void takeNext() {
        Optional<ActResult<EnvelopeCase>> taken = queue.takeNext(workplace.electionId(), List.copyOf(putAside));
        if (taken.isEmpty()) {
            MessageLine.done("No cases are waiting for a reviewer.");
            UI.getCurrent().navigate(QueueView.class, QueryParameters.empty());
        } else {
            show(taken.get(), null);
        }
    }

    private void takeNextOf(ListPlace from, List<EnvelopeNumber> leftOut) {
        List<EnvelopeNumber> passedOver = new ArrayList<>(putAside);
        passedOver.addAll(leftOut);
        Optional<NextOfList> taken = queue.takeNextOf(from.list(), from.at(), passedOver);
        if (taken.isEmpty()) {
            MessageLine.done("That was the last case of this list.");
            QueueView.open(from.list());
        } else {
            show(
                    taken.get().taken(),
                    taken.get().at().map(at -> new ListPlace(from.list(), at)).orElse(null));
        }
    }

    private void show(ActResult<EnvelopeCase> taken, @Nullable ListPlace place) {
        if (taken instanceof ActResult.Refused<EnvelopeCase> refused) {
            MessageLine.refused(refused.words());
            return;
        }
        EnvelopeKey key = ((ActResult.Accepted<EnvelopeCase>) taken).now().key();
        if (place == null) {
            leaveList(key.envelopeNo());
        } else {
            remember(key.envelopeNo(), place);
        }
        open(key);
    }

    /** A blind comparison comes before the case, because the case shows whose signature it is. */
    void open(EnvelopeKey key) {
        if (files.signatureComesFirst(key)) {
            UI.getCurrent().navigate(SignatureView.class, key.envelopeNo().value());
        } else {
            UI.getCurrent().navigate(CaseView.class, key.envelopeNo().value());
        }
    }

    /** After a case is finished: the next one, and do not offer the same one again. */
    void goOnFrom(EnvelopeNumber envelopeNo) {
        putAside.remove(envelopeNo);
        putAside.addLast(envelopeNo);
        if (putAside.size() > REMEMBERED) {
            putAside.removeFirst();
        }
        goOn(placeOf(envelopeNo).orElse(null), List.of());
    }

    /** After a case was put away, nobody is handed another one: the list shows what is left. */
    void putAway(EnvelopeNumber envelopeNo) {
        QueueFilter list = listOf(envelopeNo).orElseGet(() -> QueueFilter.all(workplace.electionId()));
        String said = MessageLine.words();
        QueueView.open(list);
        MessageLine.after(said);
    }
}
