package org.proviso.journey.chance;

import static org.proviso.journey.chance.ChanceOffice.ID;
import static org.proviso.journey.chance.ChanceOffice.pick;
import static org.proviso.journey.chance.ChanceOffice.seen;
import static org.proviso.journey.chance.ChanceOffice.somebody;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.proviso.access.Permission;
import org.proviso.canvass.BalanceExplanation;
import org.proviso.canvass.BalanceResult;
import org.proviso.canvass.BalanceRule;
import org.proviso.canvass.CanvassFigures;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.ExplainBalance;
import org.proviso.canvass.ExplanationService;
import org.proviso.canvass.Figure;
import org.proviso.canvass.NoteFigure;
import org.proviso.canvass.VotingHours;
import org.proviso.core.CourtOrder;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.chain.ChainHead;
import org.proviso.election.RecordedCourtOrder;
import org.proviso.election.orders.CourtOrderRecordService;
import org.proviso.election.orders.CourtOrderService;
import org.proviso.election.orders.RecordCourtOrder;
import org.proviso.notices.DueNotice;
import org.proviso.notices.LogNoticeSent;
import org.proviso.notices.LogReturnedMail;
import org.proviso.notices.Notice;
import org.proviso.notices.NoticeChannel;
import org.proviso.notices.NoticeKind;
import org.proviso.notices.NoticeService;
import org.proviso.notices.NoticeSlipService;
import org.proviso.notices.NoticeSlipService.TakeBackAttempt;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.decide.CourtOrderSettlementService;
import org.proviso.review.news.DeadlineService;
import org.proviso.review.news.NewListResult;
import org.proviso.review.news.NewerFileService;
import org.proviso.review.news.UnconfirmedList;
import org.proviso.roll.SnapshotKind;

/** What supervisors do, and what happens to the office from outside: orders, lists, letters, figures, time. */
final class OtherActs {

    private static final List<Figure> NOTED =
            Stream.of(Figure.values()).filter(Figure::isNoted).toList();

    private final ChanceOffice office;

    OtherActs(ChanceOffice office) {
        this.office = office;
    }

    /** An order about one or two envelopes, now and then about all. */
    Optional<Attempt<?>> order(Random random) {
        CourtOrder.Kind kind = pick(random, List.of(CourtOrder.Kind.values()));
        Set<EnvelopeNumber> named = new TreeSet<>();
        named.add(pick(random, office.cases()).key().envelopeNo());
        if (random.nextInt(3) == 0) {
            named.add(pick(random, office.cases()).key().envelopeNo());
        }
        boolean all = random.nextInt(12) == 0 && (kind == CourtOrder.Kind.HOLD || kind == CourtOrder.Kind.PRESERVE);
        RecordCourtOrder order = new RecordCourtOrder(
                ID,
                kind,
                "Tamarack County Circuit Court",
                office.now().toLocalDate(),
                "Some envelopes",
                random.nextInt(5) == 0 ? CourtOrder.Status.PENDING : CourtOrder.Status.IN_FORCE,
                kind == CourtOrder.Kind.EXTEND ? office.now().toLocalDate().atTime(21, 0) : null,
                all ? Set.of() : named);
        return Optional.of(Attempt.of(
                somebody(random, Permission.RECORD_ORDERS),
                Permission.RECORD_ORDERS,
                "records an order to " + kind.code() + " " + order.envelopeNos(),
                () -> office.the(CourtOrderRecordService.class).record(order)));
    }

    List<RecordedCourtOrder> orders() {
        return office.the(CourtOrderService.class).all(ID);
    }

    Optional<Attempt<?>> changeOrder(Random random) {
        List<RecordedCourtOrder> orders = orders();
        if (orders.isEmpty()) {
            return Optional.empty();
        }
        RecordedCourtOrder order = pick(random, orders);
        return Optional.of(changed(
                somebody(random, Permission.RECORD_ORDERS),
                order,
                seen(random, order.version()),
                pick(random, List.of(CourtOrder.Status.values()))));
    }

