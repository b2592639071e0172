-- Proposed changes of charts and where they stand. revision counts every edit and every step: whoever acts names the one they saw.
CREATE TABLE chart_change (
    id                BIGINT GENERATED ALWAYS AS IDENTITY NOT NULL,
    room              VARCHAR(32)              NOT NULL,
    title             VARCHAR(120)             NOT NULL,
    reason            VARCHAR(2000)            NOT NULL,
    base_version      INTEGER                  NOT NULL,
    kind              VARCHAR(10)              NOT NULL,
    reverts_to        INTEGER,
    author            BIGINT                   NOT NULL,
    author_name       VARCHAR(120)             NOT NULL,
    opened_at         TIMESTAMP WITH TIME ZONE NOT NULL,
    revision          INTEGER                  NOT NULL,
    state             VARCHAR(10)              NOT NULL,
    submitted_at      TIMESTAMP WITH TIME ZONE,
    concurred_by      BIGINT,
    concurred_name    VARCHAR(120),
    concurred_at      TIMESTAMP WITH TIME ZONE,
    concurred_impact  VARCHAR(71),
    concurred_on      INTEGER,
    decided_by        BIGINT,
    decided_name      VARCHAR(120),
    decided_at        TIMESTAMP WITH TIME ZONE,
    decided_reason    VARCHAR(4000),
    signed_version    INTEGER,
    second_review_due TIMESTAMP WITH TIME ZONE,
    reviewed_by       BIGINT,
    reviewed_name     VARCHAR(120),
    reviewed_at       TIMESTAMP WITH TIME ZONE,
    review_findings   VARCHAR(4000),
    CONSTRAINT chart_change_pk PRIMARY KEY (id),
    CONSTRAINT chart_change_version_once UNIQUE (room, signed_version),
    CONSTRAINT chart_change_author_known FOREIGN KEY (author) REFERENCES person (id),
    CONSTRAINT chart_change_revision_positive CHECK (revision > 0),
    CONSTRAINT chart_change_kind_known CHECK (kind IN ('ordinary', 'fast-track', 'revert')),
    CONSTRAINT chart_change_revert_names_version CHECK ((kind = 'revert') = (reverts_to IS NOT NULL)),
    CONSTRAINT chart_change_state_known
        CHECK (state IN ('drafting', 'submitted', 'returned', 'signed', 'declined', 'withdrawn')),
    CONSTRAINT chart_change_submitted_since CHECK ((state = 'submitted') = (submitted_at IS NOT NULL)),
    CONSTRAINT chart_change_decided CHECK ((state IN ('drafting', 'submitted')) = (decided_by IS NULL)),
    CONSTRAINT chart_change_signed_is_version CHECK ((state = 'signed') = (signed_version IS NOT NULL)),
    CONSTRAINT chart_change_author_never_signs CHECK (state <> 'signed' OR decided_by <> author),
    CONSTRAINT chart_change_author_never_concurs CHECK (concurred_by IS NULL OR concurred_by <> author)
);

CREATE INDEX chart_change_state ON chart_change (state, id);
CREATE INDEX chart_change_room ON chart_change (room, id);

-- What a change does to one row. fields is the whole row as JSON, by the names of the chart file; of a withdrawal the row that goes.
CREATE TABLE chart_change_row (
    id        BIGINT GENERATED ALWAYS AS IDENTITY NOT NULL,
    change_id BIGINT         NOT NULL,
    row_key   VARCHAR(150)   NOT NULL,
    kind      VARCHAR(8)     NOT NULL,
    fields    VARCHAR(65000) NOT NULL,
    based_on  INTEGER        NOT NULL,
    CONSTRAINT chart_change_row_pk PRIMARY KEY (id),
    CONSTRAINT chart_change_row_once UNIQUE (change_id, row_key),
    CONSTRAINT chart_change_row_change FOREIGN KEY (change_id) REFERENCES chart_change (id),
    CONSTRAINT chart_change_row_kind_known CHECK (kind IN ('add', 'amend', 'withdraw'))
);

-- All named adjustments as a change wants them, as a JSON list; no entry where they stay.
CREATE TABLE chart_change_adjustments (
    change_id BIGINT         NOT NULL,
    wanted    VARCHAR(65000) NOT NULL,
    based_on  INTEGER        NOT NULL,
    CONSTRAINT chart_change_adjustments_pk PRIMARY KEY (change_id),
    CONSTRAINT chart_change_adjustments_change FOREIGN KEY (change_id) REFERENCES chart_change (id)
);
