package org.proviso.status.ui;

import java.util.List;
import org.proviso.core.Election;

/** The answer as the voter reads it, in the language of the page; what does not apply is empty. */
record VoterAnswer(
        String title,
        String mark,
        String receipt,
        String election,
        List<Reading> reasons,
        List<ToDo> toDo,
        List<String> happened,
        List<String> next,
        List<String> papers,
        boolean statement,
        String send,
        Reading hours,
        Election.Office office) {

    /** A sentence, and whether it is in English on a page in another language. */
    record Reading(String words, boolean onlyEnglish) {}

    /** What is missing, in short, until when, and what to do about it. */
    record ToDo(String title, String must, String until, List<String> words) {}

    /** Whether the voter may still bring something, so that the page says where to. */
    public boolean asks() {
        return !toDo.isEmpty();
    }
}
