package org.proviso.review.ui.list;

import com.vaadin.flow.component.textfield.TextField;
import java.util.List;
import java.util.function.Function;
import org.proviso.core.act.ActResult;
import org.proviso.review.queue.SavedView;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActDialog;

/** Asks for the name of a view, when it is saved and when it is named anew. */
final class ViewNameSheet {

    private final ActDialog sheet;
    private final TextField name = new TextField("Name of the view");

    ViewNameSheet(
            String title,
            String act,
            String before,
            Function<String, ActResult<List<SavedView>>> naming,
            Runnable then) {
        sheet = new ActDialog(title, act, () -> named(naming, then));
        name.setMaxLength(60);
        name.setWidthFull();
        name.setValue(before);
        sheet.with(name);
    }

    void open() {
        sheet.open();
    }

    private boolean named(Function<String, ActResult<List<SavedView>>> naming, Runnable then) {
        ActResult<List<SavedView>> named = naming.apply(name.getValue());
        if (named instanceof ActResult.Refused<List<SavedView>> refused) {
            return sheet.refuse(refused.words());
        }
        then.run();
        MessageLine.done("View \u201C" + name.getValue().strip() + "\u201D saved.");
        return true;
    }
}
