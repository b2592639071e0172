-- The register of printed sheets is never changed or removed.
CREATE TRIGGER printed_sheet_append_only
    BEFORE UPDATE, DELETE ON printed_sheet
    FOR EACH ROW CALL 'wallchart.store.RefuseChange';
CREATE TRIGGER sheet_taken_down_append_only
    BEFORE UPDATE, DELETE ON sheet_taken_down
    FOR EACH ROW CALL 'wallchart.store.RefuseChange';
