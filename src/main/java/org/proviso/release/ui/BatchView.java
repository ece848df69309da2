package org.proviso.release.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.NotPermittedException;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.adjudication.finding.BallotCatalog;
import org.proviso.release.Batch;
import org.proviso.release.BatchChangeService;
import org.proviso.release.ReleaseService;
import org.proviso.release.RemakeService;
import org.proviso.release.RemakeSheet;
import org.proviso.ui.MessageLine;
import org.proviso.ui.NothingHereException;
import org.proviso.ui.PageHead;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;
import org.springframework.dao.OptimisticLockingFailureException;

/**
 * One batch: opened by two people, remade by two, handed off by count. Only an envelope that must stay closed is named on
 * this page, and only until the batch is open.
 */
@Route(value = "release/batch", layout = OfficeFrame.class)
@PermitAll
public final class BatchView extends Composite<Div> implements HasUrlParameter<Integer>, HasDynamicTitle {

    private final transient ReleaseService releases;
    private final transient RemakeService remakes;
    private final transient BatchChangeService changes;
    private final transient AccessService access;
    private final transient BallotCatalog ballots;
    private final ElectionId election;
    private int number;
    private transient Map<UserName, String> names = Map.of();

    BatchView(
            ReleaseService releases,
            RemakeService remakes,
            BatchChangeService changes,
            AccessService access,
            WorkingElection workplace) {
        this.releases = releases;
        this.remakes = remakes;
        this.changes = changes;
        this.access = access;
        this.election = workplace.electionId();
        access.demand(Permission.SEE_RELEASE);
        this.ballots = remakes.ballots(election);
        getContent().addClassNames("sheet", "board", "release");
    }

    @Override
    public String getPageTitle() {
        return "Batch " + number + " · Proviso";
    }

    @Override
    public void setParameter(BeforeEvent event, Integer batchNo) {
        number = batchNo;
        try {
            show();
        } catch (IllegalArgumentException e) {
            throw new NothingHereException("There is no batch " + batchNo + " of this election.");
        }
    }

    private void show() {
        Batch batch = releases.batch(election, number);
        List<RemakeSheet> sheets = remakes.sheets(election, number);
        names = releases.names(election, number);
        getContent().removeAll();
        String apart = batch.heldApart() ? " Its ballots were cast in court-extended hours and are kept apart." : "";
        PageHead head = new PageHead(
                "Batch " + number,
                UsDates.count(batch.envelopes(), "envelope")
                        + ", opened together so that no ballot can be traced to its envelope." + apart);
        getContent().add(head);
        if (batch.dissolvedAt() != null) {
            getContent()
                    .add(new Paragraph("Dissolved by " + name(batch.dissolveAskedBy()) + " and "
                            + name(batch.dissolvedBy()) + ": " + batch.dissolveBecause()));
            return;
        }
        List<Refusal> stopped = changes.stopped(election, number);
        stopped.forEach(refusal -> getContent().add(stop(refusal)));
        getContent().add(opening(batch));
        if (batch.isClosed() && access.isPermitted(Permission.OPEN_ENVELOPES)) {
            getContent().add(new BatchChangePart(changes, batch, stopped, this::take, name(batch.dissolveAskedBy())));
        }
        getContent().add(remaking(batch, sheets), handOff(batch, sheets));
    }

    private static Paragraph stop(Refusal refusal) {
        Paragraph line = new Paragraph(refusal.spoken());
        line.addClassNames("problem", "no-print");
        return line;
    }

    private Component opening(Batch batch) {
        Div part = part("Opening");
        if (batch.firstOpener() == null) {
            part.add(new Paragraph(
                    "Sealed. One team member begins opening. A second team member records when it is open."));
            act(
                    part,
                    Permission.OPEN_ENVELOPES,
                    new ActButton("Begin opening")
                            .first()
                            .does(() -> take(
                                    () -> releases.beginOpening(election, number, batch.version()),
                                    "You began opening the batch.")));
        } else if (batch.openedAt() == null) {
            part.add(new Paragraph(
                    name(batch.firstOpener()) + " began opening it. Another team member records when it is"
                            + " open, and how many envelopes were empty."));
            CountField empty = new CountField("Empty envelopes");
            act(
                    part,
                    Permission.OPEN_ENVELOPES,
                    empty,
                    new ActButton("Record batch as open")
                            .first()
                            .does(() -> empty.with(count -> take(
                                    empty,
                                    () -> releases.recordOpening(election, number, batch.version(), count),
                                    "The batch is open."))));
        } else {
            part.add(new Paragraph(
                    "Opened by " + name(batch.firstOpener()) + " and " + name(UserName.orNull(batch.secondOpener()))
                            + ": " + UsDates.count(batch.ballots(), "ballot") + ", " + batch.empty() + " empty."));
        }
        return part;
    }

