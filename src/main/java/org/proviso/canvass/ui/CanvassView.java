package org.proviso.canvass.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.Arrays;
import java.util.List;
import org.proviso.access.AccessService;
import org.proviso.access.Act;
import org.proviso.canvass.Balance;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.Identity;
import org.proviso.canvass.Outcomes;
import org.proviso.canvass.OutcomesService;
import org.proviso.ui.Caution;
import org.proviso.ui.ElectionLine;
import org.proviso.ui.NoElectionException;
import org.proviso.ui.OfficeFrame;
import org.proviso.ui.PageHead;
import org.proviso.ui.Workplace;

/** The canvass: totals in and out of balance, the figures, and closing the election. */
@Route(value = "canvass", layout = OfficeFrame.class)
@PageTitle("Canvass · Proviso")
@PermitAll
public final class CanvassView extends Composite<Div> {

    private final transient CanvassService canvass;
    private final transient OutcomesService outcomes;
    private final transient AccessService access;
    private final ElectionLine election;

    CanvassView(CanvassService canvass, OutcomesService outcomes, AccessService access, Workplace workplace) {
        this.canvass = canvass;
        this.outcomes = outcomes;
        this.access = access;
        this.election = workplace.election().orElseThrow(NoElectionException::new);
        access.demand(Act.READ_FIGURES);
        getContent().addClassNames("sheet", "canvass");
        show();
    }

    private void show() {
        List<Balance> balances = canvass.balances(election.id(), Arrays.asList(Identity.values()));
        Outcomes figures = outcomes.of(election.id());
        PageHead head = new PageHead("Canvass", lead(balances));
        if (!election.closed() && access.may(Act.CLOSE_ELECTION)) {
            head.beside(new ClosingButtons(canvass, election.id(), this::again).buttons());
        }
        getContent()
                .add(
                        head,
                        new BalancesPart(balances, new NotingSheet(canvass, access, election, this::again)),
                        new FlowPart(figures),
                        new PlacesPart(canvass.accounts(election.id())),
                        new ReasonsPart(figures),
                        new Caution());
    }

    private void again() {
        getContent().removeAll();
        show();
    }

    private String lead(List<Balance> balances) {
        List<Balance> sums = balances.stream()
                .filter(one -> one.identity() != Identity.NOTHING_PENDING)
                .toList();
        long holds = sums.stream().filter(Balance.Holds.class::isInstance).count();
        long differ = sums.stream().filter(Balance.Differs.class::isInstance).count();
        long open = sums.size() - holds - differ;
        String state = election.closed() ? "The election is closed. " : "";
        return state + holds + " of " + sums.size() + " totals agree; " + differ + " out of balance; " + open
                + " cannot be checked yet because a figure is missing.";
    }
}
