package org.proviso.core.adjudication;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.adjudication.questions.AskClock;
import org.proviso.core.contests.ContestPolicy;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Consequence;
import org.proviso.core.rules.Consequence.Does;
import org.proviso.core.rules.Reason;

/** One answer of each kind that the fold tells apart, by a short name. */
public final class FoldAnswers {

    public static final Map<String, Answer> BY_NAME = new LinkedHashMap<>();

    static {
        BY_NAME.put("clear", new Answer.Clear("Yes", List.of()));
        BY_NAME.put("not_asked", new Answer.NotAsked("no party ballot"));
        BY_NAME.put("open", new Answer.Open("something is missing", null, List.of()));
        BY_NAME.put("end", defect(Reason.WITHDRAWN, Does.ADMINISTRATIVE_END, null, null));
        BY_NAME.put("sent_on", defect(Reason.REGISTERED_ELSEWHERE, Does.SENT_ON, null, null));
        BY_NAME.put("reject", defect(Reason.NOT_REGISTERED, Does.REJECT, null, null));
        BY_NAME.put("ran_out", defect(Reason.NO_IDENTIFICATION, Does.REJECT, null, AskClock.OVER));
        BY_NAME.put("waits", defect(Reason.NO_IDENTIFICATION, Does.REJECT, null, AskClock.RUNNING));
        BY_NAME.put("part", part(Reason.WRONG_STYLE, ContestPolicy.SHARED_CONTESTS, null));
        BY_NAME.put("federal", part(Reason.FEDERAL_CONTESTS_ONLY, ContestPolicy.FEDERAL_CONTESTS, null));
        BY_NAME.put("part_waits", part(Reason.WRONG_STYLE, ContestPolicy.SHARED_CONTESTS, AskClock.RUNNING));
        BY_NAME.put("part_ran_out", part(Reason.WRONG_STYLE, ContestPolicy.SHARED_CONTESTS, AskClock.OVER));
        BY_NAME.put("harmless", defect(Reason.OFFICIAL_DID_NOT_SIGN, Does.NONE, null, null));
    }

    private FoldAnswers() {}

    public static List<Answer> answers(String names) {
        return names.isBlank()
                ? List.of()
                : Arrays.stream(names.split(" ")).map(BY_NAME::get).toList();
    }

    /** The same answer when the voter has more time: what ran out still runs. */
    public static Answer withMoreTime(Answer answer) {
        return answer instanceof Answer.Defect defect && defect.ask() == AskClock.OVER
                ? new Answer.Defect(defect.reason(), defect.consequence(), AskClock.RUNNING, List.of())
                : answer;
    }

    /** It rejects and no ask runs, or it cuts the ballot, which may leave nothing of it. */
    public static boolean rejectsForGood(Answer answer) {
        return answer instanceof Answer.Defect defect
                && (defect.consequence().does() == Does.REJECT && defect.isFinal()
                        || defect.consequence().does() == Does.IN_PART);
    }

    public static boolean blocks(Answer answer) {
        if (answer instanceof Answer.Defect defect) {
            Does does = defect.consequence().does();
            return does == Does.REJECT || does == Does.SENT_ON || does == Does.ADMINISTRATIVE_END || !defect.isFinal();
        }
        return answer instanceof Answer.Open;
    }

    private static Answer part(Reason reason, ContestPolicy policy, @Nullable AskClock clock) {
        return defect(reason, Does.IN_PART, policy, clock);
    }

    private static Answer defect(Reason reason, Does does, @Nullable ContestPolicy policy, @Nullable AskClock clock) {
        Ask cure = clock == null ? null : Ask.IDENTIFICATION;
        return new Answer.Defect(reason, new Consequence(does, policy, cure), clock, List.of());
    }
}