    private Component remaking(Batch batch, List<RemakeSheet> sheets) {
        Div part = new Div(new H2("Remaking"));
        if (sheets.isEmpty()) {
            part.add(new Paragraph("Every ballot in this batch counts in full. No ballots to remake."));
            return part;
        }
        part.add(
                new Paragraph(
                        UsDates.count(sheets.size(), "sheet")
                                + ", one for each pair of ballot styles. Print them from the browser. They show no voter or envelope."));
        sheets.forEach(sheet -> part.add(new RemakeSheetPart(sheet, ballots, who(sheet), acts(batch, sheet))));
        return part;
    }

    private String who(RemakeSheet sheet) {
        if (sheet.firstCopier() == null) {
            return "Not started.";
        }
        return sheet.remadeAt() == null
                ? name(sheet.firstCopier()) + " is copying. Another team member verifies every mark."
                : "Copied by " + name(sheet.firstCopier()) + ", verified by "
                        + name(UserName.orNull(sheet.secondCopier())) + ".";
    }

    private List<Component> acts(Batch batch, RemakeSheet sheet) {
        if (batch.openedAt() == null || sheet.remadeAt() != null || !access.isPermitted(Permission.REMAKE_BALLOTS)) {
            return List.of();
        }
        boolean begun = sheet.firstCopier() != null;
        ActButton button = new ActButton(begun ? "Remake verified" : "Begin copying")
                .does(() -> take(
                        () -> begun
                                ? remakes.recordRemake(election, number, sheet.number(), sheet.version())
                                : remakes.beginRemake(election, number, sheet.number(), sheet.version()),
                        begun
                                ? "Sheet " + sheet.number() + " remade."
                                : "You began copying sheet " + sheet.number() + "."));
        return List.of(button);
    }

    private Component handOff(Batch batch, List<RemakeSheet> sheets) {
        Div part = part("Hand-off");
        boolean ready = sheets.stream().allMatch(sheet -> sheet.remadeAt() != null);
        if (batch.handedOffAt() != null) {
            part.add(new Paragraph(UsDates.count(batch.ballots(), "ballot") + " handed off to tabulation."));
        } else if (batch.openedAt() == null || !ready) {
            part.add(new Paragraph(
                    "After the batch is open and every sheet is remade, count the ballots again and hand them off"
                            + " to tabulation."));
        } else {
            CountField counted = new CountField("Ballots counted");
            act(
                    part,
                    Permission.HAND_OFF,
                    counted,
                    new ActButton("Hand off ballots")
                            .first()
                            .does(() -> counted.with(count -> take(
                                    counted,
                                    () -> remakes.handOff(election, number, batch.version(), count),
                                    "Ballots handed off to tabulation."))));
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

    private void take(Supplier<? extends ActResult<?>> act, String done) {
        take(act, done, refusal -> false);
    }

    private void take(CountField box, Supplier<? extends ActResult<?>> act, String done) {
        take(act, done, refusal -> {
            if (refusal.field() != null) {
                box.refuse(refusal.words());
            }
            return refusal.field() != null;
        });
    }

    /** What is wrong with one box is said there. */
    private void take(Supplier<? extends ActResult<?>> act, String done, BatchChangePart.AtBox atBox) {
        String refused = "";
        try {
            if (act.get() instanceof ActResult.Refused<?> no) {
                if (atBox.shows(no.refusals().get(0))) {
                    return;
                }
                refused = no.words();
            }
        } catch (NotPermittedException e) {
            refused = Objects.requireNonNullElse(e.getMessage(), "This cannot be done now.");
        } catch (OptimisticLockingFailureException e) {
            refused = "Not saved. Someone else changed this just now. The page shows the current version.";
        }
        show();
        if (refused.isEmpty()) {
            MessageLine.done(done);
        } else {
            MessageLine.refused(refused);
        }
    }

    private String name(@Nullable UserName userName) {
        return userName == null ? "" : names.getOrDefault(userName, userName.value());
    }
}
