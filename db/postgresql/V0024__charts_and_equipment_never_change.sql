-- What was signed, and the equipment it was signed for, is never changed or removed.
CREATE TRIGGER equipment_revision_append_only
    BEFORE UPDATE OR DELETE ON equipment_revision
    FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER equipment_revision_no_truncate
    BEFORE TRUNCATE ON equipment_revision
    FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER chart_version_append_only
    BEFORE UPDATE OR DELETE ON chart_version
    FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER chart_version_no_truncate
    BEFORE TRUNCATE ON chart_version
    FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER chart_row_append_only
    BEFORE UPDATE OR DELETE ON chart_row
    FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER chart_row_no_truncate
    BEFORE TRUNCATE ON chart_row
    FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER chart_row_retired_append_only
    BEFORE UPDATE OR DELETE ON chart_row_retired
    FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER chart_row_retired_no_truncate
    BEFORE TRUNCATE ON chart_row_retired
    FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER chart_adjustment_append_only
    BEFORE UPDATE OR DELETE ON chart_adjustment
    FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER chart_adjustment_no_truncate
    BEFORE TRUNCATE ON chart_adjustment
    FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER chart_adjustment_retired_append_only
    BEFORE UPDATE OR DELETE ON chart_adjustment_retired
    FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER chart_adjustment_retired_no_truncate
    BEFORE TRUNCATE ON chart_adjustment_retired
    FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
