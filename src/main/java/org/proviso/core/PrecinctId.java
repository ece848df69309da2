package org.proviso.core;

/** A precinct, or one split of it; an unsplit precinct has an empty split. */
public record PrecinctId(String precinct, String split) {

    /** As it reads: {@code precinct 14}, {@code precinct 14 split B}. */
    public String words() {
        return "precinct " + precinct + (split.isEmpty() ? "" : " split " + split);
    }
}
