package org.proviso.sample.envelope;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.proviso.core.CheckedReceipt;
import org.proviso.sample.county.Dice;

/** Gives envelopes their numbers in the order of locations and hours, and each voter a receipt number. */
public final class EnvelopeNumbers {

    private final Dice dice;
    private final Set<String> receipts = new HashSet<>();

    public EnvelopeNumbers(Dice dice) {
        this.dice = dice;
    }

    public void number(List<DraftEnvelope> drafts, String prefix) {
        drafts.sort(Comparator.comparing((DraftEnvelope draft) -> draft.get("voting_location"))
                .thenComparing(draft -> draft.get("cast_at"))
                .thenComparing(draft -> draft.person.hand));
        int number = 1001;
        for (DraftEnvelope draft : drafts) {
            String envelopeNo = prefix + "-" + number++;
            draft.set("envelope_no", envelopeNo).set("receipt_no", receipt());
            if (!draft.signature.equals("none")) {
                draft.set("signature_image", "signatures/envelopes/" + envelopeNo + ".png");
            }
            draft.set("field_states", String.join(";", draft.fieldStates));
        }
    }

    private String receipt() {
        String number = CheckedReceipt.of(dice.digits(8)).value();
        return receipts.add(number) ? number : receipt();
    }
}
