package org.proviso.status.ui;

import java.util.List;
import org.proviso.core.Election;

/** The answer as the voter reads it, in the language of the page. */
record OwnAnswer(
        String title,
        String mark,
        String election,
        List<Reading> reasons,
        List<ToDo> toDo,
        String until,
        List<String> happened,
        List<String> next,
        Election.Office office) {

    /** A sentence, and whether it stands in English on a page of another language. */
    record Reading(String words, boolean onlyEnglish) {}

    /** What is missing, in short, and what to do about it. */
    record ToDo(String title, String words) {}
}
