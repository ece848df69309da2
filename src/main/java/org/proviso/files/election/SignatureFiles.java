package org.proviso.files.election;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.VoterId;
import org.proviso.files.InputException;

/**
 * The pictures of signatures in an election folder: those that {@code envelopes.csv} names in {@code signature_image},
 * and those on file with registrations, in {@code signatures/roll} as {@code <voter id>-<number>.png} (or jpg, jpeg).
 * Each is looked at before one is handed out; contents are read only when asked for.
 */
public record SignatureFiles(List<EnvelopeSignature> envelopes, List<RollSignature> voters) {

    private static final String ROLL = "signatures/roll";
    private static final Pattern EXEMPLAR = Pattern.compile("(.{1,60})-([0-9]{1,4})\\.(png|jpg|jpeg)");

    /** The signature on an affirmation. */
    public record EnvelopeSignature(EnvelopeNumber envelopeNo, ImageFile image) {}

    /** A signature on file; one voter's are numbered. */
    public record RollSignature(VoterId voterId, int number, ImageFile image) {}

    /** Finds and checks them all, or throws the first {@link InputException} and gives nothing. */
    public static SignatureFiles of(Path folder, List<Envelope> envelopes) {
        return new SignatureFiles(named(folder, envelopes), voters(folder));
    }

    /** The same of the envelopes alone. */
    static SignatureFiles ofEnvelopes(Path folder, List<Envelope> envelopes) {
        return new SignatureFiles(named(folder, envelopes), List.of());
    }

    /** Of these envelopes only. */
    public SignatureFiles of(List<Envelope> some) {
        Set<EnvelopeNumber> numbers = some.stream().map(Envelope::envelopeNo).collect(Collectors.toSet());
        return new SignatureFiles(
                envelopes.stream()
                        .filter(signature -> numbers.contains(signature.envelopeNo()))
                        .toList(),
                voters);
    }

    private static List<EnvelopeSignature> named(Path folder, List<Envelope> envelopes) {
        List<EnvelopeSignature> found = new ArrayList<>();
        for (Envelope envelope : envelopes) {
            String name = envelope.handling().signatureImage();
            if (!name.isEmpty()) {
                found.add(new EnvelopeSignature(envelope.envelopeNo(), ImageFile.in(folder, name)));
            }
        }
        return List.copyOf(found);
    }

    private static List<RollSignature> voters(Path folder) {
        Path roll = folder.resolve(ROLL);
        if (!Files.isDirectory(roll)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(roll)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.startsWith("."))
                    .sorted()
                    .map(name -> exemplar(folder, name))
                    .toList();
        } catch (IOException e) {
            throw new InputException(ROLL, 0, "", "cannot be read: " + e);
        }
    }

    private static RollSignature exemplar(Path folder, String name) {
        String path = ROLL + "/" + name;
        Matcher parts = EXEMPLAR.matcher(name);
        if (!parts.matches()) {
            throw new InputException(path, 0, "", "does not carry its voter's ID (name it like T1010941-1.png)");
        }
        return new RollSignature(
                new VoterId(parts.group(1)), Integer.parseInt(parts.group(2)), ImageFile.in(folder, path));
    }
}
