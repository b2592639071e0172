-- Versions of each room's chart. The unique number lets exactly one of two rival signatures win.
CREATE TABLE chart_version (
    room          VARCHAR(32)              NOT NULL,
    number        INTEGER                  NOT NULL,
    digest        VARCHAR(71)              NOT NULL,
    title         VARCHAR(120)             NOT NULL,
    reason        VARCHAR(2000)            NOT NULL,
    in_force_from TIMESTAMP WITH TIME ZONE NOT NULL,
    review_due    DATE                     NOT NULL,
    signed_by     BIGINT                   NOT NULL,
    printed_name  VARCHAR(120)             NOT NULL,
    role          VARCHAR(20)              NOT NULL,
    signed_at     TIMESTAMP WITH TIME ZONE NOT NULL,
    meaning       VARCHAR(200)             NOT NULL,
    CONSTRAINT chart_version_number_unique UNIQUE (room, number),
    CONSTRAINT chart_version_number_positive CHECK (number > 0),
    CONSTRAINT chart_version_digest_sha256 CHECK (digest LIKE 'sha256:%'),
    CONSTRAINT chart_version_not_backdated CHECK (in_force_from >= signed_at),
    CONSTRAINT chart_version_signed_by_lead CHECK (role = 'lead'),
    CONSTRAINT chart_version_signed_by_person FOREIGN KEY (signed_by) REFERENCES person (id)
);

COMMENT ON TABLE chart_version IS 'append-only: a version, once signed, never changes';
