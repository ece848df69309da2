package org.proviso.sample.keying;

import java.util.List;
import org.proviso.sample.county.Dice;
import org.proviso.sample.county.NameBook;
import org.proviso.sample.envelope.DraftEnvelope;
import org.proviso.sample.envelope.Identifier;

/** Makes about six in ten envelopes as hard to read as the trade knows them: one blemish, or two on different grounds. */
public final class Blemishes {

    private static final double SHARE = 0.6;
    private static final double SECOND = 0.35;
    private static final int TRIES = 12;

    private final NameBlemishes names;
    private final AddressBlemishes addresses;
    private final NumberBlemishes numbers;
    private final Dice dice;

    public Blemishes(NameBook book, Dice dice) {
        this.names = new NameBlemishes(book, dice);
        this.addresses = new AddressBlemishes(dice);
        this.numbers = new NumberBlemishes(dice);
        this.dice = dice;
    }

    public void spoil(List<DraftEnvelope> drafts) {
        for (DraftEnvelope draft : drafts) {
            if (!draft.mayBlemish.isEmpty() && dice.chance(SHARE)) {
                spoil(draft);
                if (draft.mayBlemish.size() > 1 && draft.livesIn == draft.person.home && dice.chance(SECOND)) {
                    spoil(draft);
                }
            }
        }
    }

    private void spoil(DraftEnvelope draft) {
        for (int tries = 0; tries < TRIES; tries++) {
            Identifier ground = ground();
            if (draft.mayBlemish.contains(ground)) {
                String what = apply(ground, draft);
                if (!what.isEmpty()) {
                    draft.note(what);
                    draft.blemished = true;
                    draft.mayBlemish.remove(ground);
                    return;
                }
            }
        }
    }

    private Identifier ground() {
        int kind = dice.below(20);
        return kind < 8
                ? Identifier.NAME
                : kind < 14 ? Identifier.ADDRESS : kind < 17 ? Identifier.BIRTH : Identifier.NUMBER;
    }

    private String apply(Identifier ground, DraftEnvelope draft) {
        return switch (ground) {
            case NAME -> names.spoil(draft);
            case ADDRESS -> addresses.spoil(draft);
            case BIRTH -> numbers.birth(draft);
            case NUMBER -> numbers.last4(draft);
        };
    }
}
