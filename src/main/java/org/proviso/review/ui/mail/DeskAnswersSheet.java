package org.proviso.review.ui.mail;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.act.ActResult;
import org.proviso.review.mail.DeskAnswer;
import org.proviso.review.mail.MailList;
import org.proviso.review.mail.MailListService;
import org.proviso.review.mail.RecordDeskAnswers;
import org.proviso.review.mail.SentLine;
import org.proviso.ui.MessageLine;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActDialog;
import org.proviso.ui.field.ChoiceField;

/** Records what came back from the mail-ballot desk for a list, line by line; lines without an answer stay open. */
final class DeskAnswersSheet {

    private final MailListService lists;
    private final ElectionId electionId;
    private final MailList list;
    private final Runnable after;
    private final AnswerFields fields = new AnswerFields();
    private final Map<Integer, ChoiceField> answers = new LinkedHashMap<>();
    private final ActDialog sheet;

    DeskAnswersSheet(MailListService lists, ElectionId electionId, MailList list, Runnable after) {
        this.lists = lists;
        this.electionId = electionId;
        this.list = list;
        this.after = after;
        this.sheet = new ActDialog("Answers to list " + list.number(), "Record answers", this::record);
        sheet.with("An answer \"already counted\" contradicts the decision: the decider is asked again.")
                .with(fields.day(), fields.by());
        list.lines().stream().filter(line -> !line.isAnswered()).forEach(this::add);
    }

    private void add(SentLine line) {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put("", "no answer yet");
        choices.putAll(AnswerFields.choices(line.line().kind()));
        String words =
                "Line " + line.lineNo() + ": envelope " + line.line().key().envelopeNo() + ", "
                        + line.line().voterName() + " (" + line.line().kind().words() + ")";
        ChoiceField choice = new ChoiceField("line-" + line.lineNo(), words, choices);
        answers.put(line.lineNo(), choice);
        sheet.with(choice);
    }

    void open() {
        sheet.open();
    }

    private boolean record() {
        Optional<LocalDate> on = fields.given();
        if (on.isEmpty()) {
            return false;
        }
        Map<Integer, DeskAnswer> given = new LinkedHashMap<>();
        answers.forEach((number, choice) ->
                Code.find(DeskAnswer.class, choice.code()).ifPresent(answer -> given.put(number, answer)));
        ActResult<Integer> recorded = lists.record(new RecordDeskAnswers(
                electionId, list.number(), on.get(), fields.by().getValue(), given));
        if (recorded instanceof ActResult.Refused<Integer> refused) {
            return sheet.refuse(refused.words());
        }
        after.run();
        recorded.ifAccepted()
                .ifPresent(lines -> MessageLine.done(
                        "List " + list.number() + ": answers to " + UsDates.count(lines, "line") + " recorded."));
        return true;
    }
}
