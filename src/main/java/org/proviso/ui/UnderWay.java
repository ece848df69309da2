package org.proviso.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.DetachEvent;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.shared.Registration;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One quiet line under the top line about what the office does beside the page; it goes by itself. A screen reader says
 * the sentence once, when the user is idle; the figures beside it change and are not read aloud.
 */
public final class UnderWay extends Div {

    private static final int MILLIS = 1_000;

    private final transient List<WorkUnderWay> works;
    private final Span what = new Span();
    private final Span howFar = new Span();
    private transient @Nullable Registration polls;

    UnderWay(List<WorkUnderWay> works) {
        this.works = works;
        addClassName("under-way");
        getElement().setAttribute("role", "region").setAttribute("aria-label", "Under way");
        Span mark = new Span("\u00B7\u00B7\u00B7");
        mark.addClassName("dots");
        mark.getElement().setAttribute("aria-hidden", "true");
        what.getElement().setAttribute("role", "status");
        add(mark, what, howFar);
        setClassName("idle", true);
    }

    /** Looks whether something is under way; asked when a page opens, and by an act that begins something long. */
    public static void look() {
        UnderWay line = ComponentUtil.getData(UI.getCurrent(), UnderWay.class);
        if (line != null) {
            line.show();
        }
    }

    @Override
    protected void onAttach(AttachEvent event) {
        ComponentUtil.setData(event.getUI(), UnderWay.class, this);
    }

    @Override
    protected void onDetach(DetachEvent event) {
        rest();
    }

    void show() {
        Optional<WorkUnderWay.Words> words = works.stream()
                .map(WorkUnderWay::words)
                .flatMap(Optional::stream)
                .findFirst();
        what.setText(words.map(WorkUnderWay.Words::what).orElse(""));
        howFar.setText(words.map(WorkUnderWay.Words::howFar).orElse(""));
        setClassName("idle", words.isEmpty());
        UI ui = UI.getCurrent();
        if (words.isEmpty()) {
            rest();
        } else if (polls == null) {
            polls = Polling.begin(ui, MILLIS, this::show);
        }
    }

    private void rest() {
        Registration last = polls;
        polls = null;
        if (last != null) {
            last.remove();
        }
    }
}
