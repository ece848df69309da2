package org.proviso.cli.sample;

import java.util.List;

/** Makes about six in ten envelopes as hard to read as the trade knows them: one blemish, or two on different grounds. */
final class Blemishes {

    private static final double SHARE = 0.6;
    private static final double SECOND = 0.35;
    private static final int TRIES = 12;

    private final NameBlemishes names;
    private final AddressBlemishes addresses;
    private final NumberBlemishes numbers;
    private final Dice dice;

    Blemishes(NameBook book, Dice dice) {
        this.names = new NameBlemishes(book, dice);
        this.addresses = new AddressBlemishes(dice);
        this.numbers = new NumberBlemishes(dice);
        this.dice = dice;
    }

    void spoil(List<Draft> drafts) {
        for (Draft draft : drafts) {
            if (!draft.mayBlemish.isEmpty() && dice.chance(SHARE)) {
                spoil(draft);
                if (draft.mayBlemish.size() > 1 && draft.livesIn == draft.person.home && dice.chance(SECOND)) {
                    spoil(draft);
                }
            }
        }
    }

    private void spoil(Draft draft) {
        for (int tries = 0; tries < TRIES; tries++) {
            Ground ground = ground();
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

    private Ground ground() {
        int kind = dice.below(20);
        return kind < 8 ? Ground.NAME : kind < 14 ? Ground.ADDRESS : kind < 17 ? Ground.BIRTH : Ground.NUMBER;
    }

    private String apply(Ground ground, Draft draft) {
        return switch (ground) {
            case NAME -> names.spoil(draft);
            case ADDRESS -> addresses.spoil(draft);
            case BIRTH -> numbers.birth(draft);
            case NUMBER -> numbers.last4(draft);
        };
    }
}
