package org.proviso.release.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.NotPermittedException;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.adjudication.finding.BallotCatalog;
import org.proviso.election.ElectionService;
import org.proviso.release.Batch;
import org.proviso.release.ReleaseActResult;
import org.proviso.release.ReleaseService;
import org.proviso.release.RemakeService;
import org.proviso.release.RemakeSheet;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;
import org.springframework.dao.OptimisticLockingFailureException;

/** One batch: opened by two, remade by two, handed off by number. No envelope number stands on this page. */
@Route(value = "release/batch", layout = OfficeFrame.class)
@PageTitle("Batch · Proviso")
@PermitAll
public final class BatchView extends Composite<Div> implements HasUrlParameter<Integer> {

    private final transient ReleaseService releases;
    private final transient RemakeService remakes;
    private final transient AccessService access;
    private final transient BallotCatalog ballots;
    private final String election;
    private int number;

    BatchView(
            ReleaseService releases,
            RemakeService remakes,
            AccessService access,
            ElectionService elections,
            WorkingElection workplace) {
        this.releases = releases;
        this.remakes = remakes;
        this.access = access;
        this.election = workplace.electionId();
        if (!access.isPermitted(Permission.SET_GATES)) {
            access.demand(Permission.OPEN_ENVELOPES);
        }
        this.ballots = elections.ballots(election);
        getContent().addClassNames("sheet", "board", "release");
    }

    @Override
    public void setParameter(BeforeEvent event, Integer batchNo) {
        number = batchNo;
        try {
            show();
        } catch (IllegalArgumentException e) {
            throw new NotFoundException("There is no batch " + batchNo + " of this election.");
        }
    }

    private void show() {
        Batch batch = releases.batch(election, number);
        List<RemakeSheet> sheets = remakes.sheets(election, number);
        getContent().removeAll();
        String apart = batch.heldApart() ? " Its ballots are of court-extended hours and stay apart." : "";
        PageHead head = new PageHead(
                "Batch " + number,
                UsDates.count(batch.envelopes(), "envelope")
                        + ", opened together so that no ballot can be told from the others." + apart);
        getContent().add(head, opening(batch), remaking(batch, sheets), handOff(batch, sheets));
    }

    private Component opening(Batch batch) {
        Div part = part("Opening");
        if (batch.firstOpener() == null) {
            part.add(new Paragraph("Sealed. The first of two begins; the other says when it is open."));
            act(
                    part,
                    Permission.OPEN_ENVELOPES,
                    new ActButton("Begin to open")
                            .first()
                            .does(() -> take(
                                    () -> releases.beginOpening(election, number, batch.version()),
                                    "You began to open the batch.")));
        } else if (batch.openedAt() == null) {
            part.add(new Paragraph(name(batch.firstOpener()) + " began to open it. Another of the team says when it is"
                    + " open, and how many envelopes were empty."));
            CountField empty = new CountField("Empty envelopes");
            act(
                    part,
                    Permission.OPEN_ENVELOPES,
                    empty,
                    new ActButton("It is open")
                            .first()
                            .does(() -> empty.with(count -> take(
                                    () -> releases.recordOpening(election, number, batch.version(), count),
                                    "The batch is open."))));
        } else {
            part.add(new Paragraph("Opened by " + name(batch.firstOpener()) + " and " + name(batch.secondOpener())
                    + ": " + UsDates.count(batch.ballots(), "ballot") + ", " + batch.empty() + " empty."));
        }
        return part;
    }

    private Component remaking(Batch batch, List<RemakeSheet> sheets) {
        Div part = new Div(new H2("Remaking"));
        if (sheets.isEmpty()) {
            part.add(new Paragraph("Every ballot of this batch counts in full; nothing is remade."));
            return part;
        }
        part.add(new Paragraph(UsDates.count(sheets.size(), "sheet")
                + ", one for each pair of styles. Print them with the browser; no voter or envelope is on them."));
        sheets.forEach(sheet -> part.add(new RemakeSheetPart(sheet, ballots, who(sheet), acts(batch, sheet))));
        return part;
    }

    private String who(RemakeSheet sheet) {
        if (sheet.firstCopier() == null) {
            return "Nobody has begun to copy.";
        }
        return sheet.remadeAt() == null
                ? name(sheet.firstCopier()) + " copies. Another reads every mark back."
                : "Copied by " + name(sheet.firstCopier()) + ", read back by " + name(sheet.secondCopier()) + ".";
    }

    private List<Component> acts(Batch batch, RemakeSheet sheet) {
        if (batch.openedAt() == null || sheet.remadeAt() != null || !access.isPermitted(Permission.REMAKE_BALLOTS)) {
            return List.of();
        }
        boolean begun = sheet.firstCopier() != null;
        ActButton button = new ActButton(begun ? "Every mark is read back" : "Begin to copy")
                .does(() -> take(
                        () -> {
                            if (begun) {
                                remakes.recordRemake(election, number, sheet.number(), sheet.version());
                            } else {
                                remakes.beginRemake(election, number, sheet.number(), sheet.version());
                            }
                            return null;
                        },
                        begun
                                ? "Sheet " + sheet.number() + " is remade."
                                : "You began to copy sheet " + sheet.number() + "."));
        return List.of(button);
    }

    private Component handOff(Batch batch, List<RemakeSheet> sheets) {
        Div part = part("Handing off");
        boolean ready = sheets.stream().allMatch(sheet -> sheet.remadeAt() != null);
        if (batch.handedOffAt() != null) {
            part.add(new Paragraph(UsDates.count(batch.ballots(), "ballot") + " went to tabulation."));
        } else if (batch.openedAt() == null || !ready) {
            part.add(new Paragraph("Once it is open and every sheet is remade, the ballots are counted again and handed"
                    + " to tabulation."));
        } else {
            CountField counted = new CountField("Ballots counted");
            act(
                    part,
                    Permission.HAND_OFF,
                    counted,
                    new ActButton("Hand off")
                            .first()
                            .does(() -> counted.with(count -> take(
                                    () -> remakes.handOff(election, number, batch.version(), count),
                                    "Handed to tabulation."))));
        }
        return part;
    }

    private void act(Div part, Permission act, Component... parts) {
        if (access.isPermitted(act)) {
            Div acts = new Div(parts);
            acts.addClassName("acts");
            part.add(acts);
        }
    }

    private static Div part(String title) {
        Div part = new Div(new H2(title));
        part.addClassName("no-print");
        return part;
    }

    private void take(java.util.function.Supplier<@Nullable ReleaseActResult> act, String done) {
        String refused = "";
        try {
            refused = act.get() instanceof ReleaseActResult.Refused no
                    ? no.refusal().words()
                    : "";
        } catch (NotPermittedException | IllegalStateException e) {
            refused = Objects.requireNonNullElse(e.getMessage(), "It cannot be done now.");
        } catch (OptimisticLockingFailureException e) {
            refused = "Nothing was recorded: somebody changed this while you looked. The page shows it as it is now.";
        }
        show();
        if (refused.isEmpty()) {
            MessageLine.done(done);
        } else {
            MessageLine.refused(refused);
        }
    }

    private String name(@Nullable String userName) {
        return userName == null
                ? ""
                : access.user(userName).map(OfficeUser::fullName).orElse(userName);
    }
}
