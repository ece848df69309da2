package org.proviso.review.ui.list;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.component.html.Span;
import java.util.Optional;
import org.proviso.core.act.ActResult;
import org.proviso.review.queue.QueueFilter;
import org.proviso.review.queue.QueueFilterText;
import org.proviso.review.queue.SavedView;
import org.proviso.review.queue.SavedViewService;
import org.proviso.ui.Links;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;

/** The views that a person saved, as links; the one on the screen can be named anew or removed. */
public final class SavedViews extends Composite<Nav> {

    private final SavedViewService views;
    private final String address;

    /** {@code address}: of the page that shows a list. */
    public SavedViews(SavedViewService views, String address) {
        this.views = views;
        this.address = address;
        getContent().addClassName("views");
        getContent().getElement().setAttribute("aria-label", "Saved views");
    }

    /** Shows the views beside the list that is on the screen. */
    public void show(QueueFilter list) {
        String shown = QueueFilterText.write(list);
        getContent().removeAll();
        var all = views.yours(list.electionId());
        Optional<SavedView> here =
                all.stream().filter(view -> view.shown().equals(shown)).findFirst();
        if (!all.isEmpty()) {
            getContent().add(new Span("Saved views:"));
        }
        all.forEach(view -> getContent().add(link(view, here)));
        here.ifPresentOrElse(view -> getContent().add(acts(list, view)), () -> {
            if (!shown.isEmpty()) {
                getContent().add(new ActButton("Save this view").quiet().does(() -> save(list)));
            }
        });
        getContent().setVisible(getContent().getComponentCount() > 0);
    }

    private Anchor link(SavedView view, Optional<SavedView> here) {
        Anchor link = Links.link(view.viewName(), address + "?" + view.shown());
        if (here.filter(view::equals).isPresent()) {
            link.getElement().setAttribute("aria-current", "page");
        }
        return link;
    }

    private Div acts(QueueFilter list, SavedView view) {
        Div acts = new Div(
                new ActButton("Rename view").quiet().does(() -> rename(list, view)),
                new ActButton("Remove view").quiet().does(() -> remove(list, view)));
        acts.addClassName("acts");
        return acts;
    }

    private void save(QueueFilter list) {
        new ViewNameSheet("Save this view", "Save view", "", name -> views.save(list, name), () -> show(list)).open();
    }

    private void rename(QueueFilter list, SavedView view) {
        new ViewNameSheet(
                        "Rename view",
                        "Save name",
                        view.viewName(),
                        name -> views.rename(list.electionId(), view.viewNo(), name),
                        () -> show(list))
                .open();
    }

    private void remove(QueueFilter list, SavedView view) {
        if (views.remove(list.electionId(), view.viewNo()) instanceof ActResult.Refused<?> refused) {
            MessageLine.refused(refused.words());
        } else {
            MessageLine.done("View \u201C" + view.viewName() + "\u201D removed. The cases are as they were.");
        }
        show(list);
    }
}
