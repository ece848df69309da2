package org.proviso.canvass.ui;

import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextArea;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.access.NotPermittedException;
import org.proviso.canvass.AmendedOutcome;
import org.proviso.canvass.CanvassClosing;
import org.proviso.canvass.ReopenCanvassService;
import org.proviso.core.ElectionId;
import org.proviso.core.act.ActResult;
import org.proviso.ui.MessageLine;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ActDialog;
import org.proviso.ui.frame.ElectionLine;
import org.springframework.dao.OptimisticLockingFailureException;

/** When the election was closed, with which totals; and the two steps by which two people reopen its canvass. */
@Tag("section")
final class ClosingsPart extends HtmlContainer {

    private final ReopenCanvassService reopening;
    private final ElectionLine election;
    private final Runnable after;

    ClosingsPart(ReopenCanvassService reopening, boolean mayReopen, ElectionLine election, Runnable after) {
        this.reopening = reopening;
        this.election = election;
        this.after = after;
        List<CanvassClosing> closings = reopening.closings(election.id());
        if (closings.isEmpty()) {
            setVisible(false);
            return;
        }
        add(new H2("Closed"));
        closings.forEach(this::add);
        CanvassClosing last = closings.get(closings.size() - 1);
        if (mayReopen && last.stands()) {
            add(acts(last));
        }
    }

    private void add(CanvassClosing closing) {
        String first = closing.number() == 1 ? "Closed " : "Amended and closed again ";
        add(new Paragraph(first + moment(closing.closedAt()) + ": " + totals(closing) + "."));
        if (closing.ledgerHead() != null) {
            add(new Paragraph("Hash of the ledger's head: " + closing.ledgerHead()));
        }
        if (closing.number() > 1) {
            add(new Paragraph(amended(reopening.amended(election.id(), closing.number()))));
        }
        Instant reopenedAt = closing.reopenedAt();
        if (reopenedAt != null) {
            add(new Paragraph("Reopened " + moment(reopenedAt) + " by two people. Reason: " + closing.reopenBecause()));
        }
    }

    private String moment(Instant at) {
        return UsDates.moment(LocalDateTime.ofInstant(at, election.zone()));
    }

    private static String totals(CanvassClosing closing) {
        return number(closing.received()) + " received, " + number(closing.counted()) + " counted, "
                + number(closing.countedInPart()) + " counted in part, " + number(closing.rejected()) + " rejected";
    }

    private static String number(@Nullable Integer number) {
        return number == null ? "an unknown number" : String.format(Locale.US, "%,d", number);
    }

    private static String amended(List<AmendedOutcome> differences) {
        return differences.isEmpty()
                ? "No envelope is settled another way than before."
                : "Settled another way than before: "
                        + differences.stream().map(AmendedOutcome::words).collect(Collectors.joining("; ")) + ".";
    }

    private Div acts(CanvassClosing closing) {
        Div acts = new Div();
        acts.addClassName("acts");
        if (!closing.isAskedToReopen()) {
            acts.add(new ActButton("Ask to reopen canvass…").does(this::ask));
            return acts;
        }
        acts.add(
                new Paragraph("Someone has asked to reopen the canvass: " + closing.reopenBecause()
                        + " A different supervisor reopens it."),
                new ActButton("Reopen canvass…").does(this::confirm),
                new ActButton("Keep canvass closed").does(() -> done(reopening::keepClosed)));
        return acts;
    }

    private void ask() {
        TextArea because = new TextArea("Reason to reopen the canvass");
        because.setWidthFull();
        because.setMaxLength(4000);
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog("Ask to reopen canvass", "Ask to reopen canvass", () -> {
            ActResult<CanvassClosing> asked = reopening.askToReopen(election.id(), because.getValue());
            if (asked instanceof ActResult.Refused<CanvassClosing> refused) {
                because.setErrorMessage(refused.words());
                because.setInvalid(true);
                return false;
            }
            after.run();
            return true;
        });
        sheet[0].with(
                        "Whether a certified canvass may be reopened, and until when, is for local law and the court to say."
                                + " Check with counsel. A different supervisor has to reopen it.")
                .with(because)
                .open();
    }

    private void confirm() {
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog("Reopen the canvass?", "Reopen canvass", () -> {
            done(reopening::reopen);
            return true;
        });
        sheet[0].with(
                        "Cases can be changed again. The election has to be closed again, and the amended closing says what"
                                + " changed.")
                .open();
    }

    private void done(Function<ElectionId, ActResult<CanvassClosing>> act) {
        try {
            done(act.apply(election.id()));
        } catch (NotPermittedException | OptimisticLockingFailureException e) {
            MessageLine.refused("Not done. " + e.getMessage());
        }
    }

    private void done(ActResult<CanvassClosing> result) {
        if (result instanceof ActResult.Refused<CanvassClosing> refused) {
            MessageLine.refused(refused.words());
            return;
        }
        after.run();
    }
}
