-- The register of printed sheets is never changed or removed.
CREATE TRIGGER printed_sheet_append_only
    BEFORE UPDATE OR DELETE ON printed_sheet
    FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER printed_sheet_no_truncate
    BEFORE TRUNCATE ON printed_sheet
    FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER sheet_taken_down_append_only
    BEFORE UPDATE OR DELETE ON sheet_taken_down
    FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER sheet_taken_down_no_truncate
    BEFORE TRUNCATE ON sheet_taken_down
    FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
