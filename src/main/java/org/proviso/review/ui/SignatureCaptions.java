package org.proviso.review.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.util.Optional;
import java.util.stream.Collectors;
import org.proviso.core.VoterId;
import org.proviso.review.file.CaseFile;
import org.proviso.review.file.FieldBeside;
import org.proviso.review.file.PossibleVoter;
import org.proviso.review.ui.voters.FieldMark;

/** What stands over signatures: what the envelope says, and beside each voter what the record says and whether it differs. */
final class SignatureCaptions {

    private SignatureCaptions() {}

    /** For whoever must not know whose signatures they are. */
    static SignatureComparisonPart.Captions withoutNames() {
        return new SignatureComparisonPart.Captions(Optional.empty(), voter -> Optional.empty());
    }

    static SignatureComparisonPart.Captions of(CaseFile file) {
        return new SignatureComparisonPart.Captions(
                file.around().voters().stream().findFirst().map(SignatureCaptions::said),
                voter -> possible(file, voter.voterId()).map(SignatureCaptions::record));
    }

    private static Component said(PossibleVoter voter) {
        Span said = new Span(voter.fields().stream()
                .map(FieldBeside::onEnvelope)
                .filter(words -> !words.isBlank())
                .collect(Collectors.joining(" \u00B7 ", "Envelope: ", "")));
        said.addClassName("strong");
        return said;
    }

    private static Optional<PossibleVoter> possible(CaseFile file, VoterId voterId) {
        return file.around().voters().stream()
                .filter(voter -> voter.voter().voterId().equals(voterId))
                .findFirst();
    }

    private static Component record(PossibleVoter voter) {
        Span id = new Span(voter.voter().voterId().value());
        id.addClassNames("num", "soft");
        Div record = new Div(id);
        record.addClassName("record");
        voter.fields().forEach(field -> record.add(new FieldMark(field)));
        return record;
    }
}
