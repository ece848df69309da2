package org.proviso.review.file;

import java.util.List;
import org.proviso.core.Voter;

/**
 * A record of the roll that is, or may be, the voter: the match's probability with its evidence in words. {@code linked}
 * says that a person confirmed it, {@code presumed} that the match names it; others are candidates only. {@code fields} have the
 * record beside the envelope, {@code onFile} says how many of the voter's signatures are.
 */
public record PossibleVoter(
        Voter voter,
        double probability,
        List<String> evidence,
        boolean linked,
        boolean presumed,
        List<FieldBeside> fields,
        int onFile) {

    /** A protected address is written out for the settled voter's own case alone, never for one who is merely possible. */
    public String address() {
        return voter.confidential() && !linked
                ? "protected address"
                : voter.residence().address().oneLine();
    }
}
