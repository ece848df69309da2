package org.proviso.canvass.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.Arrays;
import java.util.List;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.canvass.BalanceResult;
import org.proviso.canvass.BalanceRule;
import org.proviso.canvass.CanvassFigures;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.ExplanationService;
import org.proviso.canvass.ReopenCanvassService;
import org.proviso.canvass.TotalDetailService;
import org.proviso.canvass.outcomes.EnvelopeOutcomes;
import org.proviso.canvass.outcomes.EnvelopeOutcomesService;
import org.proviso.ui.Caution;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.PageHead;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.NoElectionException;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** The canvass: totals in and out of balance, the figures, and closing the election. */
@Route(value = "canvass", layout = OfficeFrame.class)
@PageTitle("Canvass · Proviso")
@PermitAll
public final class CanvassView extends Composite<Div> {

    private final transient CanvassService canvass;
    private final transient EnvelopeOutcomesService outcomes;
    private final transient ExplanationService explanations;
    private final transient TotalDetailService details;
    private final transient AccessService access;
    private final transient ReopenCanvassService reopening;
    private final transient WorkingElection workplace;
    private ElectionLine election;

    CanvassView(
            CanvassService canvass,
            ReopenCanvassService reopening,
            EnvelopeOutcomesService outcomes,
            ExplanationService explanations,
            TotalDetailService details,
            AccessService access,
            WorkingElection workplace) {
        this.reopening = reopening;
        this.workplace = workplace;
        this.canvass = canvass;
        this.outcomes = outcomes;
        this.explanations = explanations;
        this.details = details;
        this.access = access;
        this.election = workplace.election().orElseThrow(NoElectionException::new);
        access.demand(Permission.READ_FIGURES);
        getContent().addClassNames("sheet", "canvass");
        show();
    }

    private void show() {
        List<CanvassFigures> accounts = canvass.accounts(election.id());
        List<BalanceResult> balances = canvass.balances(election.id(), accounts, Arrays.asList(BalanceRule.values()));
        EnvelopeOutcomes figures = outcomes.outcomes(election.id());
        PageHead head = new PageHead("Canvass", lead(balances));
        if (!election.closed() && access.isPermitted(Permission.CLOSE_ELECTION)) {
            head.beside(Links.link("Before closing", "canvass/closing"));
            head.beside(Links.link("Sheet of balances", "canvass/sheet"));
            head.beside(new ClosingButtons(canvass, election.id(), this::again).buttons());
        }
        ClosingsPart closings =
                new ClosingsPart(reopening, access.isPermitted(Permission.CLOSE_ELECTION), election, this::again);
        getContent()
                .add(
                        head,
                        closings,
                        new BalancesPart(
                                balances,
                                new FigureSheet(canvass, access, election, this::again),
                                new ExplanationSheet(explanations, access, election, this::again),
                                new TotalDetailPart.Reader(details, access, election.id())),
                        DownloadLinks.of("Totals", election.id(), this::totals),
                        new FlowPart(figures, election.id(), this::outcomesNow),
                        new PlacesPart(accounts, election.id(), this::accountsNow),
                        new ReasonsPart(figures, election.id(), this::outcomesNow),
                        new Caution());
    }

    private EnvelopeOutcomes outcomesNow() {
        access.demand(Permission.READ_FIGURES);
        return outcomes.outcomes(election.id());
    }

    private List<CanvassFigures> accountsNow() {
        access.demand(Permission.READ_FIGURES);
        return canvass.accounts(election.id());
    }

    private TotalsList totals() {
        return new TotalsList(canvass.balances(election.id(), accountsNow(), Arrays.asList(BalanceRule.values())));
    }

    private void again() {
        getContent().removeAll();
        election = workplace.election().orElseThrow(NoElectionException::new);
        show();
    }

    private String lead(List<BalanceResult> balances) {
        List<BalanceResult> sums = balances.stream()
                .filter(balanceResult -> balanceResult.identity() != BalanceRule.NOTHING_PENDING)
                .toList();
        long holds = sums.stream().filter(BalanceResult.Holds.class::isInstance).count();
        long differ =
                sums.stream().filter(BalanceResult.Differs.class::isInstance).count();
        long explained =
                sums.stream().filter(BalanceResult.Explained.class::isInstance).count();
        long open = sums.size() - holds - differ - explained;
        String signed = explained == 0 ? "" : explained + " explained; ";
        String state = election.closed() ? "The election is closed. " : "";
        return state + holds + " of " + sums.size() + " totals agree; " + signed + differ + " out of balance; " + open
                + " cannot be checked yet because a figure is missing.";
    }
}