    Attempt<?> changed(String who, RecordedCourtOrder order, Attempt.Version version, CourtOrder.Status standing) {
        return Attempt.of(
                        who,
                        Permission.RECORD_ORDERS,
                        "records that order " + order.orderNo() + " is " + standing.code(),
                        () -> office.the(CourtOrderRecordService.class)
                                .change(ID, order.orderNo(), version.number(), standing))
                .with(version);
    }

    Optional<Attempt<?>> settleByOrder(Random random) {
        List<RecordedCourtOrder> orders = orders();
        if (orders.isEmpty()) {
            return Optional.empty();
        }
        RecordedCourtOrder order = pick(random, orders);
        List<EnvelopeNumber> named =
                order.order().envelopeNos().stream().sorted().toList();
        EnvelopeCase found =
                named.isEmpty() ? pick(random, office.cases()) : office.now(ChanceOffice.key(pick(random, named)));
        return Optional.of(
                settled(somebody(random, Permission.RECORD_ORDERS), found, seen(random, found.version()), order));
    }

    Attempt<?> settled(String who, EnvelopeCase found, Attempt.Version version, RecordedCourtOrder order) {
        Figure before = new BoardActs(office).ends().get(found.key().envelopeNo());
        return Attempt.of(
                        who,
                        Permission.RECORD_ORDERS,
                        "settles " + found.key().envelopeNo() + " as order " + order.orderNo() + " says",
                        () -> office.the(CourtOrderSettlementService.class)
                                .settle(found.key(), version.number(), order.orderNo()))
                .with(version)
                .ofTwoPeople()
                .then(now -> office.figures()
                        .settled(before, now.countedPerson() == null ? Figure.REJECTED : Figure.COUNTED));
    }

    /** The order that says how a case is settled, while it binds. */
    Optional<RecordedCourtOrder> binding(EnvelopeCase found) {
        return orders().stream()
                .filter(order -> order.order().settles(found.key().envelopeNo()))
                .findFirst();
    }

    private List<DueNotice> due() {
        return office.read("carl", () -> office.the(NoticeService.class).due(ID));
    }

    Optional<Attempt<?>> tell(Random random) {
        List<DueNotice> due = due();
        if (due.isEmpty()) {
            return Optional.empty();
        }
        Notice notice = pick(random, due).notice();
        Permission needs =
                notice.kind() == NoticeKind.ASK ? Permission.PRINT_CURE_LETTERS : Permission.PRINT_OUTCOME_LETTERS;
        Attempt.Version version = seen(random, notice.version());
        LogNoticeSent sent = new LogNoticeSent(
                notice.key(),
                notice.number(),
                version.number(),
                pick(random, List.of(NoticeChannel.values())),
                office.now().minusMinutes(random.nextInt(90) - 5L));
        return Optional.of(Attempt.of(
                        somebody(random, needs),
                        needs,
                        "logs notice " + notice.number() + " of " + notice.key().envelopeNo(),
                        () -> office.the(NoticeService.class).logSent(sent))
                .with(version));
    }

    Optional<Attempt<?>> cameBack(Random random) {
        EnvelopeCase found = pick(random, office.cases());
        NoticeService notices = office.the(NoticeService.class);
        return office.read("carl", () -> notices.notices(found.key())).stream()
                .filter(Notice::isSent)
                .findFirst()
                .map(notice -> {
                    Permission needs = notice.kind() == NoticeKind.ASK
                            ? Permission.PRINT_CURE_LETTERS
                            : Permission.PRINT_OUTCOME_LETTERS;
                    Attempt.Version version = seen(random, notice.version());
                    return Attempt.of(
                                    somebody(random, needs),
                                    needs,
                                    "logs that a notice to " + found.key().envelopeNo() + " came back",
                                    () -> notices.logCameBack(new LogReturnedMail(
                                            notice.key(), notice.number(), version.number(), 1, office.now())))
                            .with(version);
                });
    }

