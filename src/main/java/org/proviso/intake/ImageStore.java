package org.proviso.intake;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.VoterId;
import org.proviso.core.chain.Sha256;
import org.proviso.files.election.ImageFile;
import org.proviso.files.election.SignatureFiles;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;

/** The tables of pictures; contents are read from their files one batch at a time. */
@Repository
class ImageStore {

    private static final int BATCH = 20;

    private final JdbcTemplate jdbc;
    private final Clock clock;

    ImageStore(JdbcTemplate jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    void insert(ElectionId electionId, SignatureFiles signatures) {
        OffsetDateTime now = OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC);
        jdbc.batchUpdate("""
                insert into envelope_image (media_type, sha256, content, loaded_at, election_id, envelope_no, kind)
                values (?, ?, ?, ?, ?, ?, 'signature')""", signatures.envelopes(), BATCH, (statement, signature) -> {
            setImage(statement, signature.image(), now);
            statement.setString(5, electionId.value());
            statement.setString(6, signature.envelopeNo().value());
        });
        jdbc.batchUpdate("""
                insert into voter_image (media_type, sha256, content, loaded_at, election_id, voter_id, image_no)
                values (?, ?, ?, ?, ?, ?, ?)""", signatures.voters(), BATCH, (statement, signature) -> {
            setImage(statement, signature.image(), now);
            statement.setString(5, electionId.value());
            statement.setString(6, signature.voterId().value());
            statement.setInt(7, signature.number());
        });
    }

    void insertSignature(ElectionId electionId, EnvelopeNumber envelopeNo, StoredImage image) {
        jdbc.update(
                """
                insert into envelope_image (media_type, sha256, content, loaded_at, election_id, envelope_no, kind)
                values (?, ?, ?, ?, ?, ?, 'signature')""",
                image.mediaType(),
                image.sha256(),
                image.content(),
                OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC),
                electionId.value(),
                envelopeNo.value());
    }

    private static void setImage(PreparedStatement statement, ImageFile image, OffsetDateTime now) throws SQLException {
        byte[] content = image.content();
        statement.setString(1, image.mediaType());
        statement.setString(2, Sha256.of(content));
        statement.setBytes(3, content);
        statement.setObject(4, now);
    }

    Optional<StoredImage> signature(ElectionId electionId, EnvelopeNumber envelopeNo) {
        return jdbc.query("""
                        select * from envelope_image
                        where election_id = ? and envelope_no = ? and kind = 'signature'""", ImageStore::image, electionId.value(), envelopeNo.value()).stream()
                .findFirst();
    }

    List<StoredImage> exemplars(ElectionId electionId, VoterId voterId) {
        return jdbc.query(
                "select * from voter_image where election_id = ? and voter_id = ? order by image_no",
                ImageStore::image,
                electionId.value(),
                voterId.value());
    }

    private static StoredImage image(ResultSet row, int number) throws SQLException {
        return new StoredImage(row.getString("media_type"), row.getString("sha256"), row.getBytes("content"));
    }
}
