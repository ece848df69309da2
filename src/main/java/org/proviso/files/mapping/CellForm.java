package org.proviso.files.mapping;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** How the text of an office's column becomes what stands in ours. */
public sealed interface CellForm {

    /** It stands there as it came. */
    record AsWritten() implements CellForm {}

    /** A date, or a date and time, written in the office's form. */
    record Dated(DateForm form) implements CellForm {}

    /** Codes, each with our word. */
    record Coded(Map<String, String> words) implements CellForm {

        public Coded {
            words = Collections.unmodifiableMap(new LinkedHashMap<>(words));
        }
    }

    /** A part of a whole name, address line, or city with state and zip. */
    record PartOf(TextShape shape) implements CellForm {}

    CellForm AS_WRITTEN = new AsWritten();
}
