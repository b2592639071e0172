package wallchart.architecture.planted.web;

import org.jdbi.v3.core.Handle;

/** Planted: a page that speaks SQL. The architecture test must notice. */
public final class SpeaksSql {

    public int count(Handle handle) {
        return handle.select("SELECT COUNT(*) FROM person").mapTo(Integer.class).one();
    }
}
