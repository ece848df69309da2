package org.proviso.intake.ui;

import java.util.Optional;
import org.proviso.core.Code;
import org.proviso.core.Envelope.Field;

/** The boxes of an envelope that are typed into, in the order of its paper; the name is that of their column. */
enum KeyingBox implements Code {
    LAST_NAME("Last name", "", 120),
    FIRST_NAME("First name", "", 120),
    MIDDLE_NAME("Middle name", "", 120),
    SUFFIX("Suffix", "", 20),
    FORMER_NAME("Former name", "", 300),
    DATE_OF_BIRTH("Date of birth", "3/12/1984", 40),
    RESIDENCE_ADDRESS_LINE("Address", "", 300),
    UNIT("Unit", "", 60),
    CITY("City", "", 100),
    ZIP("ZIP", "", 20),
    MAIL_ADDRESS_LINE("Mailing address", "", 500),
    FORMER_ADDRESS_LINE("Former address", "", 300),
    FORMER_UNIT("Former unit", "", 60),
    FORMER_CITY("Former city", "", 100),
    FORMER_ZIP("Former ZIP", "", 20),
    MOVED_ON("Moved on", "8/1/2026", 10),
    DRIVERS_LICENSE("Driver's license", "", 40),
    ID_LAST4("Last 4 of SSN", "", 10),
    PHONE("Phone", "", 40),
    EMAIL("Email", "", 200),
    LANGUAGE("Language", "", 40),
    PARTY("Party", "", 40),
    OFFICIAL_NOTE("Official's note", "", 4000);

    private final String label;
    private final String example;
    private final int most;

    KeyingBox(String label, String example, int most) {
        this.label = label;
        this.example = example;
        this.most = most;
    }

    String label() {
        return label;
    }

    String example() {
        return example;
    }

    int most() {
        return most;
    }

    boolean isDate() {
        return this == DATE_OF_BIRTH || this == MOVED_ON;
    }

    /** The field whose state is kept, where it is one of those. */
    Optional<Field> field() {
        return Code.find(Field.class, code());
    }
}
