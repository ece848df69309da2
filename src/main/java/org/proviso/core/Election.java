package org.proviso.core;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** One election of one county: its date and zone, the rule pack it is settled under, and the office that settles it. */
public record Election(
        ElectionId id,
        String name,
        LocalDate date,
        Kind kind,
        String jurisdiction,
        ZoneId zone,
        String rulePack,
        DecidingBody decider,
        Office office,
        LocalTime pollsClose,
        List<String> languages,
        List<CourtOrder> orders,
        Set<LocalDate> daysClosed,
        List<CountyRuling> rulings,
        Receipts receipts) {

    /** When the polls close, on the county's clock; a court can extend the hours. */
    public LocalDateTime close() {
        return date.atTime(pollsClose);
    }

    /** What kind of election it is. */
    public enum Kind implements Code {
        GENERAL,
        PRIMARY,
        SPECIAL
    }

    /** Whether the receipt numbers of its envelopes have a check digit, or are the office's own and never checked. */
    public enum Receipts implements Code {
        OWN,
        CHECK_DIGIT
    }

    /** How many sit on the deciding body, and how many make a quorum. */
    public record DecidingBody(int members, int quorum) {}

    /** Where a voter reaches the office, and when in the words of each language that the office gave them in. */
    public record Office(String name, String address, String phone, String email, Map<String, String> hours) {

        /** The address of a link that calls the office: {@code tel:5550100142} for {@code (555) 010-0142}. */
        public String call() {
            return "tel:" + (phone.strip().startsWith("+") ? "+" : "") + phone.replaceAll("[^0-9]", "");
        }

        /** The words in pieces, in their order: the office's phone number stands alone, so that it can become a link. */
        public List<String> aroundPhone(String words) {
            List<String> pieces = new ArrayList<>();
            int from = 0;
            for (int at = phone.isBlank() ? -1 : words.indexOf(phone); at >= 0; at = words.indexOf(phone, from)) {
                pieces.add(words.substring(from, at));
                pieces.add(phone);
                from = at + phone.length();
            }
            pieces.add(words.substring(from));
            pieces.removeIf(String::isEmpty);
            return List.copyOf(pieces);
        }
    }
}
