-- Equipment of a room as one document, replaced as one act. The document is canonical JSON (RFC 8785), the digest its SHA-256.
CREATE TABLE equipment_revision (
    room          VARCHAR(32)              NOT NULL,
    revision      INTEGER                  NOT NULL,
    document      VARCHAR(1000000)         NOT NULL,
    digest        VARCHAR(71)              NOT NULL,
    in_force_from TIMESTAMP WITH TIME ZONE NOT NULL,
    installed_by  VARCHAR(120)             NOT NULL,
    CONSTRAINT equipment_revision_number_unique UNIQUE (room, revision),
    CONSTRAINT equipment_revision_number_positive CHECK (revision > 0),
    CONSTRAINT equipment_revision_digest_sha256 CHECK (digest LIKE 'sha256:%')
);

COMMENT ON TABLE equipment_revision IS 'append-only: a past answer must be explained with the equipment of its day';
