-- Rows by validity: a row belongs to every version from the one that introduced it until, not including, the one that retired it.
-- Retirements stand in a table of their own, so that rows need never be updated.
CREATE TABLE chart_row (
    id                    BIGINT GENERATED ALWAYS AS IDENTITY NOT NULL,
    room                  VARCHAR(32)    NOT NULL,
    introduced_in         INTEGER        NOT NULL,
    ordinal               BIGINT         NOT NULL,
    body_part             VARCHAR(16)    NOT NULL,
    projection            VARCHAR(32)    NOT NULL,
    patient_group         VARCHAR(32)    NOT NULL,
    support               VARCHAR(12)    NOT NULL,
    band_from_cm          NUMERIC(14, 2) NOT NULL,
    band_to_cm            NUMERIC(14, 2) NOT NULL,
    reference_cm          NUMERIC(14, 2) NOT NULL,
    measure_at            VARCHAR(200)   NOT NULL,
    kv                    NUMERIC(13, 1) NOT NULL,
    mas                   NUMERIC(15, 3),
    aec_chambers          VARCHAR(17),
    aec_density           INTEGER,
    backup_mas            NUMERIC(15, 3),
    focal_spot            VARCHAR(5)     NOT NULL,
    grid                  VARCHAR(32)    NOT NULL,
    sid_cm                NUMERIC(16, 4) NOT NULL,
    receptor              VARCHAR(32)    NOT NULL,
    field_cm              VARCHAR(13)    NOT NULL,
    orientation           VARCHAR(10)    NOT NULL,
    added_al_mm           NUMERIC(14, 2) NOT NULL,
    added_cu_mm           NUMERIC(14, 2) NOT NULL,
    target_exposure_index INTEGER,
    central_ray_deg       NUMERIC(3, 1),
    centring              VARCHAR(400)   NOT NULL,
    breathing             VARCHAR(200)   NOT NULL,
    shielding             VARCHAR(200)   NOT NULL,
    thickness_method      VARCHAR(11)    NOT NULL,
    thickness_rate        NUMERIC(4, 2),
    kv_from               NUMERIC(13, 1),
    kv_to                 NUMERIC(13, 1),
    longest_time_ms       NUMERIC(15, 3),
    notes                 VARCHAR(400)   NOT NULL,
    CONSTRAINT chart_row_pk PRIMARY KEY (id),
    CONSTRAINT chart_row_key_unique
        UNIQUE (room, introduced_in, body_part, projection, patient_group, support, band_from_cm),
    CONSTRAINT chart_row_version FOREIGN KEY (room, introduced_in) REFERENCES chart_version (room, number),
    CONSTRAINT chart_row_ordinal_positive CHECK (ordinal > 0),
    CONSTRAINT chart_row_support_known CHECK (support IN ('tabletop', 'table-bucky', 'wall-bucky', 'mobile')),
    CONSTRAINT chart_row_band_ascends CHECK (band_from_cm >= 0 AND band_from_cm < band_to_cm),
    CONSTRAINT chart_row_reference_in_band CHECK (reference_cm BETWEEN band_from_cm AND band_to_cm),
    CONSTRAINT chart_row_kv_positive CHECK (kv > 0),
    CONSTRAINT chart_row_mas_or_aec CHECK (
        (mas > 0 AND mas IS NOT NULL AND aec_chambers IS NULL AND aec_density IS NULL AND backup_mas IS NULL)
        OR (mas IS NULL AND aec_chambers IS NOT NULL AND aec_density IS NOT NULL
            AND backup_mas > 0 AND backup_mas IS NOT NULL)),
    CONSTRAINT chart_row_chambers_known CHECK (aec_chambers IN ('left', 'centre', 'right', 'left+centre',
        'left+right', 'centre+right', 'left+centre+right')),
    CONSTRAINT chart_row_focal_spot_known CHECK (focal_spot IN ('small', 'large')),
    CONSTRAINT chart_row_sid_positive CHECK (sid_cm > 0),
    CONSTRAINT chart_row_orientation_known CHECK (orientation IN ('lengthwise', 'crosswise')),
    CONSTRAINT chart_row_filter_not_negative CHECK (added_al_mm >= 0 AND added_cu_mm >= 0),
    CONSTRAINT chart_row_target_sensible CHECK (target_exposure_index BETWEEN 10 AND 10000),
    CONSTRAINT chart_row_angle_sensible CHECK (central_ray_deg BETWEEN -90 AND 90),
    CONSTRAINT chart_row_method_and_rate CHECK (
        (thickness_method IN ('kv-per-cm', 'mas-per-cm') AND thickness_rate > 0 AND thickness_rate IS NOT NULL)
        OR (thickness_method IN ('fixed', 'attenuation') AND thickness_rate IS NULL)),
    CONSTRAINT chart_row_window_ascends CHECK (
        (kv_from IS NULL AND kv_to IS NULL)
        OR (kv_from IS NOT NULL AND kv_to IS NOT NULL AND kv BETWEEN kv_from AND kv_to)),
    CONSTRAINT chart_row_longest_time_positive CHECK (longest_time_ms > 0)
);

CREATE TABLE chart_row_retired (
    row_id     BIGINT      NOT NULL,
    room       VARCHAR(32) NOT NULL,
    retired_in INTEGER     NOT NULL,
    CONSTRAINT chart_row_retired_once PRIMARY KEY (row_id),
    CONSTRAINT chart_row_retired_row FOREIGN KEY (row_id) REFERENCES chart_row (id),
    CONSTRAINT chart_row_retired_version FOREIGN KEY (room, retired_in) REFERENCES chart_version (room, number)
);

COMMENT ON TABLE chart_row IS 'append-only: rows of signed versions';
COMMENT ON TABLE chart_row_retired IS 'append-only: the version in which a row stopped, once for each row';
