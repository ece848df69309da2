package org.proviso.release;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Batches and what is remade of them, for the figures of the canvass. */
@Service
@BetweenRooms
public class ReleaseFigures {

    private final BatchStore batches;
    private final RemakeSheetStore sheets;

    ReleaseFigures(BatchStore batches, RemakeSheetStore sheets) {
        this.batches = batches;
        this.sheets = sheets;
    }

    @Transactional(readOnly = true)
    public List<Batch> batches(ElectionId electionId) {
        return batches.all(electionId);
    }

    /** What is to be copied in every batch of an election, by batch number. */
    @Transactional(readOnly = true)
    public Map<Integer, List<RemakeSheet>> sheets(ElectionId electionId) {
        return sheets.all(electionId).stream().collect(Collectors.groupingBy(RemakeSheet::batchNo));
    }
}
