package org.proviso.canvass.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.NotPermittedException;
import org.proviso.access.Permission;
import org.proviso.canvass.BalanceResult;
import org.proviso.canvass.ExplainBalance;
import org.proviso.canvass.ExplanationService;
import org.proviso.core.act.ActResult;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ActDialog;
import org.proviso.ui.frame.ElectionLine;
import org.springframework.dao.OptimisticLockingFailureException;

/** Why a total cannot agree: one supervisor writes it, another signs it, and it stands below the total from then on. */
final class ExplanationSheet {

    private final ExplanationService service;
    private final ElectionLine election;
    private final List<ExplanationService.Signed> standing;
    private final Runnable after;
    private final boolean mayAct;

    ExplanationSheet(ExplanationService service, AccessService access, ElectionLine election, Runnable after) {
        this.service = service;
        this.election = election;
        this.standing = service.standing(election.id());
        this.after = after;
        this.mayAct = access.isPermitted(Permission.CLOSE_ELECTION) && !election.closed();
    }

    /** The button next to a total that does not agree and has no explanation yet. */
    Optional<Component> button(BalanceResult balance) {
        if (!mayAct || !balance.identity().mayBeExplained() || waiting(balance).isPresent()) {
            return Optional.empty();
        }
        ActButton button = new ActButton("Explain difference…").quiet().does(() -> ask(balance));
        button.getElement().setAttribute("aria-label", "Explain difference: " + balance.words());
        return Optional.of(button);
    }

    /** What was written about a total: who signed it, or that it waits for a second signature. */
    Optional<Component> text(BalanceResult balance) {
        if (balance instanceof BalanceResult.Explained explained) {
            Div all = new Div();
            standing.stream()
                    .filter(line -> explained.explanations().contains(line.explanation()))
                    .forEach(line -> all.add(text(line, explained.explanations().size() > 1 || !isOf(line, balance))));
            return Optional.of(all);
        }
        return waiting(balance).map(line -> text(line, false));
    }

    private static boolean isOf(ExplanationService.Signed line, BalanceResult balance) {
        return line.explanation().where().equals(balance.where());
    }

    private Optional<ExplanationService.Signed> waiting(BalanceResult balance) {
        return standing.stream()
                .filter(line -> line.explanation().isAbout(balance))
                .findFirst();
    }

    private Component text(ExplanationService.Signed line, boolean elsewhere) {
        String place = elsewhere ? line.explanation().where().words() + ": " : "";
        Paragraph text = new Paragraph(new Span(place + line.explanation().because() + " " + signatures(line) + " "));
        text.addClassName("small");
        if (mayAct && !elsewhere) {
            if (!line.explanation().isSigned() && !line.byYou()) {
                text.add(new ActButton("Sign explanation").quiet().does(() -> sign(line)), new Span(" "));
            }
            text.add(new ActButton("Take back explanation").quiet().does(() -> takeBack(line)));
        }
        return text;
    }

    private static String signatures(ExplanationService.Signed line) {
        String signer = line.signer();
        return signer == null
                ? "Written by " + line.writer() + ". Another supervisor has to sign it."
                : "Signed by " + line.writer() + " and " + signer + ".";
    }

    private void ask(BalanceResult balance) {
        TextArea because = new TextArea("What happened, and how the office knows");
        because.setWidthFull();
        because.setMaxLength(4000);
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog("Explain difference", "Write explanation", () -> {
            ActResult<Integer> written = service.explain(new ExplainBalance(
                    election.id(), balance.where(), balance.identity(), difference(balance), because.getValue()));
            if (written instanceof ActResult.Refused<Integer> refused) {
                return sheet[0].refuse(refused.words());
            }
            after.run();
            MessageLine.done("Written. Another supervisor has to sign it.");
            return true;
        });
        sheet[0].with(balance.words())
                .with(
                        "First look for the mistake: the count, the return, the figure. An explanation is for what cannot be"
                                + " put right. Another supervisor signs it, and it is printed with the canvass. Do not write names"
                                + " of voters.")
                .with(because)
                .open();
    }

    private static @Nullable Integer difference(BalanceResult balance) {
        return balance instanceof BalanceResult.Differs differs ? differs.by() : null;
    }

    private void sign(ExplanationService.Signed line) {
        done(
                () -> service.sign(
                        election.id(),
                        line.explanation().number(),
                        line.explanation().version()),
                "Signed. The total counts as explained.");
    }

    private void takeBack(ExplanationService.Signed line) {
        done(
                () -> service.takeBack(
                        election.id(),
                        line.explanation().number(),
                        line.explanation().version()),
                "Explanation taken back.");
    }

    private void done(Supplier<ActResult<?>> act, String words) {
        try {
            ActResult<?> result = act.get();
            after.run();
            if (result instanceof ActResult.Refused<?> refused) {
                MessageLine.refused(refused.words());
            } else {
                MessageLine.done(words);
            }
        } catch (NotPermittedException | OptimisticLockingFailureException e) {
            after.run();
            MessageLine.refused("Not done. " + e.getMessage());
        }
    }
}
