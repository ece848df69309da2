package org.proviso.core.matching;

/** Compares an envelope's person with the roll's voters field by field. For one thread: it remembers name pairs. */
final class Comparer {

    private static final SurnameGrade[] SURNAMES = SurnameGrade.values();
    private static final GivenGrade[] GIVENS = GivenGrade.values();

    private final RollIndex index;
    private final RollColumns columns;
    private final NamePairs surnames;
    private final NamePairs givens;

    Comparer(RollIndex index) {
        this.index = index;
        this.columns = index.columns();
        surnames = new NamePairs(
                index.words().surnames(),
                index.size(),
                (a, b, common) -> SurnameGrade.of(a, b, common).ordinal());
        givens = new NamePairs(
                index.words().givens(),
                index.size(),
                (a, b, common) -> GivenGrade.of(a, b, common).ordinal());
    }

    Comparison compare(Claim claim, int voter) {
        SurnameGrade surname = surname(claim, voter);
        GivenGrade given = given(claim, voter);
        if (given.compareTo(GivenGrade.SWAPPED) > 0 && surname.compareTo(SurnameGrade.SWAPPED) > 0) {
            if (isSwapped(claim, voter)) {
                surname = SurnameGrade.SWAPPED;
                given = GivenGrade.SWAPPED;
            }
        }
        AddressGrade home = address(claim.home(), claim.zip(), voter);
        AddressGrade former = address(claim.formerHome(), claim.formerZip(), voter);
        boolean byFormer = former.compareTo(home) < 0 && former.compareTo(AddressGrade.SAME_STREET) <= 0;
        return new Comparison(
                voter,
                surname,
                given,
                middle(claim, voter, surname, given),
                SuffixGrade.of(claim.name().suffix(), columns.suffix(voter)),
                DateGrade.of(claim.birth(), columns.birth(voter)),
                NumberGrade.of(claim.last4(), columns.last4(voter)),
                LicenseGrade.of(claim.license(), columns.license(voter)),
                byFormer ? former : home,
                byFormer);
    }

    private SurnameGrade surname(Claim claim, int voter) {
        int code = columns.surname(voter);
        SurnameGrade plain = SURNAMES[surnames.grade(claim.name().surname(), code)];
        if (plain == SurnameGrade.EXACT) {
            return plain;
        }
        SurnameGrade other = isFormer(claim, voter) ? SurnameGrade.FORMER : plain;
        return other.compareTo(plain) < 0 ? other : plain;
    }

    /** A former name on either paper, or a maiden name kept as a middle name. */
    private boolean isFormer(Claim claim, int voter) {
        String surname = claim.name().surname();
        String onRoll = index.words().surnames().text(columns.surname(voter));
        String rollFormer = index.words().surnames().text(columns.former(voter));
        String rollMiddle = index.words().middles().text(columns.middle(voter));
        return same(claim.formerSurname(), onRoll)
                || same(surname, rollFormer)
                || same(claim.formerSurname(), rollFormer)
                || same(claim.name().middle(), onRoll)
                || same(surname, rollMiddle);
    }

    private static boolean same(String a, String b) {
        return a.length() > 2 && NameText.joined(a).equals(NameText.joined(b));
    }

    private GivenGrade given(Claim claim, int voter) {
        GivenGrade plain = GIVENS[givens.grade(claim.name().given(), columns.given(voter))];
        if (plain.compareTo(GivenGrade.SHORT) < 0 || plain == GivenGrade.UNKNOWN) {
            return plain;
        }
        String given = index.words().givens().text(columns.given(voter));
        String middle = index.words().middles().text(columns.middle(voter));
        if (isJoined(claim.name().given(), claim.name().middle(), given)
                || isJoined(given, middle, claim.name().given())) {
            return GivenGrade.EXACT;
        }
        boolean byMiddle = goesBy(claim.name().given(), middle)
                || goesBy(given, claim.name().middle());
        return byMiddle ? GivenGrade.MIDDLE : plain;
    }

    /** Mary Ann on one paper, Maryann on the other. */
    private static boolean isJoined(String given, String middle, String whole) {
        return !middle.isEmpty()
                && whole.length() > given.length()
                && whole.startsWith(given)
                && whole.equals(given + NameText.words(middle).get(0));
    }

    private static boolean goesBy(String given, String middle) {
        return given.length() > 1
                && middle.length() > 1
                && (given.equals(middle)
                        || Nicknames.kin(given, middle)
                        || NameText.words(middle).contains(given));
    }

    private boolean isSwapped(Claim claim, int voter) {
        String surname = index.words().surnames().text(columns.surname(voter));
        String given = index.words().givens().text(columns.given(voter));
        GivenGrade asGiven = GivenGrade.of(claim.name().surname(), given, false);
        return SurnameGrade.of(claim.name().given(), surname, false).compareTo(SurnameGrade.SOUNDS) <= 0
                && asGiven.compareTo(GivenGrade.SOUNDS) <= 0
                && asGiven != GivenGrade.INITIAL;
    }

    /** Where a middle name already served as a given name or surname it says nothing more. */
    private MiddleGrade middle(Claim claim, int voter, SurnameGrade surname, GivenGrade given) {
        boolean used = surname == SurnameGrade.FORMER || surname == SurnameGrade.SWAPPED || given == GivenGrade.MIDDLE;
        return used
                ? MiddleGrade.UNKNOWN
                : MiddleGrade.of(claim.name().middle(), index.words().middles().text(columns.middle(voter)));
    }

    private AddressGrade address(StreetAddress claimed, int zip, int voter) {
        StreetAddress onRoll = new StreetAddress(
                columns.house(voter),
                "",
                index.words().streets().text(columns.street(voter)),
                index.words().doors().text(columns.door(voter)));
        return AddressGrade.of(claimed, zip, onRoll, columns.zip(voter));
    }
}
