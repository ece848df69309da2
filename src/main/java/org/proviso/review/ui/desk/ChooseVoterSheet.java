package org.proviso.review.ui.desk;

import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.proviso.core.Voter;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.acts.ConfirmLink;
import org.proviso.review.file.PossibleVoter;
import org.proviso.review.ui.voters.CandidatesBeside;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActDialog;

/**
 * Chooses the voter, from the candidates side by side or by searching the roll, with the ground that the second reader and the
 * board will read. The ground stays typed until it is recorded, also where the case was changed meanwhile.
 */
final class ChooseVoterSheet extends CaseSheet {

    /** What a choice may rest on, as the ground names it. */
    private static final List<String> FIELDS =
            List.of("name", "date of birth", "address", "last 4 of SSN", "driver's license", "signature");

    /** With the fields before it, a ground has room for 4,000 characters. */
    private static final int MOST_WORDS = 3_800;

    private final CasePageContext desk;
    private final Fields fields;

    /** What is chosen and typed. */
    private record Fields(RadioButtonGroup<Voter> voters, CheckboxGroup<String> restsOn, TextArea reason) {

        String ground() {
            String fields = String.join(
                    ", ", FIELDS.stream().filter(restsOn.getValue()::contains).toList());
            String typed = reason.getValue().strip();
            return fields + (fields.isEmpty() || typed.isEmpty() ? "" : ": ") + typed;
        }
    }

    ChooseVoterSheet(CasePageContext desk) {
        this(
                desk,
                new Fields(
                        new RadioButtonGroup<>("Who is the voter?"),
                        new CheckboxGroup<>("What the choice rests on"),
                        words("Reason")));
    }

    private ChooseVoterSheet(CasePageContext desk, Fields fields) {
        super("Choose the voter of envelope " + desk.number(), "Link voter", refusing -> {
            Voter chosen = fields.voters().getValue();
            if (chosen == null) {
                return ActDialog.refuse(fields.voters(), "Choose a voter.");
            }
            String ground = fields.ground();
            return desk.fromSheet(
                    refusing,
                    "Envelope " + desk.number() + " is linked to "
                            + chosen.name().listed() + ".",
                    seen -> desk.acts()
                            .links()
                            .confirm(new ConfirmLink(seen.key(), seen.version(), chosen.voterId(), ground))
                            .map(linked -> forget(desk, linked)));
        });
        this.desk = desk;
        this.fields = fields;
        fields.voters().addClassName("in-lines");
        fields.voters().setItemLabelGenerator(ChooseVoterSheet::line);
        fields.restsOn().setItems(FIELDS);
        fields.restsOn().addClassName("in-columns");
        fields.reason().setMaxLength(MOST_WORDS);
        fields.reason().setHelperText("The second reader and the board read it, with your name.");
        remember();
        TextField look = new TextField("Search the roll by name, date of birth or voter ID");
        look.setWidthFull();
        look.setValueChangeMode(ValueChangeMode.ON_CHANGE);
        look.addValueChangeListener(event -> offer(event.getValue()));
        offer("");
        if (desk.file().around().voters().size() > 1) {
            wide();
            with(new CandidatesBeside(desk.file(), !desk.signatureHidden()));
        }
        with(look, fields.voters(), fields.restsOn(), fields.reason());
    }

    /** What was typed for this envelope and not recorded is there again when the sheet is opened again. */
    private void remember() {
        String draft = draft(desk);
        String typed = Objects.requireNonNullElse((String) ComponentUtil.getData(UI.getCurrent(), draft), "");
        fields.reason().setValue(typed);
        fields.reason()
                .addValueChangeListener(event -> ComponentUtil.setData(UI.getCurrent(), draft, event.getValue()));
    }

    private static EnvelopeCase forget(CasePageContext desk, EnvelopeCase linked) {
        ComponentUtil.setData(UI.getCurrent(), draft(desk), null);
        return linked;
    }

    private static String draft(CasePageContext desk) {
        return "ground for the voter of " + desk.key();
    }

    private void offer(String typed) {
        List<Voter> offered = new ArrayList<>(
                desk.file().around().voters().stream().map(PossibleVoter::voter).toList());
        if (!typed.isBlank()) {
            offered.clear();
            offered.addAll(desk.acts().find().voters(desk.key().electionId(), typed));
        }
        fields.voters().setItems(offered);
        fields.voters()
                .setHelperText(
                        offered.isEmpty()
                                ? typed.isBlank() ? "No possible voters found. Search the roll." : noRecord(typed)
                                : "");
    }

    private String noRecord(String typed) {
        String unread =
                desk.acts().find().unread(desk.key().electionId(), typed).words();
        return "No record on the roll matches." + (unread.isEmpty() ? "" : " " + unread);
    }

    private static String line(Voter voter) {
        String address = voter.confidential()
                ? "protected address"
                : voter.residence().address().oneLine();
        return voter.name().listed() + ", " + voter.voterId() + ", born " + UsDates.digits(voter.birthDate()) + ", "
                + address;
    }
}