    /** The first attempt was logged by mistake, or its mail never came back. */
    Optional<Attempt<?>> takeBackNotice(Random random) {
        EnvelopeCase found = pick(random, office.cases());
        boolean mail = random.nextInt(3) == 0;
        NoticeSlipService slips = office.the(NoticeSlipService.class);
        return office.read("carl", () -> office.the(NoticeService.class).notices(found.key())).stream()
                .filter(Notice::isSent)
                .findFirst()
                .map(notice -> {
                    Permission needs = notice.kind() == NoticeKind.ASK
                            ? Permission.PRINT_CURE_LETTERS
                            : Permission.PRINT_OUTCOME_LETTERS;
                    Attempt.Version version = seen(random, notice.version());
                    TakeBackAttempt slip =
                            new TakeBackAttempt(notice.key(), notice.number(), version.number(), 1, "Another letter.");
                    return Attempt.of(
                                    somebody(random, needs),
                                    needs,
                                    "takes back what was logged of a notice to "
                                            + found.key().envelopeNo(),
                                    () -> mail ? slips.takeBackCameBack(slip) : slips.takeBackSent(slip))
                            .with(version);
                });
    }

    /** The mail-ballot office, or the registrar, sends a newer list in which a few voters are otherwise. */
    Optional<Attempt<?>> newerList(Random random) {
        boolean roll = random.nextBoolean();
        SnapshotKind kind = roll ? SnapshotKind.ROLL : SnapshotKind.MAIL_BALLOTS;
        Path file = written(random, roll ? "roll.csv" : "mail-ballots.csv");
        return Optional.of(Attempt.of(
                        somebody(random, Permission.LOAD_FILES),
                        Permission.LOAD_FILES,
                        "brings a newer list " + kind.code(),
                        () -> result(office.the(NewerFileService.class).load(ID, kind, file)))
                .entered(result -> !(result instanceof NewListResult.NothingNew)));
    }

    private static ActResult<NewListResult> result(NewListResult brought) {
        return brought instanceof NewListResult.Refused refused
                ? ActResult.refused(refused.refusal())
                : ActResult.accepted(brought);
    }

