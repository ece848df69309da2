package org.proviso.sample.county;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** Someone who lives in the county, on its roll or not; the roll line is kept beside the facts it is written from. */
public final class Resident {

    /** What somebody easily mistaken for this person is to them. */
    public enum Kin {
        TWIN,
        SENIOR,
        JUNIOR,
        PARENT,
        CHILD,
        LIKE_NAME
    }

    public String last;
    public String first;
    public String middle = "";
    public String suffix = "";
    public final boolean woman;
    public final LocalDate born;
    public final Dwelling home;
    public final long hand;
    public final FileRow roll = new FileRow(FileColumns.ROLL);

    @Nullable
    public Resident kin;

    @Nullable
    public Kin kinIs;

    public boolean used;

    Resident(String last, String first, boolean woman, LocalDate born, Dwelling home, long hand) {
        this.last = last;
        this.first = first;
        this.woman = woman;
        this.born = born;
        this.home = home;
        this.hand = hand;
    }

    /** Names two people as easily mistaken for one another: the first sees the second as that kin. */
    public static void alike(Resident first, Kin firstSees, Resident second, Kin secondSees) {
        first.kin = second;
        first.kinIs = firstSees;
        second.kin = first;
        second.kinIs = secondSees;
    }

    public String voterId() {
        return roll.get("voter_id");
    }

    public String party() {
        return roll.get("party");
    }

    public int ageOn(LocalDate day) {
        return born.until(day).getYears();
    }

    /** Writes name and residence on the roll line; the birth date stays where a scenario has already set one. */
    public void enroll() {
        roll.set("last_name", last)
                .set("first_name", first)
                .set("middle_name", middle)
                .set("suffix", suffix);
        if (roll.blank("date_of_birth")) {
            roll.set("date_of_birth", born);
        }
        roll.set("house_number", home.number()).set("street", home.street()).set("unit", home.unit());
        roll.set("city", home.part().city()).set("zip", home.part().zip());
        roll.set("precinct", home.part().precinct()).set("split", home.part().split());
    }
}
