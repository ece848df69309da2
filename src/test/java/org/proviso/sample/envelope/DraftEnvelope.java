package org.proviso.sample.envelope;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.proviso.sample.county.Dwelling;
import org.proviso.sample.county.FileColumns;
import org.proviso.sample.county.FileRow;
import org.proviso.sample.county.Resident;

/** One envelope in the making together with its truth. */
public final class DraftEnvelope {

    public final Resident person;
    public final boolean onRoll;
    public final String scenario;
    public final FileRow envelope = new FileRow(FileColumns.ENVELOPES);
    public final List<String> notes = new ArrayList<>();
    final List<String> fieldStates = new ArrayList<>();
    public final Set<Identifier> mayBlemish = EnumSet.allOf(Identifier.class);
    public Dwelling livesIn;
    public TrueOutcome outcome;
    public List<String> contests = List.of();
    public String signature = "own";
    public boolean checkedIn = true;
    public boolean blemished;

    DraftEnvelope(Resident person, boolean onRoll, String scenario, TrueOutcome outcome) {
        this.person = person;
        this.livesIn = person.home;
        this.onRoll = onRoll;
        this.scenario = scenario;
        this.outcome = outcome;
    }

    public DraftEnvelope set(String column, Object value) {
        envelope.set(column, value);
        return this;
    }

    public String get(String column) {
        return envelope.get(column);
    }

    /** Says why the ballot was given as provisional; a second reason is added to the first. */
    public DraftEnvelope because(String reason) {
        String before = get("issue_reasons");
        return set("issue_reasons", before.isEmpty() ? reason : before + ";" + reason);
    }

    public DraftEnvelope note(String note) {
        notes.add(note);
        return this;
    }

    /** Only these grounds may be written badly. */
    public DraftEnvelope only(Identifier... grounds) {
        mayBlemish.retainAll(Set.of(grounds));
        return this;
    }

    /** Leaves a box empty and says how it was found. */
    public DraftEnvelope empty(String field, String state) {
        fieldStates.add(field + "=" + state);
        return set(field, "");
    }

    public DraftEnvelope unsigned() {
        signature = "none";
        return set("voter_signed", "no");
    }

    public DraftEnvelope withoutId() {
        if (onRoll) {
            person.roll.set("id_required", "yes");
        }
        return set("id_shown", "no").set("id_kind", "").because("no_id");
    }

    public LocalDateTime castAt() {
        return LocalDateTime.parse(get("cast_at"));
    }
}
