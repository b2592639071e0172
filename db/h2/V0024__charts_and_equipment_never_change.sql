-- What was signed, and the equipment it was signed for, is never changed or removed.
CREATE TRIGGER equipment_revision_append_only
    BEFORE UPDATE, DELETE ON equipment_revision
    FOR EACH ROW CALL 'wallchart.store.RefuseChange';
CREATE TRIGGER chart_version_append_only
    BEFORE UPDATE, DELETE ON chart_version
    FOR EACH ROW CALL 'wallchart.store.RefuseChange';
CREATE TRIGGER chart_row_append_only
    BEFORE UPDATE, DELETE ON chart_row
    FOR EACH ROW CALL 'wallchart.store.RefuseChange';
CREATE TRIGGER chart_row_retired_append_only
    BEFORE UPDATE, DELETE ON chart_row_retired
    FOR EACH ROW CALL 'wallchart.store.RefuseChange';
CREATE TRIGGER chart_adjustment_append_only
    BEFORE UPDATE, DELETE ON chart_adjustment
    FOR EACH ROW CALL 'wallchart.store.RefuseChange';
CREATE TRIGGER chart_adjustment_retired_append_only
    BEFORE UPDATE, DELETE ON chart_adjustment_retired
    FOR EACH ROW CALL 'wallchart.store.RefuseChange';
