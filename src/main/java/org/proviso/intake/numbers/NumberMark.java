package org.proviso.intake.numbers;

import java.util.List;
import org.proviso.core.Code;
import org.proviso.intake.NumberWords;

/** Why an envelope is marked: a number is missing, or another envelope has it too. */
public enum NumberMark implements Code {
    NO_RECEIPT("no receipt number"),
    RECEIPT_SHARED("receipt number also on"),
    NUMBER_SHARED("number also on");

    private final String words;

    NumberMark(String words) {
        this.words = words;
    }

    /** As it reads beside the envelope: {@code receipt number also on P-1001}. */
    String words(List<String> alsoOn) {
        return alsoOn.isEmpty() ? words : words + " " + NumberWords.listed(alsoOn);
    }
}
