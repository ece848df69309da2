package org.proviso.intake.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.rules.Ask;
import org.proviso.intake.RecordCure;
import org.proviso.intake.cure.CureScan;
import org.proviso.intake.cure.CureScanService;
import org.proviso.intake.cure.CureService;
import org.proviso.intake.cure.TakeBackCure;
import org.proviso.intake.desk.BroughtPaper;
import org.proviso.intake.desk.CureLookupService;
import org.proviso.intake.desk.CureVerdict;
import org.proviso.intake.desk.FoundEnvelope;
import org.proviso.ui.Caution;
import org.proviso.ui.MessageLine;
import org.proviso.ui.ReasonDialog;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ChoiceField;
import org.proviso.ui.field.TypedDates;
import org.proviso.ui.field.TypedField;
import org.proviso.ui.frame.WorkingElection;

/** Cure evidence for one envelope: what it is, its stamp and how it arrived. It shows the deadline. */
final class CureForm extends Div {

    private final transient CureService cures;
    private final transient CureLookupService desk;
    private final transient CureScanService scans;
    private final transient WorkingElection workplace;
    private final H2 title = new H2("Cure evidence");
    private final Div verdict = new Div();
    private final Div owed = new Div();
    private final Div brought = new Div();
    private final ChoiceField kind = new ChoiceField("kind", "Evidence to", asks());
    private final TypedField day = new TypedField("stamp-day", "Date stamped");
    private final TypedField time = new TypedField("stamp-time", "Time stamped").like("9:15 am");
    private final TypedField words =
            new TypedField("words", "What was brought, and how").like("passport, shown at the counter");
    private final Paragraph inTime = new Paragraph();
    private final Div fields;
    private @Nullable FoundEnvelope envelope;

    CureForm(CureService cures, CureLookupService desk, CureScanService scans, WorkingElection workplace) {
        this.scans = scans;
        this.cures = cures;
        this.desk = desk;
        this.workplace = workplace;
        kind.onChosen(code -> say());
        day.onTyped(text -> say());
        time.onTyped(text -> say());
        inTime.getElement().setAttribute("role", "status");
        ActButton record = new ActButton("Record evidence").first().does(this::record);
        record.getElement().setAttribute("data-finish", true);
        fields = new Div(kind, day, time, words, inTime, record, new Caution());
        fields.getElement().setAttribute("data-typing", "go-on");
        fields.setVisible(false);
        brought.add(new Paragraph("Find and select an envelope first."));
        verdict.getElement().setAttribute("role", "status");
        add(verdict, title, owed, brought, fields);
    }

    private static Map<String, String> asks() {
        Map<String, String> words = new LinkedHashMap<>();
        for (Ask ask : Ask.values()) {
            words.put(ask.code(), ask.words());
        }
        return words;
    }

    void of(FoundEnvelope found) {
        envelope = found;
        title.setText(found.envelopeNo() + ", " + found.voter());
        LocalDateTime now = workplace.now();
        day.text(UsDates.digits(now.toLocalDate()));
        time.text(UsDates.hour(now.toLocalTime()));
        words.text("");
        fields.setVisible(true);
        verdict.removeAll();
        showOwed(desk.owed(workplace.electionId(), found.envelopeNo()));
        showBrought(found);
        say();
    }

    /** Moves the focus to the first field. */
    void begin() {
        kind.focus();
    }

    /** The verdict on what was just recorded stands largest on the page. */
    private void show(CureVerdict found) {
        Paragraph words = new Paragraph(found.kind().words());
        words.addClassNames(
                "verdict", found.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        verdict.removeAll();
        verdict.add(words, new Paragraph(found.because()));
        showOwed(found.owed());
    }

    private void showOwed(List<String> sentences) {
        owed.removeAll();
        if (sentences.isEmpty()) {
            owed.add(new Paragraph("Nothing is asked of this voter now."));
        }
        sentences.forEach(sentence -> {
            Paragraph line = new Paragraph(sentence);
            line.addClassName("warn");
            owed.add(line);
        });
    }

    private void showBrought(FoundEnvelope found) {
        brought.removeAll();
        List<BroughtPaper> before = desk.brought(workplace.electionId(), found.envelopeNo());
        List<CureScan> kept = scans.scans(workplace.electionId(), found.envelopeNo());
        before.forEach(paper -> brought.add(
                line(found, paper),
                new CureScansPart(
                        scans,
                        new EnvelopeKey(workplace.electionId(), found.envelopeNo()),
                        paper,
                        kept,
                        () -> showBrought(found))));
        if (before.isEmpty()) {
            brought.add(new Paragraph("No cure evidence received for this envelope yet."));
        }
    }

    private Paragraph line(FoundEnvelope found, BroughtPaper paper) {
        Paragraph line = new Paragraph(paper.words() + " ");
        if (!paper.takenBack()) {
            ActButton back = new ActButton("Take back…").quiet().does(() -> takeBack(found, paper));
            back.setAriaLabel("Take back evidence " + paper.number() + " of " + found.envelopeNo());
            line.add(back);
        }
        return line;
    }

    private void takeBack(FoundEnvelope found, BroughtPaper paper) {
        new ReasonDialog(
                        "Take back evidence of " + found.envelopeNo(),
                        "Take back evidence",
                        because -> cures.takeBack(
                                new TakeBackCure(workplace.electionId(), found.envelopeNo(), paper.number(), because)),
                        "Evidence of envelope " + found.envelopeNo() + " taken back.",
                        () -> {
                            verdict.removeAll();
                            showOwed(desk.owed(workplace.electionId(), found.envelopeNo()));
                            showBrought(found);
                        })
                .ask(paper.words() + " It no longer counts for this envelope, and the case is assessed anew.");
    }

    private Ask ask() {
        return Code.find(Ask.class, kind.code()).orElseThrow();
    }

    private Optional<LocalDateTime> stamp() {
        Optional<LocalDate> onDay = TypedDates.day(day.text());
        Optional<LocalTime> atTime = TypedDates.time(time.text());
        return onDay.flatMap(found -> atTime.map(found::atTime));
    }

    private void say() {
        inTime.setText(desk.inTime(workplace.electionId(), ask(), stamp().orElse(null)));
    }

    private void record() {
        day.problem(TypedDates.day(day.text()).isEmpty() ? TypedDates.LIKE_A_DAY : "");
        time.problem(TypedDates.time(time.text()).isEmpty() ? TypedDates.LIKE_A_TIME : "");
        words.problem(
                words.text().isEmpty()
                        ? "Required. Enter what the voter brought, and how: at the counter, by mail or by email."
                        : "");
        if (stamp().isEmpty() || words.hasProblem() || envelope == null) {
            MessageLine.refused("Not saved. Check the highlighted fields.");
            return;
        }
        EnvelopeNumber number = envelope.envelopeNo();
        LocalDateTime stamped = stamp().get();
        ActResult<RecordCure> result =
                cures.record(new RecordCure(workplace.electionId(), number, ask(), stamped, words.text()));
        if (result instanceof ActResult.Refused<RecordCure> refused) {
            day.problem(refused.words());
            day.focus();
            MessageLine.refused("Not saved. " + refused.words());
            return;
        }
        MessageLine.done("Evidence recorded for envelope " + number + ".");
        words.text("");
        show(desk.verdict(workplace.electionId(), number, ask(), stamped));
        showBrought(envelope);
    }
}
