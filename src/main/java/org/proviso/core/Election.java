package org.proviso.core;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;

/** One election of one county: its date and zone, the rule pack it is settled under, and the office that settles it. */
public record Election(
        String id,
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
        List<CountyRuling> rulings) {

    /** What kind of election it is. */
    public enum Kind implements Code {
        GENERAL,
        PRIMARY,
        SPECIAL
    }

    /** How many sit on the deciding body, and how many make a quorum. */
    public record DecidingBody(int members, int quorum) {}

    /** Where a voter reaches the office. */
    public record Office(String name, String address, String phone, String email) {}
}
