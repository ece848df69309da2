package org.proviso.intake;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
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

    void insert(String electionId, SignatureFiles signatures) {
        OffsetDateTime now = OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC);
        jdbc.batchUpdate("""
                insert into envelope_image (media_type, sha256, content, loaded_at, election_id, envelope_no, kind)
                values (?, ?, ?, ?, ?, ?, 'signature')""", signatures.envelopes(), BATCH, (statement, one) -> {
            setImage(statement, one.image(), now);
            statement.setString(5, electionId);
            statement.setString(6, one.envelopeNo());
        });
        jdbc.batchUpdate("""
                insert into voter_image (media_type, sha256, content, loaded_at, election_id, voter_id, image_no)
                values (?, ?, ?, ?, ?, ?, ?)""", signatures.voters(), BATCH, (statement, one) -> {
            setImage(statement, one.image(), now);
            statement.setString(5, electionId);
            statement.setString(6, one.voterId());
            statement.setInt(7, one.number());
        });
    }

    void insertSignature(String electionId, String envelopeNo, StoredImage image) {
        jdbc.update(
                """
                insert into envelope_image (media_type, sha256, content, loaded_at, election_id, envelope_no, kind)
                values (?, ?, ?, ?, ?, ?, 'signature')""",
                image.mediaType(),
                image.sha256(),
                image.content(),
                OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC),
                electionId,
                envelopeNo);
    }

    private static void setImage(PreparedStatement statement, ImageFile image, OffsetDateTime now) throws SQLException {
        byte[] content = image.content();
        statement.setString(1, image.mediaType());
        statement.setString(2, Sha256.of(content));
        statement.setBytes(3, content);
        statement.setObject(4, now);
    }

    Optional<StoredImage> signature(String electionId, String envelopeNo) {
        return jdbc.query("""
                        select * from envelope_image
                        where election_id = ? and envelope_no = ? and kind = 'signature'""", ImageStore::image, electionId, envelopeNo).stream()
                .findFirst();
    }

    List<StoredImage> exemplars(String electionId, String voterId) {
        return jdbc.query(
                "select * from voter_image where election_id = ? and voter_id = ? order by image_no",
                ImageStore::image,
                electionId,
                voterId);
    }

    private static StoredImage image(ResultSet row, int number) throws SQLException {
        return new StoredImage(row.getString("media_type"), row.getString("sha256"), row.getBytes("content"));
    }
}
