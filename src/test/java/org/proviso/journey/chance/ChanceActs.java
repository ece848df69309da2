package org.proviso.journey.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;

/** Everything that can happen in a play, the frequent acts several times. */
final class ChanceActs {

    final IntakeActs intake;
    final ReviewActs review;
    final BoardActs board;
    final ReleaseActs release;
    final OtherActs other;
    final SensibleActs sensible;
    private final List<Function<Random, Optional<Attempt<?>>>> all = new ArrayList<>();

    ChanceActs(ChanceOffice office) {
        intake = new IntakeActs(office);
        review = new ReviewActs(office);
        board = new BoardActs(office);
        release = new ReleaseActs(office);
        other = new OtherActs(office);
        sensible = new SensibleActs(office, this);
        intake();
        review();
        board();
        release();
        other();
    }

    private void often(int times, Function<Random, Optional<Attempt<?>>> act) {
        for (int i = 0; i < times; i++) {
            all.add(act);
        }
    }

    private void intake() {
        often(5, intake::receive);
        often(5, intake::key);
        often(2, intake::cure);
        often(1, intake::late);
        often(1, intake::correct);
        often(2, intake::correctEnvelope);
        often(1, intake::takeBackCure);
    }

    private void review() {
        often(60, sensible::forACase);
        often(2, review::take);
        often(1, review::giveBack);
        often(1, review::release);
        often(2, review::link);
        often(2, review::linkTwice);
        often(4, review::countTwice);
        often(1, review::clear);
        often(1, review::search);
        often(2, review::answer);
        often(1, review::takeBackAnswer);
        often(2, review::look);
        often(1, review::pollBook);
        often(2, review::putForward);
        often(1, review::research);
        often(1, review::researchAnswer);
        often(3, review::propose);
        often(1, review::withdraw);
        often(4, review::second);
        often(1, review::end);
        often(1, review::receipt);
    }

    private void board() {
        often(50, sensible::forTheBoard);
        often(1, board::call);
        often(1, board::open);
        often(1, board::arrive);
        often(1, board::leave);
        often(1, board::recuse);
        often(1, board::addAll);
        often(1, board::add);
        often(1, board::pullOut);
        often(2, board::move);
        often(1, board::secondMotion);
        often(1, board::put);
        often(4, board::vote);
        often(1, board::withdrawMotion);
        often(2, board::closeVote);
        often(1, board::close);
        often(1, board::reopenSession);
        often(1, board::sendBack);
        often(3, board::reopen);
        often(1, board::reopenEnded);
        often(3, board::followUp);
        often(1, board::official);
    }

    private void release() {
        often(12, sensible::forRelease);
        often(1, release::othersDone);
        often(3, release::make);
        often(3, release::begin);
        often(3, release::record);
        often(1, release::askToDissolve);
        often(1, release::keep);
        often(1, release::dissolve);
        often(1, release::takeOut);
        often(3, release::copy);
        often(2, release::handOff);
    }

    private void other() {
        often(2, other::order);
        often(2, other::changeOrder);
        often(2, other::settleByOrder);
        often(5, other::tell);
        often(1, other::cameBack);
        often(1, other::takeBackNotice);
        often(2, other::newerList);
        often(1, other::confirmList);
        often(3, other::note);
        often(2, other::explain);
        often(2, other::signExplanation);
        often(1, other::takeBackExplanation);
        often(1, other::keepFigures);
        often(1, other::closeElection);
        often(3, other::time);
    }

    int size() {
        return all.size();
    }

    Optional<Attempt<?>> attempt(int which, Random random) {
        return all.get(which).apply(random);
    }
}
