package org.proviso.ui.frame;

import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.shared.Registration;

/** A page that polls while someone on it is waiting for something, and does not poll otherwise. */
public final class AutoRefresh {

    private static final String WAITING = "proviso.polling";

    private AutoRefresh() {}

    /** Runs at each poll until the returned registration is removed. */
    public static Registration begin(UI ui, int millis, Runnable look) {
        Registration listener = ui.addPollListener(event -> look.run());
        count(ui, 1);
        ui.setPollInterval(millis);
        return Registration.once(() -> {
            listener.remove();
            if (count(ui, -1) == 0) {
                ui.setPollInterval(-1);
            }
        });
    }

    private static int count(UI ui, int more) {
        Integer before = (Integer) ComponentUtil.getData(ui, WAITING);
        int now = (before == null ? 0 : before) + more;
        ComponentUtil.setData(ui, WAITING, now);
        return now;
    }
}
