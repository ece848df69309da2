package org.proviso.core.adjudication;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.adjudication.questions.AskStatus;
import org.proviso.core.contests.ContestPolicy;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Consequence;
import org.proviso.core.rules.Consequence.Effect;
import org.proviso.core.rules.Reason;

/** One answer of each kind that the fold tells apart, by a short name. */
public final class FoldAnswers {

    public static final Map<String, Answer> BY_NAME = new LinkedHashMap<>();

    static {
        BY_NAME.put("clear", new Answer.Clear("Yes", List.of()));
        BY_NAME.put("not_asked", new Answer.NotAsked("no party ballot"));
        BY_NAME.put("open", new Answer.Open("something is missing", null, List.of()));
        BY_NAME.put("end", defect(Reason.WITHDRAWN, Effect.ADMINISTRATIVE_END, null, null));
        BY_NAME.put("sent_on", defect(Reason.REGISTERED_ELSEWHERE, Effect.SENT_ON, null, null));
        BY_NAME.put("reject", defect(Reason.NOT_REGISTERED, Effect.REJECT, null, null));
        BY_NAME.put("ran_out", defect(Reason.NO_IDENTIFICATION, Effect.REJECT, null, AskStatus.OVER));
        BY_NAME.put("waits", defect(Reason.NO_IDENTIFICATION, Effect.REJECT, null, AskStatus.RUNNING));
        BY_NAME.put("part", part(Reason.WRONG_STYLE, ContestPolicy.SHARED_CONTESTS, null));
        BY_NAME.put("federal", part(Reason.FEDERAL_CONTESTS_ONLY, ContestPolicy.FEDERAL_CONTESTS, null));
        BY_NAME.put("part_waits", part(Reason.WRONG_STYLE, ContestPolicy.SHARED_CONTESTS, AskStatus.RUNNING));
        BY_NAME.put("part_ran_out", part(Reason.WRONG_STYLE, ContestPolicy.SHARED_CONTESTS, AskStatus.OVER));
        BY_NAME.put("harmless", defect(Reason.OFFICIAL_DID_NOT_SIGN, Effect.NONE, null, null));
    }

    private FoldAnswers() {}

    public static List<Answer> answers(String names) {
        return names.isBlank()
                ? List.of()
                : Arrays.stream(names.split(" ")).map(BY_NAME::get).toList();
    }

    /** The same answer when the voter has more time: what ran out still runs. */
    public static Answer withMoreTime(Answer answer) {
        return answer instanceof Answer.Defect defect && defect.ask() == AskStatus.OVER
                ? new Answer.Defect(defect.reason(), defect.consequence(), AskStatus.RUNNING, List.of())
                : answer;
    }

    /** It rejects and no ask runs, or it cuts the ballot, which may leave nothing of it. */
    public static boolean rejectsForGood(Answer answer) {
        return answer instanceof Answer.Defect defect
                && (defect.consequence().does() == Effect.REJECT && defect.isFinal()
                        || defect.consequence().does() == Effect.IN_PART);
    }

    public static boolean blocks(Answer answer) {
        if (answer instanceof Answer.Defect defect) {
            Effect does = defect.consequence().does();
            return does == Effect.REJECT
                    || does == Effect.SENT_ON
                    || does == Effect.ADMINISTRATIVE_END
                    || !defect.isFinal();
        }
        return answer instanceof Answer.Open;
    }

    private static Answer part(Reason reason, ContestPolicy policy, @Nullable AskStatus clock) {
        return defect(reason, Effect.IN_PART, policy, clock);
    }

    private static Answer defect(
            Reason reason, Effect does, @Nullable ContestPolicy policy, @Nullable AskStatus clock) {
        Ask cure = clock == null ? null : Ask.IDENTIFICATION;
        return new Answer.Defect(reason, new Consequence(does, policy, cure), clock, List.of());
    }
}
