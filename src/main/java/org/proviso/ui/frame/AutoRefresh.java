package org.proviso.ui.frame;

import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.shared.Registration;

/** A page that asks again from time to time while somebody on it waits for something; at rest it asks nothing. */
public final class AutoRefresh {

    private static final String WAITING = "proviso.polling";

    private AutoRefresh() {}

    /** Does something at each asking, until what is given back is removed. */
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
