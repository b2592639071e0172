package wallchart;

import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Collections;

/** The program of the jar, but on an H2 whose safe settings do nothing: what the watch over killed services must notice. */
public final class CarelessService {

    private CarelessService() {}

    /** Arguments: those of the program. */
    public static void main(String[] args) throws SQLException {
        for (var driver : Collections.list(DriverManager.getDrivers())) {
            if (driver.acceptsURL("jdbc:h2:mem:any")) {
                DriverManager.deregisterDriver(driver);
                DriverManager.registerDriver(new CarelessDriver(driver));
            }
        }
        Main.main(args);
    }
}
