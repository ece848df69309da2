package org.proviso.roll;

import java.io.Writer;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.files.SetAsideRow;
import org.proviso.files.csv.CsvLine;
import org.proviso.files.csv.CsvOutput;
import org.proviso.files.csv.SetAsideFile;
import org.proviso.files.roll.RollReader;
import org.proviso.roll.aside.MendableRow;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The lists of an election for whoever loads files: those the office holds, and a newer one beside the one in use. */
@Service
public class ListReadService {

    private final SnapshotService snapshots;
    private final SetAsideStore asides;
    private final AccessService access;

    ListReadService(SnapshotService snapshots, SetAsideStore asides, AccessService access) {
        this.snapshots = snapshots;
        this.asides = asides;
        this.access = access;
    }

    /** Reads a file and compares it with the list in use; as {@link SnapshotService#stageSettingAside}. */
    @Transactional
    public StagedList stage(ElectionId electionId, SnapshotKind kind, Path file) {
        access.demand(Permission.LOAD_FILES);
        return snapshots.stageSettingAside(electionId, kind, file);
    }

    /** The lists that the office holds of an election, in use or not. */
    @Transactional(readOnly = true)
    public List<HeldList> held(ElectionId electionId) {
        access.demand(Permission.LOAD_FILES);
        return snapshots.held(electionId);
    }

    /** A list staged earlier, compared again with the one in use now. */
    @Transactional(readOnly = true)
    public StagedList staged(ElectionId electionId, int snapshotNo) {
        access.demand(Permission.LOAD_FILES);
        return snapshots.staged(electionId, snapshotNo);
    }

    /** The first rows of a list that are set aside, in the order of its file. */
    @Transactional(readOnly = true)
    public List<SetAsideRow> firstAside(ElectionId electionId, int snapshotNo, int most) {
        access.demand(Permission.LOAD_FILES);
        return asides.first(electionId, snapshotNo, most);
    }

    /** Every row of a list that is set aside, as a CSV file that a spreadsheet opens safely. */
    @Transactional(readOnly = true)
    public void writeAside(ElectionId electionId, int snapshotNo, Writer to) {
        access.demand(Permission.LOAD_FILES);
        CsvOutput.write(to, SetAsideFile.HEADER.size(), out -> {
            out.row(SetAsideFile.HEADER);
            asides.each(electionId, snapshotNo, row -> out.row(SetAsideFile.forSpreadsheet(row)));
        });
    }

    /** A row that is set aside, ready to be mended by hand; {@code row} is its place among them, from 1. */
    @Transactional(readOnly = true)
    public Optional<MendableRow> toMend(ElectionId electionId, int snapshotNo, int row) {
        access.demand(Permission.LOAD_FILES);
        String header = asides.header(electionId, snapshotNo);
        return asides.row(electionId, snapshotNo, row).map(found -> {
            String hash = asides.find(electionId, snapshotNo).rowsHash();
            return header.isEmpty()
                    ? new MendableRow(found, hash, RollReader.columnNames(), List.of())
                    : new MendableRow(found, hash, CsvLine.cells(header), CsvLine.cells(found.asItCame()));
        });
    }
}
