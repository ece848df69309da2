package org.proviso.review.queue;

import java.util.List;
import org.proviso.core.PersonName;
import org.proviso.core.VoterId;
import org.proviso.review.CaseVersion;
import org.proviso.review.file.FieldBeside;

/**
 * An almost certain link that nobody has confirmed yet: the name on the envelope, the record's id, the evidence, and the record
 * beside the envelope field by field.
 */
public record SureLink(
        CaseVersion seen,
        PersonName name,
        VoterId voterId,
        double probability,
        List<String> evidence,
        List<FieldBeside> fields) {

    SureLink with(List<FieldBeside> beside) {
        return new SureLink(seen, name, voterId, probability, evidence, beside);
    }

    /** Whether the record says something else than the envelope in any field. */
    public boolean differs() {
        return fields.stream().anyMatch(field -> field.likeness() == FieldBeside.Likeness.DIFFERS);
    }

    /** Whether it says the same in all of them. */
    public boolean isTheSame() {
        return !fields.isEmpty() && fields.stream().allMatch(field -> field.likeness() == FieldBeside.Likeness.SAME);
    }
}
