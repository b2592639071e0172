-- Named adjustments of each version, by validity as the rows are.
CREATE TABLE chart_adjustment (
    id            BIGINT GENERATED ALWAYS AS IDENTITY NOT NULL,
    room          VARCHAR(32)   NOT NULL,
    introduced_in INTEGER       NOT NULL,
    ordinal       BIGINT        NOT NULL,
    name          VARCHAR(32)   NOT NULL,
    label         VARCHAR(80)   NOT NULL,
    add_kv        NUMERIC(3, 1),
    times_mas     NUMERIC(5, 3),
    notes         VARCHAR(400)  NOT NULL,
    CONSTRAINT chart_adjustment_pk PRIMARY KEY (id),
    CONSTRAINT chart_adjustment_name_unique UNIQUE (room, introduced_in, name),
    CONSTRAINT chart_adjustment_version FOREIGN KEY (room, introduced_in) REFERENCES chart_version (room, number),
    CONSTRAINT chart_adjustment_ordinal_positive CHECK (ordinal > 0),
    CONSTRAINT chart_adjustment_kv_or_mas CHECK (
        (add_kv IS NOT NULL AND add_kv <> 0 AND times_mas IS NULL)
        OR (add_kv IS NULL AND times_mas IS NOT NULL AND times_mas > 0))
);

CREATE TABLE chart_adjustment_retired (
    adjustment_id BIGINT      NOT NULL,
    room          VARCHAR(32) NOT NULL,
    retired_in    INTEGER     NOT NULL,
    CONSTRAINT chart_adjustment_retired_once PRIMARY KEY (adjustment_id),
    CONSTRAINT chart_adjustment_retired_adjustment FOREIGN KEY (adjustment_id) REFERENCES chart_adjustment (id),
    CONSTRAINT chart_adjustment_retired_version
        FOREIGN KEY (room, retired_in) REFERENCES chart_version (room, number)
);

COMMENT ON TABLE chart_adjustment IS 'append-only: named adjustments of signed versions';
COMMENT ON TABLE chart_adjustment_retired IS 'append-only: the version in which an adjustment stopped';
