package org.proviso.status.ui;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Envelope.Source;
import org.proviso.status.Arrival;
import org.proviso.status.LookupResult;
import org.proviso.status.PlannedDecision;
import org.proviso.status.VoterCaseState;

/** What has happened to an envelope and what comes next, a sentence each. */
record VoterStory(LookupResult.Found found, PageWords words) {

    List<String> happened() {
        List<String> lines = new ArrayList<>();
        if (found.state() != VoterCaseState.NOT_VOTED) {
            lines.add(came(found.arrival()));
        }
        if (found.state().isOpen()) {
            lines.add(whatWeFound());
        } else {
            lines.add(words.say("happened." + found.state().code(), since()));
        }
        return lines;
    }

    /** How it arrived and, until it is opened, that it is safe. */
    private String came(Arrival arrival) {
        String came = words.say(cameKey(arrival), arrival.votingLocation(), castOn(arrival.castOn()));
        return found.state().isOpen() ? came + " " + words.say(arrival.sealed() ? "safe.sealed" : "safe") : came;
    }

    private static String cameKey(Arrival arrival) {
        if (arrival.source() == Source.MAIL_WITHOUT_ID || arrival.source() == Source.OTHER_COUNTY) {
            return "came." + arrival.source().code();
        }
        return "came" + (arrival.votingLocation().isEmpty() ? "" : ".location")
                + (arrival.castOn() == null ? "" : ".day");
    }

    private String castOn(@Nullable LocalDate day) {
        return day == null ? "" : words.weekday(day);
    }

    private String whatWeFound() {
        String registration = words.say(found.registrationFound() ? "found.registration" : "found.not_yet");
        if (found.asks().isEmpty()) {
            return registration;
        }
        List<String> missing = found.asks().stream()
                .map(ask -> words.say("ask." + ask.ask().code() + ".missing"))
                .toList();
        return registration + " " + words.say("missing", words.listed(missing));
    }

    List<String> next() {
        List<String> lines = new ArrayList<>();
        if (!found.state().isOpen()) {
            return List.of(words.say("next." + found.state().code()));
        }
        if (found.state() == VoterCaseState.WAITS_FOR_YOU) {
            lines.add(words.say("next.waits_for_you"));
        }
        lines.add(planned(found.planned()) + " " + words.say("next.result"));
        lines.add(words.say("since", since()));
        return lines;
    }

    private String planned(@Nullable PlannedDecision planned) {
        if (planned == null) {
            return words.say("planned.unknown");
        }
        String how = planned.called() ? "planned.on." : "planned.by.";
        return words.say(how + planned.decider().code(), words.weekday(planned.day()));
    }

    private String since() {
        return words.weekday(found.changedAt().toLocalDate());
    }
}
