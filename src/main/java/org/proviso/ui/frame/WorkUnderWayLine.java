package org.proviso.ui.frame;

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
public final class WorkUnderWayLine extends Div {

    private static final int MILLIS = 1_000;

    private final transient List<WorkUnderWay> works;
    private final Span what = new Span();
    private final Span howFar = new Span();
    private transient @Nullable Registration polls;

    WorkUnderWayLine(List<WorkUnderWay> works) {
        this.works = works;
        addClassName("under-way");
        Span mark = new Span("\u00B7\u00B7\u00B7");
        mark.addClassName("dots");
        mark.getElement().setAttribute("aria-hidden", "true");
        what.getElement().setAttribute("role", "status");
        add(mark, what, howFar);
        idle(true);
    }

    /** At rest it is no part of the page that a screen reader would name on the way to the page's own words. */
    private void idle(boolean idle) {
        setClassName("idle", idle);
        if (idle) {
            getElement().removeAttribute("role").removeAttribute("aria-label");
        } else {
            getElement().setAttribute("role", "region").setAttribute("aria-label", "In progress");
        }
    }

    /** Checks whether something is in progress: when a page opens and after an act that starts something long. */
    public static void look() {
        WorkUnderWayLine line = ComponentUtil.getData(UI.getCurrent(), WorkUnderWayLine.class);
        if (line != null) {
            line.show();
        }
    }

    @Override
    protected void onAttach(AttachEvent event) {
        ComponentUtil.setData(event.getUI(), WorkUnderWayLine.class, this);
    }

    @Override
    protected void onDetach(DetachEvent event) {
        rest();
    }

    void show() {
        Optional<WorkUnderWay.Message> words = works.stream()
                .map(WorkUnderWay::words)
                .flatMap(Optional::stream)
                .findFirst();
        what.setText(words.map(WorkUnderWay.Message::what).orElse(""));
        howFar.setText(words.map(WorkUnderWay.Message::howFar).orElse(""));
        idle(words.isEmpty());
        UI ui = UI.getCurrent();
        if (words.isEmpty()) {
            rest();
        } else if (polls == null) {
            polls = AutoRefresh.begin(ui, MILLIS, this::show);
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
