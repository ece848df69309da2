package org.proviso.review.ui.mail;

import com.vaadin.flow.component.textfield.TextArea;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.proviso.core.Code;
import org.proviso.core.act.ActResult;
import org.proviso.review.mail.CorrectDeskAnswer;
import org.proviso.review.mail.DeskAnswer;
import org.proviso.review.mail.GivenAnswer;
import org.proviso.review.mail.MailListService;
import org.proviso.review.mail.SentLine;
import org.proviso.ui.MessageLine;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActDialog;
import org.proviso.ui.field.ChoiceField;

/** Corrects the answer of the mail-ballot desk to one line, with the reason. */
final class CorrectAnswerSheet {

    private final MailListService lists;
    private final SentLine line;
    private final GivenAnswer before;
    private final Runnable after;
    private final AnswerFields fields = new AnswerFields();
    private final ChoiceField answer;
    private final TextArea because = new TextArea("Reason for the correction");
    private final ActDialog sheet;

    CorrectAnswerSheet(MailListService lists, SentLine line, Runnable after) {
        this.lists = lists;
        this.line = line;
        this.after = after;
        this.before = Objects.requireNonNull(line.given(), "only an answer that was given is corrected");
        this.answer = new ChoiceField(
                        "answer", "Answer", AnswerFields.choices(line.line().kind()))
                .code(before.answer().code());
        fields.day().setValue(UsDates.digits(before.answeredOn()));
        fields.by().setValue(before.answeredBy());
        because.setWidthFull();
        because.setMaxLength(4_000);
        this.sheet = new ActDialog(
                "Correct line " + line.lineNo() + " of list " + line.listNo(), "Correct answer", this::correct);
        sheet.with("Envelope " + line.line().key().envelopeNo() + ", "
                        + line.line().voterName() + ". The answer before stays readable.")
                .with(answer, fields.day(), fields.by(), because);
    }

    void open() {
        sheet.open();
    }

    private boolean correct() {
        Optional<LocalDate> on = fields.given();
        if (on.isEmpty()) {
            return false;
        }
        ActResult<Integer> corrected = lists.correct(new CorrectDeskAnswer(
                line.line().key().electionId(),
                line.listNo(),
                line.lineNo(),
                before.number(),
                Code.find(DeskAnswer.class, answer.code()).orElse(before.answer()),
                on.get(),
                fields.by().getValue(),
                because.getValue()));
        if (corrected instanceof ActResult.Refused<Integer> refused) {
            return sheet.refuse(refused.words());
        }
        after.run();
        MessageLine.done("Line " + line.lineNo() + " of list " + line.listNo() + ": answer corrected.");
        return true;
    }
}
