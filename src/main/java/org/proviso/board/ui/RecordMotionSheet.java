package org.proviso.board.ui;

import com.vaadin.flow.component.combobox.MultiSelectComboBox;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.board.MotionKind;
import org.proviso.board.MoveMotion;
import org.proviso.board.SessionKey;
import org.proviso.board.record.SessionDetails.Member;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.rules.Reason;
import org.proviso.ui.field.ActDialog;

/** Records a motion that a member makes aloud: who, what of which envelopes, and on what grounds. */
final class RecordMotionSheet {

    /** Records it; gives the words of a refusal, if it was refused. */
    @FunctionalInterface
    interface RecordAct {
        java.util.Optional<String> of(MoveMotion move, Member mover);
    }

    private final SessionKey session;
    private final Map<EnvelopeNumber, Integer> envelopes;
    private final RecordAct act;
    private final Select<Member> member = new Select<>();
    private final RadioButtonGroup<MotionKind> kind = new RadioButtonGroup<>("Motion");
    private final MultiSelectComboBox<Reason> reasons = new MultiSelectComboBox<>("Reasons, main reason first");
    private final TextField reference = new TextField("Legal reference");
    private final TextArea because = new TextArea("Reason, as the member says it");
    private final ActDialog sheet;

    RecordMotionSheet(
            SessionKey session, Map<EnvelopeNumber, Integer> envelopes, List<MotionKind> kinds, RecordAct act) {
        this.session = session;
        this.envelopes = envelopes;
        this.act = act;
        sheet = new ActDialog("Record a motion", "Record motion", this::record);
        sheet.addClassName("board-sheet");
        kind.setItems(kinds);
        kind.setItemLabelGenerator(one -> BoardWords.sentence(one.words()));
        kind.setValue(kinds.get(0));
        kind.addValueChangeListener(event -> fields());
        reasons.setItems(Reason.values());
        reasons.setItemLabelGenerator(Reason::words);
        reasons.setWidthFull();
        reference.setWidthFull();
        reference.setMaxLength(1000);
        because.setWidthFull();
        because.setMaxLength(2000);
        fields();
    }

    private void fields() {
        reasons.setVisible(kind.getValue() == MotionKind.REJECT || kind.getValue() == MotionKind.COUNT_IN_PART);
    }

    void open(List<Member> present, List<Reason> proposedReasons, String proposedReference) {
        member.setLabel("Moved by");
        member.setItems(present);
        member.setItemLabelGenerator(Member::fullName);
        present.stream().findFirst().ifPresent(member::setValue);
        reasons.setValue(Set.copyOf(proposedReasons));
        reference.setValue(kind.getValue() == MotionKind.REJECT ? proposedReference : "");
        sheet.with("Envelopes: " + BoardWords.numbers(List.copyOf(envelopes.keySet()), 24) + ".")
                .with(member, kind, reasons, reference, because)
                .open();
    }

    private boolean record() {
        Member mover = member.getValue();
        if (mover == null) {
            return ActDialog.refuse(member, "Choose the member who made the motion.");
        }
        MoveMotion move = new MoveMotion(
                session,
                kind.getValue(),
                envelopes,
                Set.of(),
                reasons.isVisible() ? new ArrayList<>(reasons.getValue()) : List.of(),
                reference.getValue(),
                because.getValue());
        return act.of(move, mover).map(sheet::refuse).orElse(true);
    }
}
