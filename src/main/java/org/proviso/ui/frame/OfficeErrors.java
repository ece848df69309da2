package org.proviso.ui.frame;

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
import org.proviso.ui.MessageLine;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.dao.TransientDataAccessException;
import org.springframework.stereotype.Component;

/** Shows in a line on the page what went wrong during an act. Unexpected errors also go to the log. */
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
            Future<Void> unused = ui.access(() -> MessageLine.refused(words));
        }
    }

    private static String words(Throwable wrong) {
        if (wrong instanceof NotPermittedException || wrong instanceof NoElectionException) {
            return String.valueOf(wrong.getMessage());
        }
        if (wrong instanceof OptimisticLockingFailureException) {
            return "Not saved. Someone else changed this after you opened it. Reopen it to see the current version.";
        }
        if (wrong instanceof TransientDataAccessException) {
            return "Not saved. Someone else was saving this at the same moment. Try again.";
        }
        if (wrong instanceof ConstraintViolationException invalid) {
            return "Not saved: " + fields(invalid) + ".";
        }
        LOG.error("An act failed", wrong);
        return "Not saved. Something went wrong. Try again. If it happens again, ask your administrator to check the log.";
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
