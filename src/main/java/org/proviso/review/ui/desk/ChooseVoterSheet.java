package org.proviso.review.ui.desk;

import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.ArrayList;
import java.util.List;
import org.proviso.core.Voter;
import org.proviso.review.acts.ConfirmLink;
import org.proviso.review.file.PossibleVoter;
import org.proviso.ui.UsDates;

/** Chooses the voter, from the candidates or by searching the roll, with a reason. */
final class ChooseVoterSheet extends CaseSheet {

    private final CasePageContext desk;
    private final RadioButtonGroup<Voter> voters;

    ChooseVoterSheet(CasePageContext desk) {
        this(desk, new RadioButtonGroup<>("Who is the voter?"), words("Reason"));
    }

    private ChooseVoterSheet(CasePageContext desk, RadioButtonGroup<Voter> voters, TextArea ground) {
        super("Choose the voter of envelope " + desk.number(), "Link voter", refusing -> {
            Voter chosen = voters.getValue();
            if (chosen == null) {
                refusing.refuse("Choose a voter.");
                return false;
            }
            return desk.fromSheet(
                    refusing,
                    "Envelope " + desk.number() + " is linked to "
                            + chosen.name().listed() + ".",
                    seen -> desk.acts()
                            .links()
                            .confirm(new ConfirmLink(seen.key(), seen.version(), chosen.voterId(), ground.getValue())));
        });
        this.desk = desk;
        this.voters = voters;
        voters.addClassName("in-lines");
        voters.setItemLabelGenerator(ChooseVoterSheet::line);
        TextField look = new TextField("Search the roll by name, date of birth or voter ID");
        look.setWidthFull();
        look.setValueChangeMode(ValueChangeMode.ON_CHANGE);
        look.addValueChangeListener(event -> offer(event.getValue()));
        offer("");
        with(look, voters, ground);
    }

    private void offer(String typed) {
        List<Voter> offered = new ArrayList<>(
                desk.file().around().voters().stream().map(PossibleVoter::voter).toList());
        if (!typed.isBlank()) {
            offered.clear();
            offered.addAll(desk.acts().find().voters(desk.key().electionId(), typed));
        }
        voters.setItems(offered);
        voters.setHelperText(
                offered.isEmpty()
                        ? typed.isBlank()
                                ? "No possible voters found. Search the roll."
                                : "No record on the roll matches."
                        : "");
    }

    private static String line(Voter voter) {
        String address = voter.confidential()
                ? "protected address"
                : voter.residence().address().oneLine();
        return voter.name().listed() + ", " + voter.voterId() + ", born " + UsDates.digits(voter.birthDate()) + ", "
                + address;
    }
}
