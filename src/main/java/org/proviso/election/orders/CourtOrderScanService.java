package org.proviso.election.orders;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.chain.Sha256;
import org.proviso.election.CourtOrderStore;
import org.proviso.election.ElectionService;
import org.proviso.election.RecordedCourtOrder;
import org.proviso.files.election.PaperFile;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Scans of court orders, kept by those who record orders, and shown to those who see cases too. */
@Service
public class CourtOrderScanService {

    private final CourtOrderScanStore scans;
    private final CourtOrderStore orders;
    private final ElectionService elections;
    private final AccessService access;
    private final ActDoor door;

    CourtOrderScanService(
            CourtOrderScanStore scans,
            CourtOrderStore orders,
            ElectionService elections,
            AccessService access,
            ActDoor door) {
        this.scans = scans;
        this.orders = orders;
        this.elections = elections;
        this.access = access;
        this.door = door;
    }

    /** The scans of an election's orders, without their bytes. */
    @Transactional(readOnly = true)
    public List<CourtOrderScan> scans(ElectionId electionId) {
        demandReader();
        return scans.all(electionId);
    }

    /** One of them; empty where there is none. */
    @Transactional(readOnly = true)
    public Optional<KeptPaper> scan(ElectionId electionId, int orderNo, int number) {
        demandReader();
        return scans.find(electionId, orderNo, number);
    }

    /**
     * Keeps a scan of an order on file. What is neither a PDF nor a picture, or is too large, is an
     * {@link org.proviso.files.InputException}; where there is no such order, {@link IllegalArgumentException}.
     */
    @Transactional
    public ActResult<CourtOrderScan> keep(ElectionId electionId, int orderNo, String fileName, byte[] content) {
        ActDoor.Permitted supervisor = door.demand(Permission.RECORD_ORDERS);
        String sha256 = Sha256.of(content);
        return supervisor
                .lock(() -> onFile(electionId, orderNo))
                .refuse(order -> elections.closed(electionId))
                .refuse(order -> Refusal.when(
                        scans.has(electionId, orderNo, sha256),
                        Refusal.Why.NOTHING_NEW,
                        "This very file is kept with order " + orderNo + " already."))
                .save(order -> scans.insert(
                        electionId,
                        orderNo,
                        new KeptPaper(PaperFile.checkedType(fileName, content), sha256, content),
                        supervisor.user().userName()))
                .record(scan -> LedgerLine.of(
                        LedgerChain.of(electionId),
                        "order_scan_kept",
                        "order-" + orderNo,
                        Map.of("scan", scan.number(), "sha256", sha256)));
    }

    private RecordedCourtOrder onFile(ElectionId electionId, int orderNo) {
        return orders.all(electionId.value()).stream()
                .filter(order -> order.orderNo() == orderNo)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no order " + orderNo + " on file."));
    }

    private void demandReader() {
        if (!access.isPermitted(Permission.RECORD_ORDERS) && !access.isPermitted(Permission.PROPOSE)) {
            access.demand(Permission.SEE_WHOLE_CASE);
        }
    }
}