    private Path written(Random random, String name) {
        try {
            List<String> lines = Files.readAllLines(office.election().file(name)).stream()
                    .map(line -> random.nextInt(25) == 0 ? otherwise(random, line) : line)
                    .toList();
            Path folder = Files.createDirectories(
                    office.election().folder().resolveSibling("newer").resolve(String.valueOf(random.nextLong())));
            return Files.write(folder.resolve(name), lines);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String otherwise(Random random, String line) {
        return line.replace(",returned,", random.nextBoolean() ? ",accepted," : ",void,")
                .replace(",active,", random.nextBoolean() ? ",cancelled," : ",inactive,");
    }

    Optional<Attempt<?>> confirmList(Random random) {
        List<UnconfirmedList> waiting =
                office.read("carl", () -> office.the(NewerFileService.class).waiting(ID));
        return waiting.isEmpty()
                ? Optional.empty()
                : Optional.of(Attempt.of(
                                somebody(random, Permission.LOAD_FILES),
                                Permission.LOAD_FILES,
                                "confirms list " + waiting.get(0).snapshotNo(),
                                () -> result(office.the(NewerFileService.class)
                                        .confirm(ID, waiting.get(0).snapshotNo())))
                        .entered(result -> !(result instanceof NewListResult.NothingNew))
                        .ofTwoPeople());
    }

    List<CanvassFigures> accounts() {
        return office.read("carl", () -> office.the(CanvassService.class).accounts(ID));
    }

    Optional<Attempt<?>> note(Random random) {
        CanvassFigures accounts = pick(random, accounts());
        List<String> places = Stream.concat(
                        accounts.locations().keySet().stream().sorted(), Stream.of(CanvassService.COUNTY))
                .toList();
        Figure figure = random.nextInt(10) == 0 ? pick(random, List.of(Figure.values())) : pick(random, NOTED);
        return Optional.of(noted(
                somebody(random, Permission.CLOSE_ELECTION),
                pick(random, places),
                accounts.hours(),
                figure,
                random.nextInt(4)));
    }

    Attempt<?> noted(String who, String place, VotingHours hours, Figure figure, int number) {
        return Attempt.of(
                who,
                Permission.CLOSE_ELECTION,
                "notes that " + place + " " + figure.words(number) + " (" + hours.code() + ")",
                () -> office.the(CanvassService.class)
                        .noteFigure(new NoteFigure(ID, place, hours, figure, number, "Counted by hand.")));
    }

    /** Any total, whether or not it agrees. */
    Optional<Attempt<?>> explain(Random random) {
        List<BalanceResult> all =
                office.read("carl", () -> office.the(CanvassService.class).balances(ID, List.of(BalanceRule.values())));
        List<BalanceResult> off =
                all.stream().filter(balance -> !balance.isSettled()).toList();
        return Optional.of(
                explained(somebody(random, Permission.CLOSE_ELECTION), pick(random, off.isEmpty() ? all : off)));
    }

    Attempt<?> explained(String who, BalanceResult balance) {
        Integer by = balance instanceof BalanceResult.Differs differs ? differs.by() : null;
        ExplainBalance asked =
                new ExplainBalance(ID, balance.where(), balance.identity(), by, "It was seen by two people.");
        return Attempt.of(
                who,
                Permission.CLOSE_ELECTION,
                "explains: " + balance.words(),
                () -> office.the(ExplanationService.class).explain(asked));
    }

    List<BalanceExplanation> explanations() {
        return office.read("carl", () -> office.the(ExplanationService.class).standing(ID)).stream()
                .map(ExplanationService.Signed::explanation)
                .toList();
    }

    Optional<Attempt<?>> signExplanation(Random random) {
        List<BalanceExplanation> all = explanations();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        BalanceExplanation one = pick(random, all);
        return Optional.of(signed(somebody(random, Permission.CLOSE_ELECTION), one, seen(random, one.version())));
    }

    Attempt<?> signed(String who, BalanceExplanation one, Attempt.Version version) {
        return Attempt.of(
                        who,
                        Permission.CLOSE_ELECTION,
                        "signs explanation " + one.number(),
                        () -> office.the(ExplanationService.class).sign(ID, one.number(), version.number()))
                .with(version)
                .ofTwoPeople();
    }

    Optional<Attempt<?>> takeBackExplanation(Random random) {
        List<BalanceExplanation> all = explanations();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        BalanceExplanation one = pick(random, all);
        Attempt.Version version = seen(random, one.version());
        return Optional.of(Attempt.of(
                        somebody(random, Permission.CLOSE_ELECTION),
                        Permission.CLOSE_ELECTION,
                        "takes back explanation " + one.number(),
                        () -> office.the(ExplanationService.class).takeBack(ID, one.number(), version.number()))
                .with(version));
    }

    Optional<Attempt<?>> keepFigures(Random random) {
        return Optional.of(Attempt.of(
                somebody(random, Permission.CLOSE_ELECTION),
                Permission.CLOSE_ELECTION,
                "keeps the figures of the day",
                () -> office.the(CanvassService.class).keepDailyFigures(ID, Map.of())));
    }

    Optional<Attempt<?>> closeElection(Random random) {
        return Optional.of(electionClosed(somebody(random, Permission.CLOSE_ELECTION)));
    }

    Attempt<ChainHead> electionClosed(String who) {
        return Attempt.of(
                who,
                Permission.CLOSE_ELECTION,
                "closes the election",
                () -> office.the(CanvassService.class).closeElection(ID));
    }

    /** Hours pass, and with them deadlines. */
    Optional<Attempt<?>> time(Random random) {
        return Optional.of(passed(1 + random.nextInt(10)));
    }

    Attempt<?> passed(int hours) {
        return Attempt.of(
                        ChanceOffice.permitted(Permission.SET_GATES).get(0),
                        Permission.SET_GATES,
                        hours + " hours pass",
                        () -> {
                            office.clock(office.now().plusHours(hours));
                            return ActResult.accepted(
                                    office.the(DeadlineService.class).recordPassedDeadlines(ID));
                        })
                .entered(any -> false);
    }
}
