package org.proviso.sample.county;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.proviso.core.Contest;

/** Contests and ballot styles of one election; a primary has one style for each area and party, and one for no party. */
public final class BallotStyles {

    private final List<String> parties;
    private final List<Contest> contests = new ArrayList<>();
    private final Map<String, String> partyOfContest = new TreeMap<>();
    private final Map<String, List<String>> contestsOfStyle = new TreeMap<>();
    private final Map<String, String> partyOfStyle = new TreeMap<>();

    /** In a general election the list of parties holds the empty one alone. */
    BallotStyles(List<Area> areas, List<String> parties) {
        this.parties = parties;
        WordList.lines("contests.txt").forEach(line -> read(line.split("\\|")));
        for (Area area : areas) {
            parties.forEach(party -> lay(area, party));
        }
    }

    private void read(String[] cells) {
        boolean primary = parties.size() > 1;
        if (primary && cells[4].equals("general")) {
            return;
        }
        boolean split = primary && cells[4].equals("partisan");
        for (String party : split ? parties : List.of("")) {
            if (split && party.isEmpty()) {
                continue;
            }
            String id = party.isEmpty() ? cells[0] : cells[0] + "-" + party.toLowerCase(Locale.ROOT);
            String title = party.isEmpty() ? cells[1] : cells[1] + " (" + party + ")";
            contests.add(new Contest(id, title, cells[2], Contest.Level.valueOf(cells[3].toUpperCase(Locale.ROOT))));
            partyOfContest.put(id, party);
        }
    }

    private void lay(Area area, String party) {
        List<String> ids = contests.stream()
                .filter(contest -> area.districts().contains(contest.district()))
                .map(Contest::contestId)
                .filter(id -> partyOfContest.get(id).isEmpty()
                        || partyOfContest.get(id).equals(party))
                .toList();
        contestsOfStyle.put(style(area, party), ids);
        partyOfStyle.put(style(area, party), party);
    }

    String style(Area area, String party) {
        if (parties.size() == 1) {
            return area.style();
        }
        return area.style() + "-" + (party.isEmpty() ? "N" : party.substring(0, 1));
    }

    List<String> parties() {
        return parties;
    }

    /** The contests that stand on both styles, in ballot order. */
    public List<String> common(String cast, String right) {
        return contestsOfStyle.get(cast).stream()
                .filter(contestsOfStyle.get(right)::contains)
                .toList();
    }

    /** Whether a ballot of the cast style holds a contest that the right style does not have. */
    public boolean exceeds(String cast, String right) {
        return common(cast, right).size() < contestsOfStyle.get(cast).size();
    }

    public boolean federal(String contestId) {
        return contests.stream()
                .anyMatch(contest -> contest.contestId().equals(contestId) && contest.level() == Contest.Level.FEDERAL);
    }

    public List<FileRow> contestRows() {
        return contests.stream()
                .map(contest -> new FileRow(FileColumns.CONTESTS)
                        .set("contest_id", contest.contestId())
                        .set("title", contest.title())
                        .set("district", contest.district())
                        .set("level", contest.level().code()))
                .toList();
    }

    public List<FileRow> styleRows() {
        List<FileRow> rows = new ArrayList<>();
        contestsOfStyle.forEach((style, ids) -> ids.forEach(id -> rows.add(new FileRow(FileColumns.STYLES)
                .set("ballot_style", style)
                .set("contest_id", id)
                .set("party", partyOfStyle.get(style)))));
        return rows;
    }
}
