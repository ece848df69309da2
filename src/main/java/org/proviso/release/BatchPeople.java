package org.proviso.release;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.proviso.access.OfficeUser;
import org.proviso.access.StaffList;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.springframework.stereotype.Component;

/** Names those who opened a batch and remade its sheets. */
@Component
class BatchPeople {

    private final BatchStore batches;
    private final RemakeSheetStore sheets;
    private final StaffList staff;

    BatchPeople(BatchStore batches, RemakeSheetStore sheets, StaffList staff) {
        this.batches = batches;
        this.sheets = sheets;
        this.staff = staff;
    }

    /** Their full names; whoever has no account any more is left out. */
    Map<UserName, String> of(ElectionId electionId, int batchNo) {
        Batch batch = batches.known(electionId, batchNo);
        Map<UserName, String> names = new HashMap<>();
        Stream.concat(
                        Stream.of(
                                batch.firstOpener(),
                                UserName.orNull(batch.secondOpener()),
                                batch.dissolveAskedBy(),
                                batch.dissolvedBy()),
                        sheets.of(electionId, batchNo).stream()
                                .flatMap(
                                        sheet -> Stream.of(sheet.firstCopier(), UserName.orNull(sheet.secondCopier()))))
                .filter(Objects::nonNull)
                .distinct()
                .forEach(userName -> staff.user(userName)
                        .map(OfficeUser::fullName)
                        .ifPresent(fullName -> names.put(userName, fullName)));
        return names;
    }
}
