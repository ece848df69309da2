package org.proviso.setup;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.election.ElectionLoadService;
import org.proviso.review.news.NewerFileService;
import org.proviso.roll.ListReadService;
import org.proviso.ui.Links;
import org.proviso.ui.PageHead;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** The Setup page: files in use and newer ones, with links to rules, orders and accounts. */
@Route(value = "set-up", layout = OfficeFrame.class)
@PageTitle("Setup · Proviso")
@PermitAll
public final class SetUpView extends Composite<Div> {

    private final transient ListReadService lists;
    private final transient NewerFileService newer;
    private final transient WorkingElection workplace;
    private final Div held = new Div();

    SetUpView(
            ListReadService lists,
            NewerFileService newer,
            ElectionLoadService elections,
            AccessService access,
            WorkingElection workplace) {
        this.lists = lists;
        this.newer = newer;
        this.workplace = workplace;
        boolean files = access.isPermitted(Permission.LOAD_FILES);
        boolean accounts = access.isPermitted(Permission.MANAGE_USERS);
        if (!files && !accounts) {
            access.demand(Permission.LOAD_FILES);
        }
        getContent().addClassNames("sheet", "intake", "transmittals");
        getContent().add(head(files, accounts));
        if (files) {
            workplace.election().ifPresent(this::files);
            getContent().add(new LoadPart(elections, access, workplace));
        } else {
            getContent().add(new Paragraph("The supervisor manages files, rules and orders. You manage accounts."));
        }
    }

    private static PageHead head(boolean files, boolean accounts) {
        PageHead head = new PageHead(
                "Setup",
                files && accounts
                        ? "Election files, rules and accounts."
                        : files ? "Election files and rules." : "Accounts.");
        head.beside(Links.link("Rules in force", "set-up/rules", "R"), Links.link("Calendar", "calendar", "D"));
        if (files) {
            head.beside(
                    Links.link("County rulings", "set-up/rulings", "U"),
                    Links.link("What if", "set-up/what-if", "W"),
                    Links.link("Change rule pack", "set-up/rules/change", "P"),
                    Links.link("Court orders", "set-up/orders", "O"),
                    Links.link("Load envelopes", "set-up/envelopes", "E"),
                    Links.link("Match columns", "set-up/columns", "M"),
                    Links.link("Clock", "set-up/clock", "C"));
        }
        if (accounts) {
            head.beside(Links.link("Accounts and roles", "set-up/users", "A"));
        }
        return head;
    }

    private void files(ElectionLine election) {
        NewerListPart part = new NewerListPart(lists, newer, election, this::show);
        part.addClassName("side");
        Div bench = new Div(held, part);
        bench.addClassName("bench");
        getContent().add(bench);
        show();
    }

    private void show() {
        ElectionLine election = workplace.election().orElseThrow();
        held.removeAll();
        held.add(new ListsPart(lists, newer, election, this::show));
        held.add(new UnconfirmedListsPart(lists, newer, election, this::show));
    }
}
