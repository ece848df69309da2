package org.proviso.access;

/** The data belong to an office that is no demonstration, and the server was started as one. */
final class RealOfficeException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    RealOfficeException() {
        super("The data here belong to an office that was not begun as a demonstration.");
    }
}
