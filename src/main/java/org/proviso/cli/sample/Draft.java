package org.proviso.cli.sample;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** One envelope in the making together with its truth. */
final class Draft {

    final Person person;
    final boolean onRoll;
    final String scenario;
    final Row envelope = new Row(Columns.ENVELOPES);
    final List<String> notes = new ArrayList<>();
    final List<String> fieldStates = new ArrayList<>();
    final Set<Ground> mayBlemish = EnumSet.allOf(Ground.class);
    Dwelling livesIn;
    Outcome outcome;
    List<String> contests = List.of();
    String signature = "own";
    boolean checkedIn = true;
    boolean blemished;

    Draft(Person person, boolean onRoll, String scenario, Outcome outcome) {
        this.person = person;
        this.livesIn = person.home;
        this.onRoll = onRoll;
        this.scenario = scenario;
        this.outcome = outcome;
    }

    Draft set(String column, Object value) {
        envelope.set(column, value);
        return this;
    }

    String get(String column) {
        return envelope.get(column);
    }

    /** Says why the ballot was given as provisional; a second reason is added to the first. */
    Draft because(String reason) {
        String before = get("issue_reasons");
        return set("issue_reasons", before.isEmpty() ? reason : before + ";" + reason);
    }

    Draft note(String note) {
        notes.add(note);
        return this;
    }

    /** Only these grounds may be written badly. */
    Draft only(Ground... grounds) {
        mayBlemish.retainAll(Set.of(grounds));
        return this;
    }

    /** Leaves a box empty and says how it was found. */
    Draft empty(String field, String state) {
        fieldStates.add(field + "=" + state);
        return set(field, "");
    }

    Draft unsigned() {
        signature = "none";
        return set("voter_signed", "no");
    }

    Draft withoutId() {
        if (onRoll) {
            person.roll.set("id_required", "yes");
        }
        return set("id_shown", "no").set("id_kind", "").because("no_id");
    }

    LocalDateTime castAt() {
        return LocalDateTime.parse(get("cast_at"));
    }
}
