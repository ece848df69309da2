package org.proviso.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.server.ErrorEvent;
import com.vaadin.flow.server.ErrorHandler;
import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.VaadinServiceInitListener;
import jakarta.validation.ConstraintViolation;
import jakarta.validation.ConstraintViolationException;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import org.proviso.access.NotPermittedException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.dao.TransientDataAccessException;
import org.springframework.stereotype.Component;

/** What went wrong during an act, in a line on the page; what nobody foresaw goes to the log as well. */
@Component
class OfficeErrors implements VaadinServiceInitListener, ErrorHandler {

    private static final long serialVersionUID = 1L;
    private static final Logger LOG = LoggerFactory.getLogger(OfficeErrors.class);

    @Override
    public void serviceInit(ServiceInitEvent event) {
        event.getSource().addSessionInitListener(started -> started.getSession().setErrorHandler(this));
    }

    @Override
    public void error(ErrorEvent event) {
        String words = words(event.getThrowable());
        UI ui = UI.getCurrent();
        if (ui != null) {
            // Nobody waits for the page to have shown it.
            Future<Void> unused = ui.access(() -> Said.refused(words));
        }
    }

    private static String words(Throwable wrong) {
        if (wrong instanceof NotPermittedException || wrong instanceof NoElectionException) {
            return String.valueOf(wrong.getMessage());
        }
        if (wrong instanceof OptimisticLockingFailureException) {
            return "Nothing was recorded: somebody changed this since you opened it. Open it again to see it as it is.";
        }
        if (wrong instanceof TransientDataAccessException) {
            return "Nothing was recorded: somebody else held this at that moment. Try again.";
        }
        if (wrong instanceof ConstraintViolationException invalid) {
            return "Nothing was recorded: " + fields(invalid) + ".";
        }
        LOG.error("An act failed", wrong);
        return "Nothing was recorded: something went wrong here. Try again; if it happens again, the log says what.";
    }

    private static String fields(ConstraintViolationException invalid) {
        return invalid.getConstraintViolations().stream()
                .map(OfficeErrors::field)
                .sorted()
                .collect(Collectors.joining("; "));
    }

    private static String field(ConstraintViolation<?> violation) {
        String path = violation.getPropertyPath().toString();
        return path.substring(path.lastIndexOf('.') + 1) + " " + violation.getMessage();
    }
}
